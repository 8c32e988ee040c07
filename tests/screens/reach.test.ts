import { expect, it } from 'vitest';
import { reachOf } from '../../src/screens/model/reach.ts';

it.each(['localhost', 'app.localhost', '127.0.0.1', '127.1.2.3', '[::1]'])(
  '%s is known to this computer only',
  (host) => {
    expect(reachOf(host)).toBe('this-computer');
  },
);

it.each(['10.0.0.7', '192.168.1.20', '172.16.0.1', '172.31.255.1', '169.254.3.4', 'bench.local'])(
  '%s is known in this network only',
  (host) => {
    expect(reachOf(host)).toBe('this-network');
  },
);

it.each(['shop.example.org', '172.32.0.1', '172.15.0.1', '100.10.0.1', 'localhost.example.org', 'my10.0.0.7.example'])(
  '%s is known everywhere',
  (host) => {
    expect(reachOf(host)).toBe('anywhere');
  },
);
