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

/** Pictures on the narrowest phone and with text twice as large, for somebody to look at. */
async function shots(page: Page, name: string): Promise<void> {
  await shot(page, name);
  const before = page.viewportSize();
  await page.setViewportSize({ width: 320, height: 640 });
  await shot(page, `${name}-320`);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  await shot(page, `${name}-320-large`, { fullPage: true });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '';
  });
  if (before) await page.setViewportSize(before);
}

/** A bow cover with some of its gaps taped, at its edge: from P1 by way of P2, P3, T, S3 and S2 to S1. */
async function atTheEdge(installer: Installer, gaps: Record<string, string> = {}): Promise<void> {
  await installer.begin('M. Sample', 'Perla', 'Sam');
  await installer.addPiece('Open-bow cover');
  await installer.understandCautions();
  await installer.tap('Line of the fasteners');
  await installer.page.waitForFunction(() => !location.hash.endsWith('/line'));
  for (const [slot, text] of Object.entries(gaps)) {
    await goTo(installer, new RegExp(`^${slot.replace('-', '–')}`));
    await installer.type(text);
    await installer.next();
    await installer.movedFrom(slot);
  }
  await goTo(installer, /Edge fasteners/);
  await installer.page.getByRole('heading', { name: 'What closes it?' }).waitFor();
}

async function goTo(installer: Installer, name: RegExp): Promise<void> {
  await installer.page.getByRole('link', { name: /All steps/ }).tap();
  await installer.page.getByRole('link', { name }).tap();
}

test('an edge closed by snaps that are there, a zip, and planned snaps: one tap an answer, spacing to go by', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await atTheEdge(installer, { 'S3-S2': '32 5/16', 'S2-S1': '30 5/8' });
    await shots(page, 'edge-closes');
    await expectAccessible(page);

    await installer.tap('Another closure begins at P3');
    await installer.tap('Another closure begins at S3');
    await page.getByRole('heading', { name: 'P1–P3: what closes it?' }).waitFor();
    await installer.tap('Snaps');
    await installer.tap('On the boat already');
    await installer.tap('Solid laminate');
    for (const place of ['2', '8 1/2', '15']) {
      await installer.type(place);
      await installer.next();
      await page.locator('.fasteners > li').first().getByText(place).waitFor();
    }
    await shots(page, 'edge-taping');
    await installer.tap('On to P3–S3');

    await installer.tap('Zip');
    await installer.tap('To be fitted');
    await installer.tap('Aft');
    await installer.tap('The shop, at the fitting');
    await installer.tap('On to S3–S1');

    await installer.tap('Snaps');
    await installer.tap('To be fitted');
    await installer.tap('Laminate over a core');
    await installer.understandCautions();
    await installer.tap('The owner');
    await page.getByText('S3–S1 is 62 15/16" long.').waitFor();
    const number = page.getByRole('textbox', { name: 'How many' });
    const spacing = page.getByRole('textbox', { name: 'Spacing' });
    const [first, every] = [Number(await number.inputValue()), await spacing.inputValue()];
    // 11 on 62 15/16 less an inch at either end: ten gaps.
    expect([first, every]).toEqual([11, '6 1/8"']);
    await shots(page, 'edge-planned');
    await expectAccessible(page);

    await installer.tap('One more');
    expect(await number.inputValue()).toBe(String(first + 1));
    expect(await spacing.inputValue()).not.toBe(every);
    await spacing.fill(every);
    await spacing.press('Enter');
    expect(await number.inputValue()).toBe(String(first));
    await number.fill('0');
    await page.getByText('A whole number from 1 to 999.').waitFor();
    expect(await page.getByTestId('plan').isDisabled()).toBe(true);
    await number.fill('3');
    await page.getByText(/outside the usual 4" to 8"/).waitFor();
    await number.fill(String(first));
    await installer.tap(`Plan ${first}`);
    await page.getByTestId('run-done').waitFor();
    await shots(page, 'edge-told');

    // A row that was taped and is then planned anew is kept, and the step says what that means.
    await page.getByRole('button', { name: /^P1–P3/ }).tap();
    await page.getByRole('combobox', { name: 'Is that on the boat already?' }).selectOption('planned');
    await page.getByText(/^3 places taped here before are kept/).waitFor();
    await shots(page, 'edge-kept');
  });
});

test('a whole edge that could not be measured says why, until something is told of it', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await atTheEdge(installer);
    await installer.tap('No value');
    await installer.tap('Could not measure this edge');
    await installer.tap('Weather');
    await goTo(installer, /Edge fasteners/);
    await page.getByText('Recorded: Could not measure this edge (Weather).').waitFor();
    await installer.tap('Nothing');
    await page.getByText(/^Recorded/).waitFor({ state: 'detached' });
    await page.getByTestId('run-done').waitFor();
  });
});

test('a cleat under the cloth that must stay free is noticed; a light is placed by two tapes and drawn', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Open-bow cover');
    await page.getByRole('link', { name: /All steps/ }).tap();
    await page.getByRole('link', { name: 'Things in the way' }).tap();
    await page.getByRole('heading', { name: 'In the way', exact: true }).waitFor();
    await shots(page, 'things-none');

    await installer.tap('Cleat');
    await page.getByRole('heading', { name: 'Cleat C1' }).waitFor();
    await shots(page, 'thing-point');
    await page.getByTestId('point').tap({ position: { x: 150, y: 120 } });
    await installer.tap('Under the cloth');
    await installer.tap('Yes');
    await page.getByText('C1 must stay free, and the cloth lies over it without a cut-out.').waitFor();
    await shots(page, 'thing-covered');
    await expectAccessible(page);
    await page.getByTestId('thing-done').tap();

    await installer.tap('Light');
    await page.getByRole('heading', { name: 'Light L1' }).waitFor();
    await page.getByText(/must not hide navigation lights/).waitFor();
    await installer.understandCautions();
    await page.getByTestId('point').tap({ position: { x: 220, y: 110 } });
    await installer.tap('Cut-out round it');
    await installer.tap('Yes');
    await page.getByRole('heading', { name: 'How is its place measured?' }).waitFor();
    await shots(page, 'thing-place');
    await installer.tap('Two tapes from marks');
    for (const text of ['40', '48 1/2']) {
      await page.getByText(/^Hook on .*Taut to the middle of L1\.$/).waitFor();
      await installer.type(text);
      await installer.next();
      await page.locator('.step-read li').getByText(`${text}"`).waitFor();
    }
    await installer.tap('Diameter');
    await installer.type('6');
    await installer.next();
    await page.getByRole('button', { name: 'Diameter 6"' }).waitFor();
    await shots(page, 'thing-told');
    await expectAccessible(page);
    await page.getByTestId('thing-done').tap();
    await page.getByRole('link', { name: /^Light L1/ }).waitFor();
    expect(await page.locator('circle.thing').count()).toBe(2);
    await shots(page, 'things-list');

    await page.getByRole('link', { name: 'Back to the walk' }).tap();
    await page.getByRole('link', { name: 'Things in the way (2)' }).waitFor();
  });
});
