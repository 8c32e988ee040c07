import { readFile } from 'node:fs/promises';
import { networkInterfaces } from 'node:os';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { addresses, HELP, headerLines, welcome } from './advice.ts';
import { readOptions, type StartOptions } from './options.ts';
import { type Served, type ServeOptions, serve } from './serve.ts';

const DIST = fileURLToPath(new URL('../../dist', import.meta.url));
/** How many ports above the asked one are tried. */
const PORTS_TRIED = 20;

try {
  await main(readOptions(process.argv.slice(2), process.env));
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

async function main(options: StartOptions): Promise<void> {
  if (options.help || options.headers) {
    console.log(options.help ? HELP : headerLines());
    return;
  }
  const tls = await readCertificate(options);
  const served = await serveFrom({ dir: DIST, host: options.host, port: options.port, tls });
  const list = addresses(served, options.host, networkInterfaces());
  console.log(welcome({ addresses: list, secure: tls !== undefined, askedPort: options.port, port: served.port }));
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => void served.close().then(() => process.exit(0)));
  }
}

async function readCertificate({ cert, key }: StartOptions): Promise<ServeOptions['tls']> {
  if (cert === undefined || key === undefined) return undefined;
  return { cert: await readFile(cert, 'utf8'), key: await readFile(key, 'utf8') };
}

/** Serves at the asked port or the next free one. */
async function serveFrom(options: ServeOptions & { readonly port: number }): Promise<Served> {
  const last = options.port === 0 ? 0 : Math.min(options.port + PORTS_TRIED, 65_535);
  for (let port = options.port; ; port += 1) {
    try {
      return await serve({ ...options, port });
    } catch (error) {
      if (!isTaken(error) || port >= last) throw error;
    }
  }
}

function isTaken(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
}
