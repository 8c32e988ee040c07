import http, { type IncomingMessage, type ServerResponse } from 'node:http';
import https from 'node:https';
import type { AddressInfo } from 'node:net';
import { readFiles, type ServedFile } from './files.ts';
import { cacheControl, SECURITY_HEADERS } from './security.ts';

export interface ServeOptions {
  /** The folder to serve; it is read once, at the start. */
  readonly dir: string;
  /** 0, the default, takes any free port. */
  readonly port?: number;
  readonly host?: string;
  /** Certificate and key in PEM. Without them the server speaks plain HTTP. */
  readonly tls?: { readonly cert: string; readonly key: string } | undefined;
}

export interface Served {
  /** Where the app is, ending in a slash. */
  readonly url: string;
  readonly port: number;
  /** Stops listening and drops what is connected. */
  close(): Promise<void>;
}

/** Serves a built folder. Rejects when the folder cannot be read or the port is taken. */
export async function serve({ dir, port = 0, host = '127.0.0.1', tls }: ServeOptions): Promise<Served> {
  const files = await readFiles(dir);
  const answer = (request: IncomingMessage, response: ServerResponse) => respond(files, request, response);
  const server = tls ? https.createServer({ cert: tls.cert, key: tls.key }, answer) : http.createServer(answer);
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, resolve);
  });
  const taken = (server.address() as AddressInfo).port;
  return {
    url: `${tls ? 'https' : 'http'}://${isWildcard(host) ? 'localhost' : bracketed(host)}:${taken}/`,
    port: taken,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error ? reject(error) : resolve()));
        server.closeAllConnections();
      }),
  };
}

/** True for the hosts that mean every address of this machine. */
export function isWildcard(host: string): boolean {
  return host === '0.0.0.0' || host === '::';
}

function bracketed(host: string): string {
  return host.includes(':') ? `[${host}]` : host;
}

function respond(files: ReadonlyMap<string, ServedFile>, request: IncomingMessage, response: ServerResponse): void {
  for (const [name, value] of Object.entries(SECURITY_HEADERS)) response.setHeader(name, value);
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    plain(response, 405, 'Only GET and HEAD are answered here.');
    return;
  }
  const path = wantedPath(request.url ?? '/');
  if (path === undefined) {
    plain(response, 400, 'That address cannot be read.');
    return;
  }
  const file = files.get(path === '' || path.endsWith('/') ? `${path}index.html` : path);
  if (file) send(file, path, request, response);
  else if (isPage(path)) toTheApp(response);
  else plain(response, 404, 'There is no such file here.');
}

/** The path inside the folder, decoded; undefined when it is not valid. */
function wantedPath(url: string): string | undefined {
  try {
    return decodeURIComponent(url.replace(/[?#].*$/s, '')).replace(/^\/+/, '');
  } catch {
    return undefined;
  }
}

/** A name without an ending is a page of the app, not a file. Dot files and climbing paths are neither. */
function isPage(path: string): boolean {
  return path.split('/').every((part) => !part.includes('.'));
}

/**
 * An old or mistyped page ends at the app. It is sent there and not answered in place: the app's own addresses are
 * relative, so that its folder works under any path, and would be looked for beside a deeper page.
 */
function toTheApp(response: ServerResponse): void {
  response.setHeader('Location', '/');
  plain(response, 302, 'The app is at the top of this address.');
}

function send(file: ServedFile, path: string, request: IncomingMessage, response: ServerResponse): void {
  response.setHeader('Cache-Control', cacheControl(path));
  response.setHeader('ETag', file.etag);
  response.setHeader('Vary', 'Accept-Encoding');
  if (isSame(request.headers['if-none-match'], file.etag)) {
    response.writeHead(304).end();
    return;
  }
  const gzipped = takesGzip(request.headers['accept-encoding']) ? file.gzipped : undefined;
  if (gzipped) response.setHeader('Content-Encoding', 'gzip');
  const body = gzipped ?? file.bytes;
  response.setHeader('Content-Type', file.type);
  response.setHeader('Content-Length', body.length);
  response.writeHead(200);
  response.end(request.method === 'HEAD' ? undefined : body);
}

function isSame(asked: string | undefined, etag: string): boolean {
  if (asked === undefined) return false;
  const bare = (tag: string) => tag.trim().replace(/^W\//, '');
  return asked.split(',').some((tag) => tag.trim() === '*' || bare(tag) === bare(etag));
}

function takesGzip(header: string | string[] | undefined): boolean {
  const offers = String(header ?? '').split(',');
  return offers.some((offer) => /^\s*gzip\s*(;|$)/i.test(offer) && !/q=0(\.0*)?\s*$/i.test(offer));
}

function plain(response: ServerResponse, status: number, sentence: string): void {
  response.setHeader('Cache-Control', 'no-cache');
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`${sentence}\n`);
}
