import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import type { Page } from 'playwright-core';

/** Takes a picture of the page into the folder that SHOTS names. Without SHOTS, none is written. */
export async function shot(page: Page, name: string, { fullPage = false } = {}): Promise<void> {
  const folder = process.env.SHOTS;
  if (folder === undefined || folder === '') return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: join(folder, `${name}.png`), fullPage });
}
