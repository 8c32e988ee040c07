import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { exifOf } from './support/exif.ts';
import { canReadPdf, pageTexts } from './support/pdf.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { newProfile, removeProfile } from './support/profile.ts';
import { shot } from './support/shots.ts';
import { truthOf } from './support/truths.ts';

let app: App;
const atDock = newProfile();
const atShop = newProfile();

beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
  removeProfile(atDock);
  removeProfile(atShop);
});

/** Where the whole story passes from one device to the other. */
const packets = { sent: '', entries: 0, asked: '', answered: '' };

/** Downloads go with their browser; the story needs them afterwards. */
function keep(path: string, name: string): string {
  const kept = `${atShop}-${name}.json`;
  copyFileSync(path, kept);
  return kept;
}

/** Opens a packet from the picker and waits until the screen says of it what is expected. */
async function openPacket(phone: Phone, path: string, said: string): Promise<void> {
  await phone.page.locator('input[type=file][multiple]').setInputFiles(path);
  await phone.page.locator('.banner').getByText(said).waitFor();
}

/** 35 3/16 typed as 53 3/16: no triangle fails, only the whole does not fit; the second look settles it in one tap. */
async function swappedDigits({ page }: Phone, installer: Installer): Promise<boolean> {
  const strip = page.locator('.strip');
  await installer.type('53 3/16');
  await installer.next();
  await strip.getByText(/does not fit|Read again/).waitFor();
  expect(await strip.innerText()).toContain('T–S3');
  expect(await page.locator('.page').innerText()).not.toContain('35 3/16');
  expect(await page.locator('.page').innerText()).not.toMatch(/swapped/);
  await shot(page, 'step-doubted');
  await installer.type('35 3/16');
  await installer.next();
  await strip.getByText('The last look fits everything else').waitFor();
  await shot(page, 'step-settle');
  await page.getByRole('button', { name: 'Strike out 53 3/16 (digits swapped)' }).tap();
  await page.getByText('struck out: digits swapped').waitFor();
  await page.waitForTimeout(600);
  await installer.next();
  return true;
}

test('the installer measures both pieces offline, makes a slip, sees it named, mends it and sends', async () => {
  await withPhone(app.url, { profile: atDock }, async (phone) => {
    const installer = new Installer(phone);
    await phone.open();
    await phone.readyOffline();
    await phone.offline(true);
    await installer.begin('R. Sample', 'Perla', 'Sam');
    await installer.addPiece('Tension shade');
    await installer.walk(truthOf('tension-shade'));
    await installer.secondLooks(truthOf('tension-shade'));
    await phone.page.getByText(/Clear to leave. Everything the cloth depends on is fixed within/).waitFor();
    await shot(phone.page, 'leave-clear');

    await phone.page.getByRole('link', { name: 'Back' }).tap();
    await installer.tap('Add a piece');
    await installer.addPiece('Open-bow cover');
    const truth = truthOf('open-bow');
    await installer.walk(truth, async (key) => {
      if (key === 'T-S3') return await swappedDigits(phone, installer);
      if (key !== 'P3-T') return false;
      // The tape says 34 15/16; the person types 94 15/16.
      await installer.type('94 15/16');
      await installer.next();
      const strip = phone.page.locator('.strip');
      await strip
        .getByText(/longer than/)
        .first()
        .waitFor();
      expect(await strip.innerText()).toMatch(/P3–T \(94 15\/16"\) is .* longer than .* allow/);
      expect(await strip.innerText()).toMatch(/Read (it|P3–T) again/);
      // The witness is not led: what would fit is nowhere on the screen.
      expect(await phone.page.locator('.page').innerText()).not.toContain('34 15/16');
      await shot(phone.page, 'step-slip-named');
      await expectAccessible(phone.page);
      await installer.tap('Strike out');
      await installer.tap('Misread');
      await phone.page.getByText('struck out: Misread').waitFor();
      await installer.type('34 15/16');
      await installer.next();
      return true;
    });
    await installer.secondLooks(truth);
    await phone.page.getByText('Clear to leave').waitFor();
    await phone.page.getByRole('link', { name: 'Send to the shop' }).tap();
    const packet = await installer.savePacket();
    expect(packet.name).toMatch(/^20\d\d-\d\d-\d\d R. Sample - Perla - [0-9a-f]{4}\.json$/);
    await phone.page.getByText('Saved among your downloads').waitFor();
    await shot(phone.page, 'send');
    const written: { logbook: { kind: string }[]; photos: { data: string }[] } = JSON.parse(
      readFileSync(packet.path, 'utf8'),
    );
    expect(written.photos).toHaveLength(6);
    for (const photo of written.photos) expect(exifOf(Buffer.from(photo.data, 'base64'))?.place ?? false).toBe(false);
    packets.entries = written.logbook.length;
    packets.sent = keep(packet.path, 'sent');
  });
});

test('the shop opens the packet, cannot clear what was doubted, and asks one reading again', async () => {
  await withPhone(app.url, { profile: atShop, screen: 'desk' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await openPacket(phone, packets.sent, `R. Sample – Perla: ${packets.entries} new entries`);
    await openPacket(phone, packets.sent, 'nothing new');
    const damaged = keep(packets.sent, 'damaged');
    writeFileSync(damaged, readFileSync(damaged, 'utf8').replace('"text":"75 11/16"', '"text":"76 11/16"'));
    await openPacket(phone, damaged, 'does not match its seal');
    await page
      .getByRole('link', { name: /R. Sample/ })
      .first()
      .click();
    await page.getByRole('heading', { name: 'Decide' }).waitFor();
    await expectAccessible(page);
    await shot(page, 'bench-judge');
    await page.getByTestId('clear').waitFor();
    await page.getByTestId('ask-again').click();
    await page.getByRole('checkbox', { name: 'Ask again for A–C' }).check();
    await page.getByRole('textbox', { name: 'Note for A–C' }).fill('Was the pole leaning?');
    await page.getByTestId('make-ask').click();
    await page.getByText('stands in the way of cutting').waitFor();
    expect(await page.getByTestId('clear').count()).toBe(0);
    await page.getByTestId('send-back').click();
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId('download-back').click()]);
    packets.asked = keep(await download.path(), 'asked');
    await shot(page, 'bench-asked');
  });
});

