import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DIST, startApp } from './support/app.ts';
import { withPhone } from './support/phone.ts';

/** The built app with another title: what a new version looks like to a browser that has the old one. */
function newVersion(): string {
  const dir = mkdtempSync(join(tmpdir(), 'tapetrue-new-'));
  cpSync(DIST, dir, { recursive: true });
  const change = (file: string, from: RegExp, to: string): void => {
    const before = readFileSync(join(dir, file), 'utf8');
    const after = before.replace(from, to);
    if (after === before) throw new Error(`${file} does not hold ${from}`);
    writeFileSync(join(dir, file), after);
  };
  change('index.html', /<title>[^<]*<\/title>/, '<title>Newer</title>');
  change(
    'sw.js',
    /(index\.html",\s*"?revision"?:\s*")[0-9a-f]+|(revision"?:\s*")[0-9a-f]+(?=",\s*"?url"?:\s*"index\.html)/,
    '$1$2abcdef0123456789',
  );
  return dir;
}

test('a new version waits until the person agrees, also on a first visit, and keeps every entry', async () => {
  const app = await startApp();
  const dir = newVersion();
  try {
    await withPhone(app.url, {}, async (phone) => {
      const { page } = phone;
      await phone.open();
      await phone.readyOffline();
      await page.getByRole('link', { name: 'New job' }).tap();
      await page.getByRole('textbox', { name: /^Customer/ }).fill('U. Sample');
      await page.getByRole('button', { name: 'Begin' }).tap();
      await page.getByRole('heading', { name: 'U. Sample' }).waitFor();
      await app.start(dir);
      await page.evaluate(() => navigator.serviceWorker.getRegistration().then((r) => r?.update()));
      await page.getByText('A new version is ready.').waitFor();
      expect(await page.title()).toBe('Tapetrue');
      // In the middle of a measurement nothing is said.
      await page.getByRole('button', { name: /^Tension shade/ }).tap();
      await page.getByRole('button', { name: 'Foredeck' }).waitFor();
      expect(await page.getByText('A new version is ready.').count()).toBe(0);
      await phone.open('#/');
      await page.getByRole('button', { name: 'Use it now' }).tap();
      await page.waitForFunction(() => document.title === 'Newer');
      await page.getByRole('link', { name: /U. Sample/ }).waitFor();
    });
  } finally {
    await app.stop();
    rmSync(dir, { recursive: true });
  }
});
