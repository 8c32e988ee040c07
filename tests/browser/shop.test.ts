import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { newProfile, removeProfile } from './support/profile.ts';
import { shot } from './support/shots.ts';

let app: App;
const profile = newProfile();
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
  removeProfile(profile);
});

/** Types into a setting and leaves it, as a person does. */
async function set({ page }: Phone, name: string | RegExp, value: string): Promise<void> {
  const field = page.getByRole('textbox', { name });
  await field.fill(value);
  await field.blur();
}

const jobOf = ({ page }: Phone): string => new URL(page.url()).hash.split('/')[2] ?? '';

/** The demo job, its bow cover chosen at the bench. */
async function demo({ page, open }: Phone): Promise<string> {
  await open('#/');
  await page.getByRole('button', { name: 'Load the demo job' }).click();
  await page.getByRole('heading', { name: 'Open-bow cover' }).waitFor();
  return jobOf({ page } as Phone);
}

describe.each([
  { screen: 'phone', size: '390x844' },
  { screen: 'desk', size: '1440x900' },
] as const)('shop settings at $size', ({ screen }) => {
  test('are set, refused with a sentence, go back to the default, and go into a new job', async () => {
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      await phone.open('#/keep');
      await page.getByRole('link', { name: 'Shop settings' }).click();
      await page.getByText('Default: about 1/4" (6 mm)').first().waitFor();
      await shot(page, `shop-${screen}-default`, { fullPage: true });
      await expectAccessible(page);
      await set(phone, 'Name of the shop', 'Harbour Canvas');
      await set(phone, 'Edges, fasteners and tracks, within', '3/8');
      const back = page.getByRole('button', { name: 'Back to the default: Edges, fasteners and tracks, within' });
      await back.waitFor();
      await set(phone, 'From one fastener to the next, at least', '900 mm');
      await page.getByText('The least gap would be wider than the widest. Nothing was changed.').waitFor();
      await set(phone, 'Corners on a cord, within', 'wide');
      await page.getByText('That is not a length.').waitFor();
      await set(phone, /^Taut tape over/, '10 mm');
      await shot(page, `shop-${screen}-own`, { fullPage: true });
      await expectAccessible(page);
      expect(await page.locator('.page').innerText()).not.toMatch(/deviation|sigma|percentile|confidence/i);
      await back.click();
      expect(await page.getByRole('textbox', { name: /^Edges/ }).inputValue()).toBe('6 mm');
      await set(phone, /^Edges/, '3/8');
      await page.reload();
      expect(await page.getByRole('textbox', { name: /^Edges/ }).inputValue()).toBe('3/8"');

      await phone.open('#/new');
      await page.getByRole('textbox', { name: /^Customer/ }).fill('R. Sample');
      await page.getByRole('button', { name: 'Begin', exact: true }).click();
      await page.getByRole('button', { name: /^Tension shade/ }).click();
      await page.waitForURL(/#\/job\/.+\/.+\/.+/);
      const job = jobOf(phone);
      await phone.open(`#/bench/${job}`);
      const limits = page.getByRole('region', { name: 'Judged by' });
      await limits.getByText('This job is judged by the limits of Harbour Canvas:').waitFor();
      await limits.getByText('Edges, fasteners and tracks, within: 3/8" (9.5 mm), default about 1/4" (6 mm)').waitFor();
      await page.getByRole('button', { name: 'Not judged by the default limits' }).click();
      await shot(page, `shop-${screen}-judged`);
      await phone.open('#/bench');
      await page.getByRole('link', { name: 'Shop settings' }).click();
      await page.getByRole('button', { name: /^Back to the default: Edges/ }).click();
      await phone.open(`#/bench/${job}`);
      await limits.getByText('Your shop settings say something else now.').waitFor();
      await limits
        .getByText('Findings may come and go, and a piece that was cleared to cut must be judged again.')
        .waitFor();
      await page.getByRole('button', { name: 'The shop settings have changed since this job was begun' }).click();
      await shot(page, `shop-${screen}-behind`);
      await expectAccessible(page);
      await page.getByTestId('update-limits').click();
      await limits.getByText('Your shop settings say something else now.').waitFor({ state: 'detached' });
      expect(await limits.innerText()).not.toContain('Edges, fasteners');
      await limits.getByText(/^Taut tape over 10 ft/).waitFor();
    });
  });

  test('leave a device as a file and come in at another, refused where they are something else', async () => {
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      await phone.open('#/shop');
      await set(phone, /^Hem/, '1 1/4');
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId('save-shop').click()]);
      expect(download.suggestedFilename()).toMatch(/^shop settings 20\d\d-\d\d-\d\d\.json$/);
      const path = `${profile}-shop-${screen}.json`;
      copyFileSync(await download.path(), path);
      const text = readFileSync(path, 'utf8');
      expect(JSON.parse(text)).toMatchObject({ format: 'tapetrue-shop', rules: { hem: 31.75 } });
      await page.getByRole('button', { name: /^Back to the default: Hem/ }).click();

      const picker = page.locator('input[type=file]');
      const wrong = `${profile}-wrong.json`;
      for (const [content, why] of [
        ['{"format":"tapetrue-packet"}', 'This file is something else, not shop settings.'],
        [text.slice(0, 80), 'This file cannot be read as settings.'],
        [text.replace('"major": 1', '"major": 9'), 'made by a newer version'],
      ] as const) {
        writeFileSync(wrong, content);
        await picker.setInputFiles(wrong);
        await page.getByRole('alert').getByText(why).waitFor();
        await page.getByText('Refused. What is stored was not touched.').waitFor();
      }
      expect(await page.getByRole('textbox', { name: /^Hem/ }).inputValue()).toBe('38 mm');
      await picker.setInputFiles(path);
      await page.getByText(/1 number of its own, 0 templates/).waitFor();
      expect(await page.getByRole('textbox', { name: /^Hem/ }).inputValue()).toBe('38 mm');
      await page.getByRole('button', { name: 'Use these settings' }).click();
      await page.getByText('Taken over. No template was new.').waitFor();
      expect(await page.getByRole('textbox', { name: /^Hem/ }).inputValue()).toBe('1 1/4"');
    });
  });

  test('keep a piece as a template, which is measured anew in another job', async () => {
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      const job = await demo(phone);
      await page.getByRole('button', { name: 'Paper, template, sister boat' }).click();
      await page.getByRole('button', { name: 'Keep this piece as a template' }).nth(1).click();
      await page.getByRole('textbox', { name: 'Name of the template' }).fill('Bow, ten studs');
      await shot(page, `shop-${screen}-keep`);
      await page.getByRole('button', { name: 'Keep it' }).click();
      await page.getByText('Kept as “Bow, ten studs”.').waitFor();
      await expectAccessible(page);
      await phone.open('#/new');
      await page.getByRole('textbox', { name: /^Customer/ }).fill('R. Sample');
      await page.getByRole('button', { name: 'Begin', exact: true }).click();
      await page.getByRole('heading', { name: 'Your own pieces' }).waitFor();
      await shot(page, `shop-${screen}-offered`, { fullPage: true });
      await page.getByRole('button', { name: /^Bow, ten studs/ }).click();
      await page.waitForURL(/#\/job\/.+\/.+\/line/);
      expect(jobOf(phone)).not.toBe(job);
      await page.getByText('Which line do you measure to?').first().waitFor();
      await phone.open('#/shop');
      await page.getByRole('button', { name: 'Remove Bow, ten studs' }).click();
      await page.getByRole('button', { name: 'Remove it' }).click();
      await page.getByText('None yet.', { exact: false }).waitFor();
    });
  });
});

