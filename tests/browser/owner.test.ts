import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type JobRequest, linkAddress, writeLink } from '../../src/core/packet/link/index.ts';
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

/** An owner's job with a piece, as far as the first thing the owner is told. */
async function begun(phone: Phone, piece = 'Tension shade'): Promise<Installer> {
  const { page } = phone;
  const owner = new Installer(phone);
  await phone.open();
  await page.getByRole('link', { name: 'New job' }).tap();
  await page.getByRole('textbox', { name: /^Boat/ }).fill('Perla');
  await page.getByRole('textbox', { name: /^Your name/ }).fill('Ona');
  await page.getByLabel('You are').selectOption('owner');
  await owner.tap('Begin');
  await owner.addPiece(piece);
  await page.getByRole('heading', { name: 'Before you start' }).waitFor();
  return owner;
}

/** Nothing of the page is cut off or has to be scrolled sideways. */
const fits = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth);

async function looked(page: Page, name: string): Promise<void> {
  await shot(page, `owner-${name}`, { fullPage: true });
  await expectAccessible(page);
  expect(await fits(page), name).toBe(true);
}

async function readBefore(owner: Installer, then: string): Promise<void> {
  const { page } = owner;
  for (let at = 1; at < 5; at += 1) {
    await looked(page, `before-${at}`);
    await owner.tap('Next');
  }
  await looked(page, 'before-5');
  await owner.tap(then);
}

test('an owner is told, practises with a slip, is shown how, and takes the first readings', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const owner = await begun(phone);
    await readBefore(owner, 'Try the tape on a sheet of paper first');

    await page.getByRole('heading', { name: 'Which paper do you have?' }).waitFor();
    await looked(page, 'practice-choose');
    await owner.tap('Letter, 8 1/2 × 11 in');
    await looked(page, 'practice-long');
    await owner.type('12');
    await owner.next();
    await page.getByText('It looks as if you started at the 1').waitFor();
    await looked(page, 'practice-slip');
    await owner.tap('Read it again');
    await owner.type('11');
    await owner.next();
    await page.getByText('Spot on.').waitFor();
    await owner.tap('Next');
    await owner.type('8 1/2');
    await owner.next();
    await owner.tap('Next');
    await owner.type('13 15/16');
    await owner.next();
    await looked(page, 'practice-close');
    await owner.tap('Next');
    await page.getByRole('heading', { name: 'Practice done' }).waitFor();
    await page.getByText('Your readings were within 1/16').waitFor();
    await looked(page, 'practice-done');
    await owner.tap('Start measuring');
    await page.waitForURL(/\/over$/);

    for (let steps = 0; owner.stepKey() !== 'A-B' && steps < 12; steps += 1) {
      const key = owner.stepKey() ?? '';
      await owner.understandCautions(page.locator('.choices button'));
      if (steps === 0) await looked(page, 'question');
      await page.locator('.choices button').first().tap();
      await owner.movedFrom(key);
    }
    await page.getByRole('heading', { name: 'First, a mark on each point' }).waitFor();
    await looked(page, 'marks-offer');
    await page.getByTestId('marks-skip').tap();
    await owner.understandCautions(page.getByTestId('enter'));
    await page.getByText('Put the hook of the tape on A').waitFor();
    expect(await page.getByTestId('next').count()).toBe(0);
    await page.getByRole('img', { name: /dimension to tape is A–B/ }).waitFor();
    await page.getByRole('img', { name: /^Wrong: The tape sags/ }).waitFor();
    await looked(page, 'look-straight');
    await page.locator('.step-read').evaluate((element) => element.scrollTo(0, 10_000));
    await shot(page, 'owner-look-straight-end');
    await page.locator('button.plain-word', { hasText: 'starboard' }).first().tap();
    await page.getByText('The right side of the boat').first().waitFor();
    await looked(page, 'word');
    await page.getByTestId('enter').tap();
    await looked(page, 'type');
    await owner.reading('98 1/2');
    await page.getByText('Put the hook of the tape on A').waitFor();
    await page.getByTestId('enter').tap();
    await owner.reading('120');
    const next = owner.stepKey() ?? '';

    // Comes back another day: the overview says how far, and the one button goes on where it was.
    await phone.open();
    await page.locator('a.item', { hasText: 'Perla' }).first().tap();
    await page.getByText(/^About \d+ minutes left\.$/).waitFor();
    await looked(page, 'home');
    await page.locator('a.main').first().tap();
    await page.waitForFunction((key) => decodeURIComponent(location.hash).endsWith(`/${key}`), next);
    await page.getByTestId('enter').waitFor();
  });
});

