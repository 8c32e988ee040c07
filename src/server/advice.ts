import type { NetworkInterfaceInfo } from 'node:os';
import { cacheControl, SECURITY_HEADERS } from './security.ts';
import { isWildcard, type Served } from './serve.ts';

export const HELP = `npm start -- [options]
  --port N       the port to listen on (4173, or the next free one)
  --host H       the address to listen on (127.0.0.1; 0.0.0.0 for the whole network)
  --cert FILE    a certificate in PEM, and ...
  --key FILE     ... its key: serves HTTPS (also TAPETRUE_CERT and TAPETRUE_KEY)
  --no-build     serve the dist folder as it stands
  --headers      print the headers that another host of dist should send
  --help         print this`;

/** The headers this server sends, one a line, for whoever sets up another host. */
export function headerLines(): string {
  const security = Object.entries(SECURITY_HEADERS).map(([name, value]) => `${name}: ${value}`);
  return [
    'For every file:',
    ...security,
    '',
    'For files under assets/:',
    `Cache-Control: ${cacheControl('assets/x')}`,
    '',
    'For all others (index.html, sw.js, manifest.webmanifest, icons):',
    `Cache-Control: ${cacheControl('index.html')}`,
  ].join('\n');
}

/** Every address a person can type, the nearest first. */
export function addresses(
  served: Pick<Served, 'url' | 'port'>,
  host: string,
  nets: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
): string[] {
  if (!isWildcard(host)) return [served.url];
  const scheme = new URL(served.url).protocol;
  const outward = Object.values(nets)
    .flatMap((net) => net ?? [])
    .filter((net) => net.family === 'IPv4' && !net.internal)
    .map((net) => `${scheme}//${net.address}:${served.port}/`);
  return [served.url, ...outward];
}

interface Situation {
  readonly addresses: readonly string[];
  readonly secure: boolean;
  readonly askedPort: number;
  readonly port: number;
}

/** What `npm start` says once the app is up. */
export function welcome({ addresses: list, secure, askedPort, port }: Situation): string {
  const lines = ['', 'Tapetrue is at', ...list.map((address) => `  ${address}`), ''];
  if (askedPort !== port && askedPort !== 0) {
    lines.push(
      `Port ${askedPort} is taken, so this is port ${port}. A browser keeps jobs by address and port:`,
      `jobs measured at port ${askedPort} do not show here.`,
      '',
    );
  }
  if (!secure) {
    lines.push(
      'Phones need HTTPS. Over plain http the app works offline on this machine only (localhost); a phone that',
      'opens it over the network cannot install it or keep it, and has nothing without a connection.',
      '  With a certificate that the phone trusts:',
      '    npm start -- --host 0.0.0.0 --cert FILE --key FILE   (or TAPETRUE_CERT and TAPETRUE_KEY)',
    );
  }
  lines.push(
    'On any static host with HTTPS: copy the folder dist there, under any path. Nothing runs on the server.',
    '  Headers it should send: npm start -- --headers',
    'Ctrl-C stops.',
  );
  return lines.join('\n');
}