test('a sister boat is begun from a measured one; what differs is doubted without leading whoever reads again', async () => {
  await withPhone(app.url, { profile }, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    await demo(phone);
    await page.getByRole('button', { name: 'Paper, template, sister boat' }).tap();
    await page.getByRole('button', { name: 'Begin a job for a sister boat' }).tap();
    await page.getByText(/doubted here/).waitFor();
    await page.getByRole('textbox', { name: 'Customer', exact: true }).fill('Q. Other');
    await page.getByRole('textbox', { name: 'Boat', exact: true }).fill('Pearl');
    await shot(page, 'sister-form', { fullPage: true });
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Begin', exact: true }).tap();
    await page.getByRole('heading', { name: /Q. Other/ }).waitFor();
    const job = jobOf(phone);
    await shot(page, 'sister-job', { fullPage: true });
    const shade = await page.getByRole('link', { name: 'All steps' }).first().getAttribute('href');
    await phone.open(`${shade}/A-B`);
    await installer.understandCautions();
    const screen = page.locator('.page');
    expect(await screen.innerText()).not.toMatch(/75 11\/16|sister/);
    await installer.type('73 5/8');
    await installer.next();
    await page.locator('.strip').getByText('A–B differs from the sister boat. Read it a second time.').waitFor();
    expect(await screen.innerText()).not.toMatch(/75 \d+\/16|longer|shorter/);
    await shot(page, 'sister-doubt');
    await expectAccessible(page);
    await installer.type('73 5/8');
    await installer.next();
    await page
      .locator('.strip')
      .getByText(/a second look agrees/)
      .waitFor();
    expect(await screen.innerText()).not.toMatch(/75 \d+\/16/);
    await shot(page, 'sister-agrees');
    await phone.open(`#/leave/${job}`);
    await page.getByText(/This boat may be built so/).waitFor();
    expect(await screen.innerText()).not.toMatch(/75 \d+\/16/);
  });
  await withPhone(app.url, { profile, screen: 'desk' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await page.getByRole('link', { name: /Q. Other/ }).click();
    await page.getByRole('heading', { name: 'Decide' }).waitFor();
    await page
      .getByText(/^Here 73 5\/8", .+ 75 \d+\/16"\.$/)
      .first()
      .waitFor();
    await shot(page, 'sister-bench', { fullPage: true });
    await expectAccessible(page);
  });
});

