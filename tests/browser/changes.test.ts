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

async function bowCover(installer: Installer): Promise<void> {
  await installer.begin('M. Sample', 'Perla', 'Sam');
  await installer.addPiece('Open-bow cover');
  await installer.understandCautions();
}

/** All steps of the piece on the screen, from one of its steps. */
async function toWalk(page: Page): Promise<void> {
  await page.getByRole('link', { name: /All steps/ }).tap();
  await page.getByRole('heading', { name: 'Change the piece' }).waitFor();
}

const change = (page: Page, what: string): Promise<void> => page.getByRole('link', { name: what, exact: true }).tap();
const openPoint = (page: Page, label: string): Promise<void> =>
  page.getByRole('button', { name: new RegExp(`^${label}\\b`), expanded: false }).tap();
/** Labels along the edge, as the screen lists them. */
const edge = (page: Page): Promise<string[]> => page.locator('ol.list > .point-row strong').allInnerTexts();
const steps = (page: Page): Promise<string[]> => page.locator('ol.list > li a .grow').allInnerTexts();

/** The large text of a person who needs it, on the narrowest phone; then back. */
async function large(page: Page, name: string): Promise<void> {
  await page.setViewportSize({ width: 320, height: 640 });
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wide).toBe(0);
  await shot(page, `${name}-320-large`, { fullPage: true });
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '';
  });
  await page.setViewportSize({ width: 390, height: 844 });
}

test('a point added between two is asked for from each mark, and one undo takes all of it back', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await bowCover(installer);
    await toWalk(page);
    const before = await steps(page);
    await change(page, 'Change the points');
    await page.locator('.point-row').first().waitFor();
    expect(await edge(page)).toEqual(['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1']);
    await openPoint(page, 'P2');
    await shot(page, 'points-open', { fullPage: true });
    await expectAccessible(page);
    await large(page, 'points');
    await installer.tap('Add a point after P2');
    await page.getByText('P3 is in. 5 tapes more to read.').waitFor();
    expect(await edge(page)).toEqual(['P1', 'P2', 'P3', 'P4', 'T', 'S3', 'S2', 'S1']);
    await shot(page, 'points-added');
    await page.getByRole('link', { name: 'Back' }).tap();
    await page.getByRole('heading', { name: 'Change the piece' }).waitFor();
    const after = await steps(page);
    expect(after.slice(after.indexOf('W1–P2'), after.indexOf('W1–T'))).toEqual(['W1–P2', 'W1–P3', 'W1–P4']);
    expect(after).toHaveLength(before.length + 4);
    await page.getByText('One reading that nobody had taken is not asked any more.').waitFor();
    await change(page, 'Change the points');
    await openPoint(page, 'P1');
    await installer.tap('One place later');
    await page.getByText('The edge now runs P1 P2 P3 P4 T S3 S2 S1.').waitFor();
    await installer.tap('Undo');
    await page.waitForTimeout(300);
    await installer.tap('Undo');
    await page.waitForFunction(() => document.querySelectorAll('ol.list > .point-row').length === 7);
    await page.getByRole('link', { name: 'Back' }).tap();
    await page.getByRole('heading', { name: 'Change the piece' }).waitFor();
    expect(await steps(page)).toEqual(before);
  });
});

test('a mark moved in mid-walk is a new mark: what was read stays and says so, the rest is asked from the new one', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await bowCover(installer);
    await toWalk(page);
    await page.getByRole('link', { name: /^W1–W2/ }).tap();
    for (const slot of ['W1-W2', 'W1-F', 'W2-F', 'W1-P1', 'W1-P2']) {
      await page.waitForFunction((key) => location.hash.endsWith(`/${key}`), slot);
      await installer.reading(truth(slot));
    }
    await toWalk(page);
    await change(page, 'Change the points');
    await openPoint(page, 'W1');
    await installer.tap('W1 was moved');
    await page.getByText('Write W3 on it.').waitFor();
    await shot(page, 'mark-moved-ask');
    await installer.tap('Yes, it was moved');
    await page.getByText('W3 stands for W1. Tape it to W2 and F first.').waitFor();
    await shot(page, 'mark-moved');
    await expectAccessible(page);
    await page.getByRole('link', { name: 'To the first of them' }).tap();
    await page.getByText(/Hook on W3 \(in place of the port mark at the windshield foot/).waitFor();
    await shot(page, 'step-new-mark');
    await toWalk(page);
    const names = await steps(page);
    expect(names.filter((name) => name.startsWith('old W1')).length).toBe(4);
    expect(names.some((name) => /read before W1 was moved/.test(name))).toBe(true);
    expect(names.filter((name) => name.startsWith('W3–'))).toEqual(
      ['W2', 'F', 'P3', 'T', 'S3', 'S2', 'S1'].map((label) => `W3–${label}`),
    );
    await page.getByRole('link', { name: /^old W1–P2/ }).tap();
    await page.getByText('Read before W1 was moved.').waitFor();
    expect(await page.locator('.pad').count()).toBe(0);
    await shot(page, 'step-old-mark');
    await installer.tap('Ask for it from W3');
    await page.getByText(/Hook on W3/).waitFor();
    await page.getByRole('link', { name: 'Read the whole column' }).tap();
    await page.getByRole('columnheader', { name: /^old W1/ }).waitFor();
    expect(await page.getByRole('button', { name: /^old W1–P1, .*before the mark was moved/ }).isDisabled()).toBe(true);
    await shot(page, 'table-moved');
  });
});

