/**
 * `npm run shots`: drives the built app through the demo job, from the dock to the shop and back, and takes the pictures
 * of the tour in README.md. Needs Chromium. Clock and ids are held still, so that only what changed in the app changes
 * in the pictures.
 */
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import type { Page } from 'playwright-core';
import { root } from '../../src/server/setup.mjs';
import { startApp } from '../browser/support/app.ts';
import { Installer } from '../browser/support/dock.ts';
import { setup } from '../browser/support/global-setup.ts';
import { type Phone, withPhone } from '../browser/support/phone.ts';
import { newProfile, removeProfile } from '../browser/support/profile.ts';
import { truthOf } from '../browser/support/truths.ts';
import { drawnDock, type View } from './dock-picture.ts';
import { smallPng } from './small-png.ts';

const FOLDER = join(root, '.tour');
const MORNING = '2026-05-04T09:40:00Z';
const AT_SHOP = '2026-05-06T08:15:00Z';
const NEXT_DAY = '2026-05-07T17:20:00Z';

/** What is photographed, and where its points are in the drawn picture, as fractions of it. */
const SHOTS: Readonly<Record<string, { view: View; marks: readonly (readonly [number, number])[] }>> = {
  'photo-mounts': {
    view: 'ahead',
    marks: [
      [0.28, 0.31],
      [0.72, 0.31],
    ],
  },
  'photo-pole-port': { view: 'pole', marks: [[0.5, 0.18]] },
  'photo-pole-starboard': { view: 'pole', marks: [[0.5, 0.18]] },
  'photo-port': {
    view: 'side',
    marks: [
      [0.36, 0.53],
      [0.62, 0.51],
    ],
  },
  'photo-bow': {
    view: 'ahead',
    marks: [
      [0.27, 0.76],
      [0.5, 0.84],
      [0.73, 0.76],
    ],
  },
  'photo-starboard': {
    view: 'side',
    marks: [
      [0.62, 0.51],
      [0.36, 0.53],
    ],
  },
};

process.env.TZ = 'UTC';
await setup();
rmSync(FOLDER, { recursive: true, force: true });
mkdirSync(FOLDER, { recursive: true });
const kept = mkdtempSync(join(tmpdir(), 'tapetrue-tour-'));
const app = await startApp();
const [dock, shop] = [newProfile(), newProfile()];
try {
  const sent = await atTheDock();
  const asked = await atTheShop(sent);
  const answered = await atTheDockAgain(asked);
  await atTheShopAgain(answered);
} finally {
  await app.stop();
  for (const profile of [dock, shop]) removeProfile(profile);
  rmSync(kept, { recursive: true });
}

/** The installer finds the slip in the demo job, mends it, photographs, and sends. Gives the packet. */
async function atTheDock(): Promise<string> {
  return onPhone(MORNING, 1, async (phone, installer) => {
    const { page } = phone;
    await phone.open('#/keep');
    await page.getByRole('textbox', { name: 'Your name' }).fill('Sam');
    await page.getByRole('textbox', { name: 'Your name' }).blur();
    await phone.open('#/');
    await installer.tap('Load the demo job');
    await page.getByRole('heading', { name: 'Open-bow cover' }).waitFor();
    const job = jobOf(page);
    await phone.open('#/');
    await page.getByRole('link', { name: /^Demo/ }).waitFor();
    await picture(page, 'jobs');
    await phone.open(`#/job/${job}`);
    await picture(page, 'job');

    const bow = await pieceOf(page, 'Open-bow cover');
    const step = (piece: string, key: string) => phone.open(`#/job/${job}/${piece}/${key}`);
    await step(bow, 'F-P3');
    await page
      .locator('.strip')
      .getByText(/longer than/)
      .waitFor();
    await picture(page, 'slip');
    await installer.tap('Strike out');
    await installer.tap('Misread');
    await page.getByText('struck out: Misread').waitFor();
    await installer.type('27 3/16');
    await picture(page, 'step');
    await installer.next();
    await installer.movedFrom('F-P3');
    await step(bow, 'edge');
    await page.locator('.fasteners > li').nth(30).waitFor();
    await installer.understandCautions();
    await picture(page, 'fasteners');
    await phone.open(`#/leave/${job}`);
    await page.getByText(/Not yet/).waitFor();
    await picture(page, 'before-leaving');

    await step(bow, 'rain');
    await installer.understandCautions();
    await installer.tap('Stays on');
    await installer.movedFrom('rain');
    await phone.open(`#/job/${job}`);
    const shade = await pieceOf(page, 'Tension shade');
    for (const [piece, keys] of [
      [shade, ['photo-mounts', 'photo-pole-port', 'photo-pole-starboard']],
      [bow, ['photo-port', 'photo-bow', 'photo-starboard']],
    ] as const) {
      for (const key of keys) {
        await step(piece, key);
        await photograph(page, key);
        if (key === 'photo-bow') await picture(page, 'photo');
      }
    }
    await phone.open(`#/leave/${job}`);
    await readAgain(page, installer, job);
    await page.getByText(/Clear to leave/).waitFor();
    await picture(page, 'clear-to-leave');
    await phone.open(`#/send/${job}`);
    const packet = await installer.savePacket();
    await page.getByText('Saved among your downloads').waitFor();
    await picture(page, 'send');
    return keep(packet.path, 'sent');
  });
}