/** What the sheets must say to be of use without a phone. */
const SHEETS = [
  { kind: 'tension-shade', says: ['A–B', 'Height of C', 'Careful:', 'Both mounts', 'Could not tell'] },
  { kind: 'open-bow', says: ['W1–P1', 'Edge fasteners', 'Careful:', 'Port edge', 'Only if'] },
] as const;

describe.each([
  { format: 'A4', width: 210, height: 297 },
  { format: 'Letter', width: 215.9, height: 279.4 },
] as const)('paper of $format', ({ format, width, height }) => {
  test.each(SHEETS)('holds the whole sheet of $kind, page by page', async ({ kind, says }) => {
    await withPhone(app.url, { screen: 'desk' }, async (phone) => {
      const { page } = phone;
      await phone.open(`#/paper/${kind}`);
      await page.locator('.paper-desk').waitFor();
      const pages = page.locator('.paper-page');
      const count = await pages.count();
      const text = await page.locator('.paper-desk').innerText();
      for (const words of says) expect(text).toContain(words);
      for (let at = 0; at < count; at += 1) {
        expect(await pages.nth(at).innerText()).toContain(`Page ${at + 1} of ${count}`);
        const over = await pages.nth(at).evaluate((one) => one.scrollHeight - one.clientHeight);
        expect(over).toBeLessThanOrEqual(1);
      }
      await expectAccessible(page);
      const pdf = await page.pdf({ format, preferCSSPageSize: false });
      expect(pagesOf(pdf)).toBe(count);
      // Points, 72 to an inch; browsers round them up.
      for (const [at, edge] of [width, height].entries()) expect(mediaBox(pdf)[at]).toBeCloseTo((edge / 25.4) * 72, -1);
      keep(pdf, `paper-${kind}-${format}.pdf`);
    });
  });
});

test('the paper of a piece follows its walk, names its job on every page and tells none of its values', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    await demo(phone);
    const href = (await page.getByRole('link', { name: 'All steps' }).nth(1).getAttribute('href')) ?? '';
    const [, , job, piece] = href.split('/');
    await phone.open(href);
    await page.locator('ol.list > li').first().waitFor();
    const walk = await page.locator('ol.list > li .grow').allInnerTexts();
    await phone.open(`#/paper/${job}/${piece}`);
    await page.locator('.paper-desk').waitFor();
    const text = await page.locator('.paper-desk').innerText();
    expect(text).not.toMatch(/72 3\/16|27 3\/16|35 3\/16/);
    const pages = await page.locator('.paper-page').allInnerTexts();
    for (const one of pages) expect(one).toMatch(/Job: Demo/);
    const numbers = await page
      .locator('.paper-step > .paper-number, .paper-reading:not(.head) > .paper-number')
      .allInnerTexts();
    const plain = numbers.filter((number) => /^\d+$/.test(number));
    expect(plain).toEqual(walk.map((_, index) => String(index + 1)));
    await shot(page, 'paper-phone', { fullPage: true });
    await expectAccessible(page);
    keep(await page.pdf({ format: 'A4' }), 'paper-piece-A4.pdf');
  });
});

const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

function mediaBox(pdf: Buffer): number[] {
  const [, box = ''] = /\/MediaBox\s*\[([^\]]+)\]/.exec(pdf.toString('latin1')) ?? [];
  return box
    .trim()
    .split(/\s+/)
    .slice(2)
    .map((edge) => Math.round(Number(edge)));
}

/** Beside the pictures, where somebody wants to look at the printed pages. */
function keep(pdf: Buffer, name: string): void {
  const folder = process.env.SHOTS;
  if (!folder) return;
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, name), pdf);
}
