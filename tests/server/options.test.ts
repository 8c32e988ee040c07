import { describe, expect, test } from 'vitest';
import { addresses, headerLines, welcome } from '../../src/server/advice.ts';
import { readOptions } from '../../src/server/options.ts';
import { contentSecurityPolicy } from '../../src/server/security.ts';

describe('options of npm start', () => {
  test('nothing given', () => {
    expect(readOptions([], {})).toMatchObject({ port: 4173, host: '127.0.0.1', cert: undefined, help: false });
  });

  test('the command line wins over the environment', () => {
    const env = { PORT: '5000', TAPETRUE_CERT: 'env.pem', TAPETRUE_KEY: 'env.key' };
    expect(readOptions([], env)).toMatchObject({ port: 5000, cert: 'env.pem', key: 'env.key' });
    expect(readOptions(['--port', '6000', '--cert', 'a.pem', '--key=a.key'], env)).toMatchObject({
      port: 6000,
      cert: 'a.pem',
      key: 'a.key',
    });
  });

  test.each(['x', '-1', '65536', '4173.5', '1e3'])('port %s is refused', (port) => {
    expect(() => readOptions([`--port=${port}`], {})).toThrow(/whole number/);
  });

  test.each([
    ['--cert', 'a.pem'],
    ['--key', 'a.key'],
  ])('%s alone is refused', (...args) => {
    expect(() => readOptions(args, {})).toThrow(/both/);
  });

  test('an unknown option is refused', () => {
    expect(() => readOptions(['--prot', '1'], {})).toThrow(/--prot/);
  });
});

describe('what npm start says', () => {
  const net = (address: string, internal: boolean, family: 'IPv4' | 'IPv6') =>
    ({ address, internal, family, netmask: '', mac: '', cidr: null, scopeid: 0 }) as const;
  const nets = {
    lo: [net('127.0.0.1', true, 'IPv4')],
    air: [net('192.0.2.7', false, 'IPv4'), { ...net('2001:db8::7', false, 'IPv6') }],
  };
  const said = (over: Partial<Parameters<typeof welcome>[0]>) =>
    welcome({ addresses: ['http://127.0.0.1:1/'], secure: false, askedPort: 1, port: 1, ...over });

  test('an address for each way in, when it listens on all', () => {
    expect(addresses({ url: 'http://localhost:80/', port: 80 }, '0.0.0.0', nets)).toEqual([
      'http://localhost:80/',
      'http://192.0.2.7:80/',
    ]);
    expect(addresses({ url: 'http://127.0.0.1:80/', port: 80 }, '127.0.0.1', nets)).toEqual(['http://127.0.0.1:80/']);
  });

  test('phones need HTTPS, until there is a certificate', () => {
    expect(said({})).toMatch(/Phones need HTTPS[\s\S]*--cert FILE --key FILE/);
    expect(said({ secure: true })).not.toContain('Phones need HTTPS');
    for (const secure of [true, false]) expect(said({ secure })).toContain('any static host');
  });

  test('another port than asked for, and what that means', () => {
    expect(said({ askedPort: 1, port: 2 })).toContain('Port 1 is taken');
    expect(said({ askedPort: 1, port: 1 })).not.toContain('taken');
    expect(said({ askedPort: 0, port: 2 })).not.toContain('taken');
  });

  test('the headers for another host', () => {
    expect(headerLines()).toContain(`Content-Security-Policy: ${contentSecurityPolicy({ inMeta: false })}`);
    expect(headerLines()).toContain('immutable');
  });
});

test('in a meta tag the policy leaves out what a browser ignores there', () => {
  expect(contentSecurityPolicy({ inMeta: true })).not.toContain('frame-ancestors');
  expect(contentSecurityPolicy({ inMeta: false })).toContain("frame-ancestors 'none'");
});
