import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { canReadPdf, darkLines, pageAsDots, pageSizes, pageTexts } from './support/pdf.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';
import { openTable } from './support/table.ts';

let app: App;
const folder = process.env.SHOTS || mkdtempSync(join(tmpdir(), 'tapetrue-print-'));
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
  if (!process.env.SHOTS) rmSync(folder, { recursive: true, force: true });
});

// ISO 216 A4 and ANSI/ASME Y14.1 size A, mm.
const SIZES = { a4: [210, 297], letter: [215.9, 279.4] } as const;

async function printed(page: Page, name: string): Promise<string> {
  const path = join(folder, `${name}.pdf`);
  await page.pdf({ path, preferCSSPageSize: true });
  return path;
}

/** Every page of this size, one way up or the other, and none but those that are on the screen. */
async function expectPages(page: Page, path: string, paper: keyof typeof SIZES): Promise<void> {
  const sizes = pageSizes(path);
  expect(sizes).toHaveLength(await page.locator('.paper-page').count());
  for (const { width, height } of sizes) {
    const [short, long] = [Math.min(width, height), Math.max(width, height)];
    expect(Math.abs(short - SIZES[paper][0])).toBeLessThan(0.5);
    expect(Math.abs(long - SIZES[paper][1])).toBeLessThan(0.5);
  }
}

/** The demo job at the bench; its id. */
async function demo({ page, open }: Phone): Promise<string> {
  await open('#/');
  await page.getByRole('button', { name: 'Load the demo job' }).click();
  await page.getByRole('heading', { name: 'Open-bow cover' }).waitFor();
  const job = new URL(page.url()).hash.split('/')[2] ?? '';
  await open(`#/bench/${job}`);
  return job;
}

const PAPERS = [
  { paper: 'a4', name: 'A4' },
  { paper: 'letter', name: 'US Letter' },
] as const;

describe.runIf(canReadPdf)('the job sheet', () => {
  test.each([
    { piece: 'Tension shade', flat: false },
    { piece: 'Open-bow cover', flat: true },
  ])('of the $piece says on every page what it is of, and that nobody has cleared it', async ({ piece, flat }) => {
    await withPhone(app.url, { screen: 'desk' }, async (phone) => {
      const { page } = phone;
      await demo(phone);
      await page.getByRole('button', { name: new RegExp(`^${piece}`) }).click();
      if (flat) {
        // Said where it would be offered, before anybody goes there.
        await page
          .getByTestId('real-size')
          .getByText(/takes \d+ sheets of US Letter, and more than 60/)
          .waitFor();
        await page.getByTestId('real-size').scrollIntoViewIfNeeded();
        await shot(page, 'real-size-refused');
      }
      expect(await page.getByRole('link', { name: 'Print in real size' }).count()).toBe(0);
      await page.getByRole('link', { name: 'Print the job sheet' }).click();
      await page.locator('.paper-page').first().waitFor();
      await shot(page, `sheet-${flat}`);
      await expectAccessible(page);
      for (const { paper, name } of PAPERS) {
        await page.getByTestId('paper').selectOption({ label: name });
        await page.locator(`.paper.${paper} .paper-page`).first().waitFor();
        const path = await printed(page, `sheet-${flat}-${paper}`);
        await expectPages(page, path, paper);
        const texts = pageTexts(path);
        for (const [index, text] of texts.entries()) {
          expect(text).toContain(piece);
          expect(text).toContain('NOT CLEARED TO CUT');
          expect(text).toMatch(/State [0-9a-f]{8}: \d+ entries/);
          expect(text).toMatch(/Seal [0-9a-f]{64}/);
          expect(text).toContain(`Page ${index + 1} of ${texts.length}`);
          expect(text).toContain('Demo: invented boat and people');
        }
        const [first = ''] = texts;
        expect(first).toMatch(/Scale .* in = 1 ft \(1:\d+\)/);
        expect(/A PLAN, NOT A CUTTING PATTERN/.test(first)).toBe(!flat);
        const all = texts.join('\n');
        for (const said of ['Readings', 'Takes as typed', 'Adjusted by', 'Allowances', 'Answers'])
          expect(all).toContain(said);
      }
      await page.evaluate(() => location.replace(location.hash.replace('/sheet/', '/tiles/')));
      const why = flat ? /takes \d+ sheets of US Letter/ : /This piece is not flat/;
      await page.getByText(why).waitFor();
      expect(await page.getByTestId('print').count()).toBe(0);
    });
  });
});