const request: JobRequest = {
  job: '0190a1b2-0000-7000-8000-000000000001',
  device: '0190a1b2-0000-7000-8000-000000000002',
  at: '2026-05-04T09:00:00+02:00',
  by: 'Robin',
  system: 'metric',
  fraction: 16,
  customer: 'R. Sample',
  boat: 'Perla',
  pieces: [{ kind: 'open-bow', name: 'Bow cover', answers: {} }],
  shop: 'A canvas shop',
  contact: '555 0100',
  note: 'Before the boat is moved, please.',
  language: 'en',
  measurer: 'owner',
};

test('an owner whom a shop asked reads who asks, leaves a slip in the practice as it is, and is shown each kind of reading', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const owner = new Installer(phone);
    const link = linkAddress(app.url, writeLink({ t: 'request', request }) ?? '');
    await phone.open(link);
    await page.getByRole('textbox', { name: /^Your name/ }).fill('Ona');
    await page.getByTestId('begin-request').tap();
    await page.getByText('A canvas shop asks you to measure.').waitFor();
    await looked(page, 'home-asked');
    await page.getByRole('link', { name: 'Start', exact: true }).tap();
    await page.getByText(/^A canvas shop will make something/).waitFor();
    await page.getByRole('link', { name: '555 0100' }).waitFor();
    await page.getByText('Before the boat is moved, please.').waitFor();
    await looked(page, 'asked-by');
    const piece = new URL(page.url()).hash.split('/').slice(0, 4).join('/');
    for (let at = 1; at < 5; at += 1) await owner.tap('Next');
    await owner.tap('Try the tape on a sheet of paper first');
    await owner.tap('A4, 210 × 297 mm');
    for (const [value, on] of [
      ['307', 'Leave it so'],
      ['210', 'Next'],
      ['364', 'Next'],
    ] as const) {
      await owner.type(value);
      await owner.next();
      await owner.tap(on);
    }
    await page.getByText('Your readings were within 10 mm').waitFor();
    await looked(page, 'practice-slip-left');
    await owner.tap('Start measuring');
    await page.waitForURL(/#\/job\/.+\/.+\/.+/);
    for (const step of ['W1-P1', 'edge-whole', 'edge', 'photo-bow']) {
      await phone.open(`${piece}/${step}`);
      if (step === 'W1-P1') await page.getByTestId('marks-skip').tap();
      await page.getByRole('button', { name: 'Understood' }).or(page.getByTestId('enter')).waitFor();
      await owner.understandCautions();
      await page.getByTestId('enter').waitFor();
      await looked(page, `look-${step}`);
      await page.locator('.step-read').evaluate((element) => element.scrollTo(0, 10_000));
      await shot(page, `owner-look-${step}-end`);
    }
  });
});

test('an owner is told one number everywhere, and why it changed', async () => {
  await withPhone(app.url, { screen: 'small' }, async (phone) => {
    const { page } = phone;
    const owner = new Installer(phone);
    const shade = { ...request, pieces: [{ kind: 'tension-shade' as const, name: 'Tension shade', answers: {} }] };
    await phone.open(linkAddress(app.url, writeLink({ t: 'request', request: shade }) ?? ''));
    await page.getByRole('textbox', { name: /^Your name/ }).fill('Ona');
    await page.getByTestId('begin-request').tap();
    await page.getByRole('heading', { name: '0 of 10 measurements' }).waitFor();
    await page.getByText('0 of 10 read once more').waitFor();
    await looked(page, 'count-home');
    await page.getByRole('link', { name: 'Start', exact: true }).tap();
    for (let at = 1; at < 5; at += 1) await owner.tap('Next');
    await owner.tap('Start measuring');
    await page.waitForURL(/\/over$/);
    const top = page.locator('header.top');
    await top.getByText('0 of 10 measurements', { exact: true }).waitFor();
    await owner.understandCautions(page.getByRole('button', { name: 'Foredeck', exact: true }));
    await owner.tap('Foredeck');
    await owner.movedFrom('over');
    await top.getByText('0 of 10 measurements', { exact: true }).waitFor();
    await owner.tap('Nothing yet');
    await top.getByText('0 of 12 measurements, 10 before your answer').waitFor();
    await looked(page, 'count-changed');
    await owner.tap('Go on anyway');
    await owner.movedFrom('poles');
    await top.getByText('0 of 12 measurements, 10 before your answer').waitFor();
    const key = owner.stepKey() ?? '';
    await page.locator('.choices button').first().tap();
    await owner.movedFrom(key);
    await top.getByText('0 of 12 measurements', { exact: true }).waitFor();
    await page.locator('header.top a').first().tap();
    await page.getByText('0 of 12 measurements', { exact: true }).waitFor();
    await looked(page, 'count-walk');
    // Laying the piece out is the guide's work; whoever must can still reach it.
    expect(await page.getByRole('link', { name: 'Change the points' }).isVisible()).toBe(false);
    await page.getByText('Change the piece').tap();
    await page.getByRole('link', { name: 'Change the points' }).waitFor();
    await page.locator('header.top a').first().tap();
    await page.getByRole('heading', { name: '0 of 12 measurements' }).waitFor();
    await owner.tap('More about this job');
    await page.getByText('0 of 12 measurements', { exact: true }).first().waitFor();
  });
});