test('the dock sees the question as an open step, reads again, and sends', async () => {
  await withPhone(app.url, { profile: atDock }, async (phone) => {
    const installer = new Installer(phone);
    await phone.open();
    await phone.offline(true);
    await openPacket(phone, packets.asked, '1 new entry');
    await phone.page.getByRole('link', { name: /R. Sample – Perla/ }).tap();
    await phone.page.getByText('The shop asks again: 1 step').waitFor();
    await shot(phone.page, 'dock-asked-again');
    await phone.page.getByRole('link', { name: 'Go on', exact: true }).tap();
    await phone.page.getByText('Was the pole leaning?').waitFor();
    expect(installer.stepKey()).toBe('A-C');
    await installer.reading('91 7/8');
    await phone.page.getByText('Clear to leave').waitFor();
    await phone.page.getByRole('link', { name: 'Send to the shop' }).tap();
    packets.answered = keep((await installer.savePacket()).path, 'answered');
  });
});

/** The job sheet of what is on the bench: cleared, by whom and of which state on every page, with its photos. */
async function sheetSaysCleared(page: Page): Promise<void> {
  const bench = page.url();
  await page.getByRole('link', { name: 'Print the job sheet' }).click();
  await page.locator('.sheet-photos img').first().waitFor();
  await shot(page, 'sheet-cleared', { fullPage: true });
  // No photo is wider or higher than 60 mm, and no page holds more than it has room for, which would print smaller.
  for (const photo of await page.locator('.sheet-photos img').all()) {
    const box = await photo.boundingBox();
    expect(Math.max(box?.width ?? 0, box?.height ?? 0)).toBeCloseTo((60 * 96) / 25.4, 0);
  }
  const over = await page
    .locator('.paper-page')
    .evaluateAll(
      (all) => all.filter((one) => one.scrollWidth > one.clientWidth || one.scrollHeight > one.clientHeight).length,
    );
  expect(over).toBe(0);
  if (canReadPdf) {
    const path = join(tmpdir(), 'tapetrue-sheet.pdf');
    await page.pdf({ path, preferCSSPageSize: true });
    for (const text of pageTexts(path)) {
      expect(text).toMatch(/CLEAR TO CUT, said .+, of state [0-9a-f]{8}/);
      expect(text).not.toContain('NOT CLEARED');
    }
  }
  await page.goto(bench);
}

test('the shop merges the answer, clears both pieces, and a later change voids it', async () => {
  await withPhone(app.url, { profile: atShop, screen: 'desk' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await openPacket(phone, packets.answered, '1 new entry');
    await page
      .getByRole('link', { name: /R. Sample/ })
      .first()
      .click();
    for (const piece of ['Tension shade', 'Open-bow cover']) {
      await page.getByRole('button', { name: new RegExp(`^${piece}`) }).click();
      await page.getByTestId('clear').click();
      await page.getByText('fixed, checked and within tolerance').first().waitFor();
      await page.getByTestId('clear-sure').click();
      await page.getByText(/Clear to cut, said/).waitFor();
    }
    await shot(page, 'bench-cleared');
    await sheetSaysCleared(page);
    await page.getByRole('button', { name: /^Tension shade/ }).click();
    await page.getByText(/Clear to cut, said/).waitFor();
    await page.getByRole('table').getByText('A–C', { exact: true }).first().click();
    await page.getByRole('button', { name: 'Strike out 91 13/16' }).first().click();
    await page.getByRole('button', { name: 'A later reading replaces it' }).click();
    await page.getByText(/No longer clear to cut\. .* cleared it/).waitFor();
    await shot(page, 'bench-voided');
  });
});