/** A lid of 20 by 15 in, measured with both its diagonals. */
const LID = [
  'kind,from,to,reading,piece',
  'straight,A,B,15,lid',
  'straight,B,C,20,lid',
  'straight,C,D,15,lid',
  'straight,A,D,20,lid',
  'straight,A,C,25,lid',
  'straight,B,D,25,lid',
  'flat,*,,,lid',
  '',
].join('\n');

describe.runIf(canReadPdf)('a flat piece in real size', () => {
  test.each(PAPERS)('on $name is as large as it was measured', async ({ paper, name }) => {
    await withPhone(app.url, { screen: 'desk' }, async (phone) => {
      const { page } = phone;
      await openTable(phone, LID);
      await page.getByRole('link', { name: 'Print in real size' }).click();
      await page.getByTestId('paper').selectOption({ label: name });
      await page.locator(`.paper.${paper} .paper-page`).first().waitFor();
      await shot(page, `tiles-${paper}`);
      await expectAccessible(page);
      const path = await printed(page, `tiles-${paper}`);
      await expectPages(page, path, paper);
      const texts = pageTexts(path);
      expect(texts).toHaveLength(7);
      for (const [index, text] of texts.entries()) {
        expect(text).toContain('lid');
        expect(text).toContain('NOT CLEARED TO CUT');
        expect(text).toMatch(/State [0-9a-f]{8}: \d+ entries/);
        expect(text).toMatch(/Seal [0-9a-f]{64}/);
        expect(text).toContain(`Page ${index + 1} of 7`);
        expect(text).toContain('print at 100 %');
        if (index > 0) expect(text).toMatch(/Sheet [AB][1-3]/);
      }
      expect(texts[0]).toContain('Measure the square before you cut');

      // The square as a printer of 300 dots to the inch sets it, across and down, clear of its words.
      const dots = pageAsDots(path, 1, 300);
      const [left = 0, inner = 0, outer = 0] = darkLines(dots, 'across', 110);
      expect(Math.abs(inner - left - 100)).toBeLessThan(0.3);
      expect(Math.abs(outer - left - 101.6)).toBeLessThan(0.3);
      const [top = 0, second = 0, bottom = 0] = darkLines(dots, 'down', 14).filter((at) => at > 22 && at < 130);
      expect(Math.abs(bottom - second - 100)).toBeLessThan(0.3);
      expect(Math.abs(bottom - top - 101.6)).toBeLessThan(0.3);
      console.log(`${name}: square ${(inner - left).toFixed(2)} by ${(bottom - second).toFixed(2)} mm at 300 dpi`);
    });
  });

  test('says how many sheets it takes before it makes more than a dozen', async () => {
    await withPhone(app.url, { screen: 'desk' }, async (phone) => {
      const { page } = phone;
      await openTable(phone, LID.replace(/,15,/g, ',30,').replace(/,20,/g, ',40,').replace(/,25,/g, ',50,'));
      const offered = page.getByRole('link', { name: 'Print in real size' });
      const before = await offered.innerText();
      await offered.scrollIntoViewIfNeeded();
      await shot(page, 'real-size-offered');
      await offered.click();
      const said = await page.getByTestId('sheets').innerText();
      const count = Number(/\d+/.exec(said)?.[0]);
      expect(count).toBeGreaterThan(12);
      expect(before).toContain(`${count} sheets`);
      expect(await page.locator('.paper-page').count()).toBe(0);
      await page.getByTestId('show-all').click();
      await page.getByTestId('print').waitFor();
      expect(await page.locator('.paper-page').count()).toBe(count + 1);
    });
  });
});