async function boxOf(element: Locator): Promise<{ height: number }> {
  const box = await element.boundingBox();
  if (!box) throw new Error('it is not on the screen');
  return box;
}

/** How much of an element can be seen where it stands, px of its height. */
const seen = (page: Page, selector: string): Promise<number> =>
  page.evaluate((wanted) => {
    const frame = document.querySelector('.step-read')?.getBoundingClientRect();
    const box = document.querySelector(wanted)?.getBoundingClientRect();
    if (!frame || !box) return 0;
    return Math.max(0, Math.min(frame.bottom, box.bottom) - Math.max(frame.top, box.top));
  }, selector);

test('a caution is read in full before the step, and then leaves the room to what is done', async () => {
  await withPhone(app.url, { screen: 'small' }, async (phone) => {
    const { page } = phone;
    const owner = await begun(phone);
    for (let at = 1; at < 5; at += 1) await owner.tap('Next');
    await owner.tap('Start measuring');
    await page.waitForURL(/\/over$/);
    const piece = new URL(page.url()).hash.split('/').slice(0, 4).join('/');
    await phone.open(`${piece}/A-B`);
    await page.getByTestId('marks-skip').tap();
    await page.getByText('how people fall').waitFor();
    expect(await page.getByTestId('enter').count()).toBe(0);
    expect(await page.locator('.drawing').count()).toBe(0);
    await looked(page, 'caution-first');
    await owner.tap('Understood');
    await page.getByTestId('enter').waitFor();
    const line = page.locator('.caution-line');
    expect((await boxOf(line)).height).toBeLessThan(50);
    await shot(page, 'owner-caution-look');
    await page.getByTestId('enter').tap();
    await page.getByTestId('next').waitFor();
    expect((await boxOf(line)).height).toBeLessThan(50);
    const drawing = page.locator('.step-drawing .drawing');
    // All of it, but for a hair.
    expect(await seen(page, '.step-drawing .drawing')).toBeGreaterThan((await boxOf(drawing)).height - 8);
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(640);
    await looked(page, 'caution-type');
    await line.locator('summary').tap();
    expect((await boxOf(line)).height).toBeGreaterThan(100);
    await shot(page, 'owner-caution-open');
    await owner.reading('98 1/2');
    await page.getByTestId('enter').waitFor();
    await owner.tap('Undo');
    await page.getByRole('status').getByText('Taken back: A–B, 98 1/2').waitFor();
    await looked(page, 'taken-back');
    await owner.tap('Skip');
    await page.getByText('Taken back').waitFor({ state: 'detached' });
  });
});