/** The shop judges, and asks for one reading again. Gives the packet that goes back. */
async function atTheShop(packet: string): Promise<string> {
  return atDesk(AT_SHOP, 2, async ({ page }) => {
    await openAtBench(page, packet);
    await page.getByTestId('clear').waitFor();
    await page.getByRole('table').getByText('A–C', { exact: true }).first().click();
    await picture(page, 'bench');
    await page.getByTestId('ask-again').click();
    await page.getByRole('checkbox', { name: 'Ask again for A–C' }).check();
    await page.getByRole('textbox', { name: 'Note for A–C' }).fill('Was the pole leaning?');
    await picture(page, 'bench-ask');
    await page.getByTestId('make-ask').click();
    await page.getByTestId('send-back').click();
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId('download-back').click()]);
    return keep(await download.path(), 'asked');
  });
}

/** The asked step is read again and sent. Gives the packet. */
async function atTheDockAgain(packet: string): Promise<string> {
  return onPhone(NEXT_DAY, 3, async (phone, installer) => {
    const { page } = phone;
    await phone.open('#/');
    await page.locator('input[type=file][multiple]').setInputFiles(packet);
    await page
      .locator('.banner')
      .getByText(/new entr/)
      .waitFor();
    await page.getByRole('link', { name: /^Demo/ }).tap();
    await page.getByText('The shop asks again: 1 step').waitFor();
    const job = jobOf(page);
    await page.getByRole('link', { name: 'Go on', exact: true }).tap();
    await page.getByText('Was the pole leaning?').waitFor();
    await picture(page, 'asked-again');
    await installer.reading('91 3/4');
    await phone.open(`#/send/${job}`);
    return keep((await installer.savePacket()).path, 'answered');
  });
}

async function atTheShopAgain(packet: string): Promise<void> {
  await atDesk(NEXT_DAY, 4, async ({ page }) => {
    await openAtBench(page, packet);
    for (const piece of ['Open-bow cover', 'Tension shade']) {
      await page.getByRole('button', { name: new RegExp(`^${piece}`) }).click();
      await page.getByTestId('clear').click();
      await page.getByTestId('clear-sure').click();
      await page.getByText(/Clear to cut, said/).waitFor();
    }
    await page.getByRole('button', { name: /^Open-bow cover/ }).click();
    await page.getByText(/Clear to cut, said/).waitFor();
    await picture(page, 'bench-cleared');
  });
}

async function openAtBench(page: Page, packet: string): Promise<void> {
  await page.locator('input[type=file][multiple]').setInputFiles(packet);
  await page
    .locator('.banner')
    .getByText(/new entr/)
    .waitFor();
  await page
    .getByRole('link', { name: /A. Sample/ })
    .first()
    .click();
  await page.getByRole('heading', { name: 'Decide' }).waitFor();
}

function onPhone<T>(at: string, seed: number, body: (phone: Phone, installer: Installer) => Promise<T>): Promise<T> {
  return held({ profile: dock, screen: 'phone' }, at, seed, (phone) => body(phone, new Installer(phone)));
}

function atDesk<T>(at: string, seed: number, body: (phone: Phone) => Promise<T>): Promise<T> {
  return held({ profile: shop, screen: 'desk' }, at, seed, async (phone) => {
    await phone.open('#/keep');
    await phone.page.getByRole('textbox', { name: 'Your name' }).fill('Kim');
    await phone.page.getByRole('textbox', { name: 'Your name' }).blur();
    await phone.open('#/bench');
    return body(phone);
  });
}

