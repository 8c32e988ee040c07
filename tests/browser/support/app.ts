import { join } from 'node:path';
import { type Served, serve } from '../../../src/server/serve.ts';
import { root } from '../../../src/server/setup.mjs';

/** The built app behind the real server, at one address for as long as the test lasts. */
export interface App {
  readonly url: string;
  /** Takes the server away. What is stored in the browser stays. */
  stop(): Promise<void>;
  /** Brings it back at the same address, with the same or another build: a new one is what an update looks like. */
  start(dir?: string): Promise<void>;
}

export const DIST = join(root, 'dist');

export async function startApp(dir: string = DIST): Promise<App> {
  let served: Served | undefined = await serve({ dir });
  const { url, port } = served;
  return {
    url,
    async stop() {
      await served?.close();
      served = undefined;
    },
    async start(next = dir) {
      await served?.close();
      served = await serve({ dir: next, port });
    },
  };
}
