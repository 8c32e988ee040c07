import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

async function saved(page: Page, button: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return await download.path();
}

const pick = (page: Page, buffer: Buffer): Promise<void> =>
  page
    .locator('label', { hasText: 'Restore from a backup file' })
    .locator('input')
    .setInputFiles({ name: 'whatever.json', mimeType: 'application/json', buffer });

test('everything on a phone is saved as one file and put back on another at the bench, and refused when it is cut off', async () => {
  let whole = Buffer.alloc(0);
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Tension shade');
    await page.getByRole('link', { name: /All steps/ }).tap();
    await page.getByRole('link', { name: /^A–B/ }).first().tap();
    await installer.understandCautions();
    const step = installer.stepKey() ?? '';
    await installer.type('75 11/16');
    await installer.next();
    await installer.movedFrom(step);
    await phone.open('#/keep');
    await page.getByText(/^1 job takes .* 0 photos: 0 B/).waitFor();
    await page.getByRole('button', { name: 'Make the backup file' }).tap();
    await page.getByText(/^Ready: 1 job and 0 photos/).waitFor();
    await expectAccessible(page);
    await shot(page, 'keep-backup');
    whole = await readFile(await saved(page, 'Save it on this device'));
    await page.getByText('Saved among your downloads.').waitFor();

    await page.getByRole('button', { name: 'M. Sample – Perla' }).tap();
    await page.getByText(/Gone from here: 1 reading, 0 photos and \d+ other entries/).waitFor();
    await page.getByText('It was never sent or saved').waitFor();
    await shot(page, 'keep-delete');
    await saved(page, 'Save a copy first');
    await page.getByText(/A copy of all of it was sent or saved/).waitFor();
  });
  await withPhone(app.url, { screen: 'desk' }, async ({ page, open }) => {
    await open('#/bench');
    await pick(page, whole.subarray(0, whole.length - 40));
    await page.getByText('This backup is cut off').waitFor();
    await pick(page, whole);
    await page.getByText(/^Backup of .* by Sam: 1 job and 0 photos/).waitFor();
    await page.getByText('1 job is new here.').waitFor();
    await expectAccessible(page);
    await shot(page, 'bench-restore');
    await page.getByRole('button', { name: 'Restore it' }).click();
    await page.getByText(/came back, in 1 job/).waitFor();
    await page.getByRole('link', { name: /M. Sample – Perla/ }).click();
    await page.getByText('75 11/16').first().waitFor();
    await page.getByRole('button', { name: 'Delete it from this device' }).click();
    await page.getByText(/Gone from here: 1 reading/).waitFor();
    await page.getByRole('button', { name: 'Delete it for good' }).click();
    await page.getByText('No job yet').waitFor();
    expect(await page.getByRole('link', { name: /M. Sample/ }).count()).toBe(0);
  });
});
