import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

/** A second tab of the same browser that deletes the one job there is. */
async function deleteElsewhere({ context }: Phone): Promise<Page> {
  const other = await context.newPage();
  await other.goto(new URL('#/keep', app.url).href);
  // What is stored is weighed first, and moves the list below it.
  await other.getByText(/^1 job takes/).waitFor();
  await other.getByRole('button', { name: 'M. Sample – Perla' }).tap();
  await other.getByRole('button', { name: 'Delete it for good' }).tap();
  await other.getByRole('heading', { name: 'Delete a job from this device' }).waitFor({ state: 'detached' });
  return other;
}

async function measureAtFirstReading(installer: Installer): Promise<void> {
  await installer.begin('M. Sample', 'Perla', 'Sam');
  await installer.addPiece('Tension shade');
  await installer.page.getByRole('link', { name: /All steps/ }).tap();
  await installer.page.getByRole('link', { name: /^A–B/ }).first().tap();
  await installer.understandCautions();
}

const GONE = /“M. Sample – Perla” was deleted from this device in another tab/;

test('a job deleted in another tab is said to be gone; what is entered after that comes back with all of it', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    await measureAtFirstReading(installer);
    const other = await deleteElsewhere(phone);
    await page.getByText(GONE).waitFor();
    await page.bringToFront();
    await installer.type('75 11/16');
    await installer.next();
    await page.getByText(GONE).waitFor();
    await shot(page, 'gone');
    await expectAccessible(page);
    await other.goto(new URL('#/', app.url).href);
    await other.getByText('No job yet').waitFor();

    await installer.tap('Write it back');
    await page.getByText(GONE).waitFor({ state: 'detached' });
    await other.reload();
    await other.getByRole('link', { name: /M. Sample – Perla/ }).tap();
    await other.getByRole('link', { name: 'All steps' }).tap();
    await other
      .getByRole('link', { name: /75 11\/16/ })
      .first()
      .waitFor();
  });
});

test('it can be let go, after asking once more, and nothing hollow is left', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    await measureAtFirstReading(installer);
    await deleteElsewhere(phone);
    await page.bringToFront();
    await installer.type('75 11/16');
    await installer.next();
    await installer.tap('Let it go');
    await page.getByText('Nothing of “M. Sample – Perla” stays on this device then').waitFor();
    await installer.tap('Let it go for good');
    await page.getByText('No job yet').waitFor();
    await page.reload();
    await page.getByText('No job yet').waitFor();
    expect(await page.getByText(GONE).count()).toBe(0);
  });
});