test('a long title is there whole, with room above it, and going on after a photo needs no scrolling', async () => {
  for (const screen of ['phone', 'small'] as const)
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      const owner = new Installer(phone);
      const shade = {
        ...request,
        language: 'es' as const,
        pieces: [{ kind: 'tension-shade' as const, name: 'Tension shade', answers: {} }],
      };
      await phone.open(linkAddress(app.url, writeLink({ t: 'request', request: shade }) ?? ''));
      await page.getByRole('textbox', { name: /^Su nombre/ }).fill('Ona');
      await page.getByTestId('begin-request').tap();
      await page.getByRole('link', { name: 'Empezar', exact: true }).tap();
      for (let at = 1; at < 5; at += 1) await owner.tap('Siguiente');
      await owner.tap('Empezar a medir');
      await page.waitForURL(/\/over$/);
      const piece = new URL(page.url()).hash.split('/').slice(0, 4).join('/');
      await phone.open(`${piece}/holders`);
      const title = page.getByRole('heading', { name: '¿Cómo están fijados los portacañas?' });
      await title.waitFor();
      const room = await title.evaluate((h1) => ({
        cut: h1.scrollHeight - h1.clientHeight,
        top: h1.getBoundingClientRect().top,
        under: (h1.nextElementSibling?.getBoundingClientRect().top ?? 0) - h1.getBoundingClientRect().bottom,
      }));
      expect(room.cut).toBeLessThanOrEqual(1);
      expect(room.top).toBeGreaterThanOrEqual(5);
      expect(room.under).toBeGreaterThanOrEqual(0);
      await looked(page, `title-${screen}`);
      await phone.open(`${piece}/photo-mounts`);
      await page.getByTestId('marks-skip').tap();
      await page.getByTestId('enter').tap();
      await owner.photograph(3);
      const next = await page.getByTestId('next').boundingBox();
      expect((next?.y ?? 0) + (next?.height ?? 1000)).toBeLessThanOrEqual(screen === 'phone' ? 844 : 640);
      await looked(page, `photo-taken-${screen}`);
    });
});

test('an owner puts up marks, frames a photo, and is given a receipt', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const owner = await begun(phone);
    const piece = new URL(page.url()).hash.split('/').slice(0, 4).join('/');
    for (let at = 1; at < 5; at += 1) await owner.tap('Next');
    await owner.tap('Start measuring');
    await page.waitForURL(/#\/job\/.+\/.+\/.+/);
    const job = piece.split('/')[2] ?? '';
    await phone.open(`${piece}/photo-mounts`);
    await page.getByTestId('marks-begin').tap();
    await page.waitForURL(/\/marks$/);
    await page.getByRole('heading', { name: 'Your numbered marks' }).waitFor();
    await page.getByRole('checkbox', { name: 'A' }).check();
    await page.getByRole('button', { name: 'Where C goes' }).tap();
    await page.getByText('1 of 4 stuck on').waitFor();
    await looked(page, 'marks');
    await page.getByTestId('marks-done').tap();
    await page.getByRole('heading', { name: 'What should be in the picture' }).waitFor();
    await owner.understandCautions();
    await looked(page, 'frame');
    await page.getByTestId('enter').tap();
    await owner.photograph(3);
    await phone.open(`${piece}/h-A`);
    await page.getByTestId('enter').waitFor();
    await looked(page, 'look-height');
    await phone.open(`#/send/${job}`);
    await owner.savePacket();
    await page.getByTestId('receipt').getByText('What happens next').waitFor();
    expect(await page.getByTestId('receipt').innerText()).toMatch(/0 of 10 measurements, 1 photo, 0 of 1\d answers/);
    await looked(page, 'receipt');
  });
});

test('an owner’s pages fit a narrow screen and text twice as large', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    await page.setViewportSize({ width: 320, height: 640 });
    const owner = await begun(phone, 'Open-bow cover');
    await readBefore(owner, 'Start measuring');
    const piece = new URL(page.url()).hash.split('/').slice(0, 4).join('/');
    const job = piece.split('/')[2] ?? '';
    await phone.open(`${piece}/W1-P1`);
    await page.getByTestId('marks-skip').waitFor();
    expect(await fits(page)).toBe(true);
    await page.getByTestId('marks-skip').tap();
    for (const scale of [100, 200]) {
      for (const place of [
        `#/job/${job}`,
        `#/owner/${job}/before`,
        `#/owner/${job}/practice`,
        `#/owner/${job}/marks`,
        `${piece}/W1-P1`,
        `${piece}/edge-whole`,
        `${piece}/h-K2`,
        `${piece}/photo-bow`,
      ]) {
        await phone.open(place);
        await page.evaluate((percent) => {
          document.documentElement.style.fontSize = `${(18 * percent) / 100}px`;
        }, scale);
        await page.locator('h1, button.main, a.main').first().waitFor();
        await page.waitForTimeout(150);
        await shot(page, `owner-narrow-${scale}-${place.split('/').at(-1)}`, { fullPage: true });
        expect(await fits(page), `${place} at ${scale} %`).toBe(true);
      }
    }
  });
});
