import process from 'node:process';
import { ensureBuilt } from '../../../src/server/setup.mjs';
import { ensureChromium } from '../../runner/chromium.ts';

/** Before any browser test: Chromium is there and `dist` is what the sources say. */
export async function setup(): Promise<void> {
  process.env.CHROMIUM = await ensureChromium();
  await ensureBuilt({ options: { stdio: ['ignore', 'ignore', 'inherit'] } });
}
