import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';
import { truthOf } from './support/truths.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

const bow = truthOf('open-bow');
const truth = (slot: string): string => bow.readings[slot] ?? '';

/** Where the cursor of the table stands: the reading's name. */
const cursor = (page: Page): Promise<string> => page.locator('.table-now').innerText();

/** Reads the cell at the cursor and waits until the cursor has moved on; counts the taps. */
async function readCell(installer: Installer, text: string): Promise<number> {
  const { page } = installer;
  const before = await cursor(page);
  await installer.type(text);
  await installer.next();
  await page.waitForFunction((name) => document.querySelector('.table-now')?.textContent !== name, before);
  const [whole = '', fraction] = text.split(' ');
  return whole.length + (fraction === undefined ? 0 : 1) + 1;
}

/** An open-bow cover as far as the walk list, the three tapes between its marks read. */
async function toWalk(installer: Installer, between: readonly string[] = ['W1-W2', 'W1-F', 'W2-F']): Promise<void> {
  const { page } = installer;
  await installer.begin('M. Sample', 'Perla', 'Sam');
  await installer.addPiece('Open-bow cover');
  await installer.understandCautions();
  await page.getByRole('link', { name: /All steps/ }).tap();
  await page.getByRole('link', { name: /^W1–W2/ }).tap();
  for (const slot of between) {
    await page.waitForFunction((key) => location.hash.endsWith(`/${key}`), slot);
    await installer.reading(truth(slot));
  }
  await page.getByRole('link', { name: /All steps/ }).tap();
  await page.getByRole('heading', { name: 'Tables' }).waitFor();
}

const toTable = (page: Page, name: RegExp): Promise<void> => page.getByRole('link', { name }).tap();
const cell = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name}\\b`) });

test('a column of the bow cover by table: no tap but the keys and Next, a slip is said at once and the cursor stays', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await toWalk(installer);
    await shot(page, 'walk-tables', { fullPage: true });
    await toTable(page, /Tapes from W1, W2 and F/);
    await shot(page, 'table-begun');
    await expectAccessible(page);
    let [taps, keys] = [0, 0];
    const start = performance.now();
    for (const point of ['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1']) {
      expect(await cursor(page)).toBe(`W1–${point}`);
      expect(await cell(page, `W1–${point}`).getAttribute('aria-current')).toBe('true');
      expect(await page.locator('.drawing polyline.asked').count()).toBe(1);
      const text = truth(`W1-${point}`);
      taps += await readCell(installer, text);
      keys += text.replace(/ \d+\/\d+/, 'f').length + 1;
    }
    console.log(`column of 7: ${taps} taps, ${Math.round(performance.now() - start)} ms by machine`);
    expect(taps).toBe(keys);
    // From the far end back: the nearest point first.
    expect(await cursor(page)).toBe('W2–S1');
    await shot(page, 'table-column-read');

    // A foot too many: no such triangle.
    const right = truth('W2-S1');
    await installer.type('175');
    await installer.next();
    await page
      .locator('.strip')
      .getByText(/longer than/)
      .first()
      .waitFor();
    expect(await cursor(page)).toBe('W2–S1');
    await page.getByRole('button', { name: /^W2–S1, 175", Stop/ }).waitFor();
    await shot(page, 'table-slip');
    await expectAccessible(page);
    await installer.tap('Strike out');
    await installer.tap('Misread');
    await page.getByRole('button', { name: /^W2–S1, being read/ }).waitFor();
    await readCell(installer, right);
    expect(await cursor(page)).toBe('W2–S2');

    // A second look at a cell shows nothing of the first beside the pad.
    const first = truth('W1-P3');
    await cell(page, 'W1–P3').tap();
    expect(await cursor(page)).toBe('W1–P3');
    await page.getByRole('button', { name: 'W1–P3, read again' }).waitFor();
    expect(await page.locator('.page').innerText()).not.toContain(first);
    await shot(page, 'table-second-look');

    await cell(page, 'W2–S2').tap();
    await installer.tap('No value');
    await installer.tap('Could not measure it');
    await installer.tap('Cannot be reached');
    await page.getByRole('button', { name: 'W2–S2, could not' }).waitFor();
    expect(await cursor(page)).toBe('W2–S3');
    await installer.tap('Undo');
    await page.getByRole('button', { name: 'W2–S2, open' }).waitFor();
  });
});

test('a step leads to its column and back, and the head stays while the table scrolls', async () => {
  await withPhone(app.url, { screen: 'small' }, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await toWalk(installer);
    await page.getByRole('link', { name: /^W2–P1/ }).tap();
    await page.getByRole('link', { name: 'Read the whole column' }).tap();
    expect(await cursor(page)).toBe('W2–P1');
    const head = page.getByRole('columnheader', { name: /^W2/ });
    const box = await cell(page, 'W2–P1').boundingBox();
    const headBox = await head.boundingBox();
    if (!box || !headBox) throw new Error('the cell is not on the screen');
    expect(box.y).toBeGreaterThanOrEqual(headBox.y + headBox.height - 1);
    await shot(page, 'table-small');
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '36px';
    });
    await page.setViewportSize({ width: 320, height: 640 });
    await shot(page, 'table-320-large', { fullPage: true });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(wide).toBe(0);
    const scrolls = await page.locator('.table-scroll').evaluate((box) => box.scrollWidth > box.clientWidth);
    expect(scrolls).toBe(true);
    await page.getByRole('link', { name: 'Only this' }).tap();
    await page.waitForURL(/W2-P1$/);
  });
});
