import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

test('a shade is begun and a reading typed by keyboard alone, nonsense refused in words', async () => {
  await withPhone(app.url, { screen: 'small' }, async ({ page, open }) => {
    await open('#/new');
    await page.getByRole('textbox', { name: /^Customer/ }).press('Enter');
    await page.waitForURL(/#\/job\/[^/]+$/);
    await page.getByRole('button', { name: /^Tension shade/ }).press('Enter');
    await page.getByRole('button', { name: 'Understood' }).press('Enter');
    await page.getByRole('button', { name: 'Foredeck' }).press('Enter');
    await page.getByRole('button', { name: 'The real poles' }).press('Enter');
    await page.getByRole('button', { name: 'Understood' }).press('Enter');
    await page.keyboard.type('12\' 15"');
    await page.keyboard.press('Enter');
    await page.getByText('With feet, inches go up to 11').waitFor();
    await page.getByText('Understood so far').waitFor();
    await shot(page, 'refused-small');
    for (let i = 0; i < 10; i += 1) await page.keyboard.press('Backspace');
    await page.keyboard.type("6' 3 5/8");
    expect(await page.getByRole('status', { name: 'Reading' }).innerText()).toContain("6' 3 5/8");
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => location.hash.endsWith('/A-C'));
    await page.goBack();
    await page.getByText("6' 3 5/8").waitFor();
    await page
      .getByText(/75 5\/8"/)
      .first()
      .waitFor();
  });
});

test('on the smallest screen with text twice as large nothing spills sideways and the pad can be reached', async () => {
  await withPhone(app.url, { screen: 'small' }, async ({ page, open }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await open();
    await page.getByRole('button', { name: 'Load the demo job' }).tap();
    await page.getByRole('link', { name: 'All steps' }).last().tap();
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    for (const step of ['F–P3', 'Edge fasteners', 'Port edge']) {
      await page
        .getByRole('link', { name: new RegExp(step) })
        .first()
        .tap();
      await page.getByRole('heading', { level: 1 }).waitFor();
      const spill = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(spill, step).toBeLessThanOrEqual(0);
      await page.getByRole('button', { name: 'Skip' }).scrollIntoViewIfNeeded();
      expect(await page.getByRole('button', { name: 'Skip' }).isVisible()).toBe(true);
      await shot(page, `large-text-${step.replace(/\W/g, '')}`);
      await expectAccessible(page);
      await page.getByRole('link', { name: /All steps/ }).tap();
    }
  });
});

test('a readings table is taken in, and one with faults is refused with its lines, leaving nothing behind', async () => {
  const good = join(tmpdir(), 'tapetrue-readings.csv');
  const bad = join(tmpdir(), 'tapetrue-faults.csv');
  writeFileSync(good, 'kind,from,to,reading,note\nstraight,A,B,75 5/8,\nstraight,B,C,59 1/8,\nstraight,A,C,96,\n');
  writeFileSync(bad, 'kind,from,to,reading,note\nstraight,A,B,about ten,\nstraight,B,C,59 1/8,\n');
  await withPhone(app.url, {}, async ({ page, open }) => {
    await open();
    const picker = page.locator('input[type=file][multiple]');
    await picker.setInputFiles(bad);
    await page.getByText('These rows were not understood').waitFor();
    await page.getByText(/Line 2, reading/).waitFor();
    await page.getByText('No job yet').waitFor();
    await picker.setInputFiles(good);
    await page.getByText(/tapetrue-readings: \d+ new entries/).waitFor();
    await page.getByRole('link', { name: 'Open it' }).tap();
    await page.getByRole('heading', { name: 'Piece from a table' }).waitFor();
    await shot(page, 'table-job');
  });
});