/** Inches between four corners in a plane, to a sixteenth; invented: 36 x 20, a corner cut back. */
const LID: Readonly<Record<string, string>> = {
  'C1-C2': '36',
  'C2-C3': '20',
  'C3-C4': '35',
  'C4-C1': '20 1/16',
  'C1-C3': '41 3/16',
  'C2-C4': '40 5/16',
};

test('a piece no guide knows, from nothing to clear to leave', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await page.getByRole('button', { name: /^Something else/ }).tap();
    await page.getByRole('textbox', { name: 'What is it called?' }).fill('Locker lid');
    await installer.tap('Yes, in one plane');
    await shot(page, 'free-begun');
    await large(page, 'free');
    await installer.tap('Begin');
    await page.getByRole('textbox', { name: 'Short name' }).waitFor();
    for (const label of ['C1', 'C2', 'C3', 'C4']) {
      await page.waitForFunction((name) => document.querySelector('input')?.value === name, label);
      if (label === 'C1') await page.getByRole('textbox', { name: /^What it is/ }).fill('port aft corner, outer edge');
      await installer.tap('Add it');
      await page.locator('.point-row').filter({ hasText: label }).waitFor();
    }
    await shot(page, 'free-points', { fullPage: true });
    await expectAccessible(page);
    const leave = async (): Promise<string> => {
      const job = new URL(page.url()).hash.split('/')[2];
      await page.evaluate((id) => {
        location.hash = `#/leave/${id}`;
      }, job);
      await page.getByRole('heading', { name: 'Before you leave' }).waitFor();
      return page.locator('.page').innerText();
    };
    expect(await leave()).toMatch(/Not yet: 4 points to fix[\s\S]*C1: nothing is measured at it yet/);
    await shot(page, 'free-nothing-yet');
    await page.getByRole('link', { name: 'Go there' }).first().tap();
    await page.getByText('Nothing is asked yet.').waitFor();
    const read = async (pair: string): Promise<void> => {
      const [from = '', to = ''] = pair.split('-');
      await page.getByRole('heading', { name: 'Change the piece' }).waitFor();
      await change(page, 'Add a reading');
      await page
        .getByRole('combobox', { name: 'Hook on' })
        .selectOption({ label: from === 'C1' ? 'C1, port aft corner, outer edge' : from });
      await page
        .getByRole('combobox', { name: 'Read at' })
        .selectOption({ label: to === 'C1' ? 'C1, port aft corner, outer edge' : to });
      if (pair === 'C1-C2') {
        await shot(page, 'own-reading');
        await expectAccessible(page);
        await large(page, 'own-reading');
      }
      await installer.tap('Read it now');
      await page.getByTestId('next').waitFor();
      await installer.type(LID[pair] ?? '');
      await installer.next();
      // Where nothing is open any more, Next leads to what stands in the way.
      await page.getByRole('heading', { name: 'Before you leave' }).waitFor();
    };
    const toWalkOfPiece = async (): Promise<void> => {
      await page.getByRole('link', { name: 'Back' }).tap();
      await page.getByRole('link', { name: 'All steps' }).tap();
    };
    for (const pair of ['C1-C2', 'C2-C3', 'C3-C4', 'C4-C1']) {
      await read(pair);
      if (pair !== 'C4-C1') await toWalkOfPiece();
    }
    expect(await page.locator('.page').innerText()).toMatch(/is not fixed yet|Two shapes fit/);
    await shot(page, 'free-floats', { fullPage: true });
    for (const pair of ['C1-C3', 'C2-C4']) {
      await toWalkOfPiece();
      await read(pair);
      if (pair === 'C1-C3') await page.getByText(/Two shapes fit these readings .* One tape decides: C2–C4/).waitFor();
    }
    await page.getByText(/Clear to leave. Everything the cloth depends on is fixed within/).waitFor();
    await page.getByText('No guide knows “Locker lid”').waitFor();
    await shot(page, 'free-clear', { fullPage: true });
  });
});

test('a second piece may use the marks of the first: one plain question, and what lies between them is not asked twice', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await bowCover(installer);
    await toWalk(page);
    await page.getByRole('link', { name: 'Back' }).tap();
    await installer.tap('Add a piece');
    await page.getByRole('button', { name: /^Open-bow cover/ }).tap();
    await page.getByText('Are some points of it on the boat already, from Open-bow cover?').waitFor();
    await shot(page, 'shared-question');
    await expectAccessible(page);
    await installer.tap('Yes, some are the same');
    for (const label of ['W1', 'W2']) {
      const field = page.getByRole('combobox', { name: new RegExp(`^${label},`) });
      const [option] = await field
        .locator('option')
        .filter({ hasText: new RegExp(`^${label},`) })
        .all();
      await field.selectOption((await option?.getAttribute('value')) ?? '');
    }
    await shot(page, 'shared-named', { fullPage: true });
    await large(page, 'shared');
    await installer.tap('Begin');
    await page.waitForURL(/#\/job\/.+\/.+\/.+/);
    await toWalk(page);
    const names = await steps(page);
    expect(names).not.toContain('W1–W2');
    expect(names).toContain('W1–F');
    expect(names).toContain('W1–P1');
  });
});
