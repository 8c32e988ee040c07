import { parseArgs } from 'node:util';

export interface StartOptions {
  readonly port: number;
  readonly host: string;
  readonly cert: string | undefined;
  readonly key: string | undefined;
  readonly help: boolean;
  readonly headers: boolean;
}

const DEFAULT_PORT = 4173;

/** Reads the command line, then the environment. Throws an Error whose message is for the person at the terminal. */
export function readOptions(args: readonly string[], env: Readonly<Record<string, string | undefined>>): StartOptions {
  const { values } = parseArgs({
    args: [...args],
    options: {
      port: { type: 'string' },
      host: { type: 'string' },
      cert: { type: 'string' },
      key: { type: 'string' },
      // Read by start.mjs; named here so that it is not refused.
      'no-build': { type: 'boolean' },
      help: { type: 'boolean' },
      headers: { type: 'boolean' },
    },
  });
  const cert = values.cert ?? env.TAPETRUE_CERT;
  const key = values.key ?? env.TAPETRUE_KEY;
  if ((cert === undefined) !== (key === undefined)) {
    throw new Error('A certificate needs its key and a key its certificate: give both --cert FILE and --key FILE.');
  }
  return {
    port: readPort(values.port ?? env.PORT),
    host: values.host ?? '127.0.0.1',
    cert,
    key,
    help: values.help ?? false,
    headers: values.headers ?? false,
  };
}

function readPort(text: string | undefined): number {
  if (text === undefined || text === '') return DEFAULT_PORT;
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65_535) return port;
  throw new Error(`The port is a whole number up to 65535, not "${text}".`);
}