/** One visit with the clock at a moment and ids that come out the same each time. */
async function held<T>(
  options: { profile: string; screen: 'phone' | 'desk' },
  at: string,
  seed: number,
  body: (phone: Phone) => Promise<T>,
): Promise<T> {
  const out: T[] = [];
  await withPhone(app.url, options, async (phone) => {
    await phone.context.clock.setFixedTime(at);
    await phone.context.addInitScript(sameNumbers, seed);
    out.push(await body(phone));
  });
  return out[0] as T;
}

/**
 * Runs in the page before anything else. Numbers come out of a stream that is the same each time (Park and Miller); the
 * browser's offer to install, which comes whenever it likes, does not come.
 */
function sameNumbers(seed: number): void {
  addEventListener('beforeinstallprompt', (event) => event.stopImmediatePropagation(), true);
  let state = (seed * 7919 + Number(sessionStorage.getItem('tour') ?? 0)) % 2147483647;
  sessionStorage.setItem('tour', String(Number(sessionStorage.getItem('tour') ?? 0) + 1));
  crypto.getRandomValues = (array) => {
    if (array instanceof Uint8Array) {
      for (let i = 0; i < array.length; i += 1) {
        state = (state * 16807) % 2147483647;
        array[i] = state >>> 8;
      }
    }
    return array;
  };
}

/** Goes to what still stands in the way, one after the other, and reads it a second time as it was read before. */
async function readAgain(page: Page, installer: Installer, job: string): Promise<void> {
  const readings = { ...truthOf('tension-shade').readings, ...truthOf('open-bow').readings };
  for (let left = 12; left > 0; left -= 1) {
    await page.getByText(/Clear to leave|Not yet/).waitFor();
    const goThere = page.getByRole('link', { name: 'Go there' }).first();
    if (await page.getByText(/Clear to leave/).isVisible()) return;
    await goThere.tap();
    await page.getByTestId('next').waitFor();
    const value = readings[installer.stepKey() ?? ''];
    if (value === undefined) throw new Error(`nothing to read again at ${page.url()}`);
    await installer.type(value);
    await installer.next();
    await page.waitForTimeout(500);
    await page.goto(`${app.url}#/leave/${job}`);
  }
}

/** The id of the job on the screen. */
function jobOf(page: Page): string {
  return new URL(page.url()).hash.split('/')[2] ?? '';
}

/** The id of a piece of the job on the screen. */
async function pieceOf(page: Page, name: string): Promise<string> {
  const section = page.locator('section.piece').filter({ has: page.getByRole('heading', { name }) });
  const href = await section.getByRole('link', { name: 'All steps' }).getAttribute('href');
  return href?.split('/')[3] ?? '';
}

async function photograph(page: Page, key: string): Promise<void> {
  const shot = SHOTS[key];
  if (!shot) throw new Error(`no picture is drawn for ${key}`);
  const jpeg = await drawnDock(page, shot.view);
  await page.locator('input[type=file]').setInputFiles({ name: 'dock.jpg', mimeType: 'image/jpeg', buffer: jpeg });
  const drawn = page.locator('button.photo');
  await drawn.locator('img').waitFor();
  for (const [x, y] of shot.marks) {
    const asked = await page.locator('.mark-ask').innerText();
    const box = await drawn.boundingBox();
    if (!box) throw new Error('the picture is not on the screen');
    await drawn.tap({ position: { x: box.width * x, y: box.height * y } });
    await page.waitForFunction((before) => document.querySelector('.mark-ask')?.textContent !== before, asked);
  }
}

/** Downloads go with their browser; the next device needs them. */
function keep(path: string, name: string): string {
  const copy = join(kept, `${name}.json`);
  copyFileSync(path, copy);
  return copy;
}

async function picture(page: Page, name: string): Promise<void> {
  // What the checker has to say follows a moment after the page.
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(600);
  const png = smallPng(await page.screenshot({ caret: 'hide', animations: 'disabled' }));
  writeFileSync(join(FOLDER, `${name}.png`), png);
  console.log(`${name}.png  ${Math.round(png.length / 1000)} kB`);
}
