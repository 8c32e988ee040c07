import { copyFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { codeInText, readLink, requestEntries } from '../../src/core/packet/link/index.ts';
import { drawQr } from '../../src/screens/bench/link/qr.ts';
import { expectAccessible } from './support/accessible.ts';
import { type App, DIST, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { follow, linkOf } from './support/links.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { newProfile, removeProfile } from './support/profile.ts';
import { shot } from './support/shots.ts';

let app: App;
const atShop = newProfile();
const atOwner = newProfile();

beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
  removeProfile(atShop);
  removeProfile(atOwner);
});

/** What passes from one device to the other. */
const passed = { request: '', packet: '', again: '', answer: '' };

/** The piece that a request's link declares, on whatever device it is opened. */
async function pieceOf(address: string): Promise<unknown> {
  const read = await readLink(codeInText(address) ?? '');
  const entries = read.ok && read.link.t === 'request' ? requestEntries(read.link.request) : [];
  return entries.find(({ kind }) => kind === 'piece.add')?.payload.id;
}

/** What an owner is told before the first step, page by page. */
async function readFirst({ page }: Phone): Promise<void> {
  const start = page.getByRole('button', { name: 'Start measuring', exact: true });
  const next = page.getByRole('button', { name: 'Next', exact: true });
  await next.or(start).first().waitFor();
  while (!(await start.isVisible())) await next.tap();
  await start.tap();
  await page.waitForURL(/#\/job\/.+\/.+\/.+/);
}

/** The packet of the job on the screen, kept beyond its browser; its logbook. */
async function send(phone: Phone, name: string): Promise<{ path: string; logbook: { who: { role: string } }[] }> {
  await phone.page.goto(`${app.url}#/send/${new URL(phone.page.url()).hash.split('/')[2]}`);
  const { path } = await new Installer(phone).savePacket();
  const kept = `${atOwner}-${name}.json`;
  copyFileSync(path, kept);
  return { path: kept, logbook: JSON.parse(readFileSync(kept, 'utf8')).logbook };
}

const isInSight = (part: Element): boolean => {
  const { top, bottom } = part.getBoundingClientRect();
  return top >= 0 && bottom <= innerHeight;
};

/** The code is no wider than a hand, and every one of its modules stands on the screen as it should. */
async function expectReadable(page: Page, address: string): Promise<void> {
  const code = page.locator('.qr > svg');
  const box = await code.boundingBox();
  expect(box?.width).toBeGreaterThan(270);
  expect(box?.width).toBeLessThanOrEqual(280);
  const drawing = drawQr(address);
  if (!drawing) throw new Error('no code');
  const { side } = drawing;
  const png = (await code.screenshot()).toString('base64');
  const black = await page.evaluate(
    async ({ png, side }) => {
      const bytes = Uint8Array.from(atob(png), (sign) => sign.charCodeAt(0));
      const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [image.width, image.height];
      const context = canvas.getContext('2d');
      context?.drawImage(image, 0, 0);
      return Array.from({ length: side * side }, (_, i) => {
        const [x, y] = [i % side, Math.floor(i / side)].map((at) => ((at + 0.5) * image.width) / side);
        return (context?.getImageData(Math.floor(x ?? 0), Math.floor(y ?? 0), 1, 1).data[0] ?? 0) < 128;
      });
    },
    { png, side },
  );
  const meant = new Set<number>();
  for (const [, x, y, width] of drawing.path.matchAll(/M(\d+) (\d+)h(\d+)v1/g))
    for (let i = 0; i < Number(width); i += 1) meant.add(Number(y) * side + Number(x) + i);
  expect(black.flatMap((isBlack, i) => (isBlack === meant.has(i) ? [] : [i]))).toEqual([]);
}

test('the shop asks an owner to measure, and gets a link, a code and a message', async () => {
  await withPhone(app.url, { profile: atShop, screen: 'desk', colorScheme: 'dark' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await page.getByRole('link', { name: 'Ask an owner to measure' }).click();
    await page.getByTestId('make-link').click();
    await page.getByText('Choose at least one piece').waitFor();
    await page.waitForTimeout(300);
    await shot(page, 'link-ask-no-piece');
    const gap = await page.evaluate(() => {
      const list = document.querySelector('.wanted-pieces');
      const [said, first] = [list?.querySelector('.banner'), list?.querySelector('input')];
      return (first?.getBoundingClientRect().top ?? 0) - (said?.getBoundingClientRect().bottom ?? 0);
    });
    // Right above the list, which is in sight and ready to be ticked.
    expect(gap).toBeGreaterThanOrEqual(0);
    expect(gap).toBeLessThan(40);
    expect(await page.locator('.wanted-pieces .banner').evaluate(isInSight)).toBe(true);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('type'))).toBe('checkbox');
    await page.getByRole('checkbox', { name: 'Tension shade' }).check();
    await page.getByText('What you know already').click();
    await page.getByRole('combobox', { name: 'What does the shade cover?' }).selectOption('foredeck');
    await page.getByRole('textbox', { name: 'Customer' }).fill('R. Sample');
    await page.getByRole('textbox', { name: 'Boat' }).fill('Perla');
    await page.getByRole('textbox', { name: 'Your shop' }).fill('A canvas shop');
    await page.getByRole('textbox', { name: /^How to reach you/ }).fill('555 0100, shop@example.org');
    await page.getByRole('textbox', { name: 'Your name' }).fill('Robin');
    await page
      .getByRole('textbox', { name: 'A note for them' })
      .fill('Poles up, please. <b>Two people</b> make it easier.');
    await shot(page, 'link-ask-form', { fullPage: true });
    await expectAccessible(page);
    await page.getByTestId('make-link').click();
    await page.getByText('Nothing has come back yet').waitFor();
    await page.getByText('only this computer knows').waitFor();
    const code = page.getByRole('img', { name: 'Code that holds the link' });
    await code.waitFor();
    const colours = await code.evaluate((svg) => [...svg.children].map((part) => getComputedStyle(part).fill));
    expect(colours).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
    passed.request = await linkOf(phone.page);
    expect(new URL(passed.request).search).toBe('');
    await shot(page, 'link-asked-desk');
    await expectAccessible(page);
    await expectReadable(page, passed.request);
    await page.setViewportSize({ width: 390, height: 844 });
    await expectReadable(page, passed.request);
    expect(await page.getByTestId('fine-code').count()).toBe(0);
    await shot(page, 'link-asked-narrow', { fullPage: true });
    await page.getByRole('link', { name: 'Back' }).click();
    await page.getByText('Asked for, nothing measured yet').waitFor();
    await shot(page, 'link-inbox-asked', { fullPage: true });
  });
});

test('a request with much in it has a code so fine that the shop is told to send the link', async () => {
  await withPhone(app.url, { colorScheme: 'dark' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await page.getByRole('link', { name: 'Ask an owner to measure' }).tap();
    await page.getByRole('checkbox', { name: 'Tension shade' }).check();
    const words = Array.from({ length: 62 }, (_, i) => ((i * 7919 + 3) ** 2).toString(36)).join(' ');
    await page.getByRole('textbox', { name: 'A note for them' }).fill(words);
    await page.getByTestId('make-link').tap();
    await page.getByTestId('fine-code').getByText('send the link instead').waitFor();
    await expectReadable(page, await linkOf(page));
    await page.getByTestId('fine-code').scrollIntoViewIfNeeded();
    await shot(page, 'link-fine-code');
    await expectAccessible(page);
  });
});

test('the owner opens it twice and has one job, with the right piece and role, without a network', async () => {
  await withPhone(app.url, { profile: atOwner }, async (phone) => {
    const { page } = phone;
    await follow(phone.page, passed.request);
    await page.getByRole('heading', { name: 'A canvas shop asks you to measure' }).waitFor();
    await phone.readyOffline();
    await phone.offline(true);
    await page.getByText('Poles up, please. <b>Two people</b> make it easier.').waitFor();
    expect(await page.getByRole('link', { name: 'shop@example.org' }).getAttribute('href')).toBe(
      'mailto:shop@example.org',
    );
    await page.getByRole('textbox', { name: /^Your name/ }).fill('Alex');
    await shot(page, 'link-request-phone', { fullPage: true });
    await expectAccessible(page);
    await page.getByTestId('begin-request').tap();
    await page.waitForURL(/#\/job\//);
    const [, , job] = new URL(page.url()).hash.split('/');
    await follow(phone.page, passed.request);
    await page.getByText('on this device already').waitFor();
    expect(await page.getByRole('textbox').count()).toBe(0);
    await page.getByTestId('begin-request').tap();
    await page.waitForURL(new RegExp(`#/job/${job}`));
    await phone.open('#/');
    await page.getByRole('link', { name: /R. Sample/ }).waitFor();
    expect(await page.getByRole('link', { name: /R. Sample – Perla/ }).count()).toBe(1);
    await page.getByText('Asked for, nothing measured yet').waitFor();
    await page.getByRole('link', { name: /R. Sample/ }).tap();
    await page.getByText('A canvas shop').waitFor();
    await phone.open(`#/job/${job}/${await pieceOf(passed.request)}/A-C`);
    await readFirst(phone);
    await phone.open(`#/job/${job}/${await pieceOf(passed.request)}/A-C`);
    await page.getByTestId('marks-skip').tap();
    await page.getByTestId('enter').tap();
    await new Installer(phone).type('91 13/16');
    await new Installer(phone).next();
    await new Installer(phone).movedFrom('A-C');
    const { path, logbook } = await send(phone, 'packet');
    passed.packet = path;
    expect(logbook.filter(({ who }) => who.role === 'owner')).toHaveLength(1);
  });
});

test('in a poor signal who asks can be read after 60 kB, and the offline store begins after that', async () => {
  await withPhone(app.url, {}, async ({ page, context }) => {
    // 400 kbit/s and a long way: one bar at the end of a dock.
    const session = await context.newCDPSession(page);
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 300,
      downloadThroughput: 50_000,
      uploadThroughput: 20_000,
    });
    await page.addInitScript(() => {
      new MutationObserver((_, watch) => {
        if (!document.querySelector('h1')?.textContent?.includes('asks you to measure')) return;
        watch.disconnect();
        performance.mark('who asks');
      }).observe(document, { subtree: true, childList: true, characterData: true });
    });
    const workerAt = new Promise<number>((resolve) => context.on('serviceworker', () => resolve(Date.now())));
    await page.goto(passed.request, { waitUntil: 'commit' });
    await page.getByRole('heading', { name: 'A canvas shop asks you to measure' }).waitFor();
    const { scripts, at } = await page.evaluate(() => {
      const mark = performance.getEntriesByName('who asks')[0]?.startTime ?? 0;
      const before = performance.getEntriesByType('resource').filter(({ startTime }) => startTime <= mark);
      const paths = before.map(({ name }) => new URL(name).pathname).filter((path) => path.endsWith('.js'));
      return { scripts: [...new Set(paths)], at: performance.timeOrigin + mark };
    });
    const sizes = scripts.map((path) => gzipSync(readFileSync(join(DIST, path))).length);
    const total = sizes.reduce((sum, size) => sum + size, 0);
    console.log(`read after ${Math.round(total / 100) / 10} kB of gzipped JavaScript in ${scripts.length} files`);
    expect(total).toBeGreaterThan(30_000);
    expect(total).toBeLessThanOrEqual(60_000);
    expect(await workerAt).toBeGreaterThan(at);
    await page.getByRole('textbox', { name: /^Your name/ }).fill('Alex');
    await page.getByTestId('begin-request').tap();
    await page.waitForURL(/#\/job\//);
    await page.getByRole('heading', { name: /R. Sample/ }).waitFor();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  });
});

test('a part of the app that does not come is said, and loading again brings it', async () => {
  await withPhone(app.url, { allow: [/OpenLink|ERR_FAILED/] }, async ({ page }) => {
    await page.route(/OpenLink-.*\.js$/, (route) => route.abort());
    await page.goto(passed.request);
    await page.getByText('A part of the app did not come.').waitFor();
    await shot(page, 'link-part-missing');
    await expectAccessible(page);
    await page.unroute(/OpenLink-.*\.js$/);
    await page.getByRole('button', { name: 'Load again' }).tap();
    await page.getByRole('heading', { name: 'A canvas shop asks you to measure' }).waitFor();
  });
});

test('a link that is damaged, cut off, from a later version or foreign is refused, and nothing changes', async () => {
  await withPhone(app.url, { profile: atOwner }, async (phone) => {
    const { page } = phone;
    const swapped = passed.request.replace(/(.{30})$/, (end) => [...end].reverse().join('')).concat('z');
    const refusals: [string, RegExp][] = [
      [`${passed.request.slice(0, -40)}${passed.request.slice(-39)}A`, /changed on its way/],
      [swapped, /changed on its way/],
      [passed.request.slice(0, -25), /end of this link is missing/],
      [`${app.url}#/r/nothing`, /not a link of this app/],
      [`${app.url}#/r/`, /not a link of this app/],
    ];
    for (const [address, said] of refusals) {
      await follow(phone.page, address);
      await page.getByText(said).waitFor();
      await page.getByText('Nothing on this device was changed').waitFor();
    }
    await shot(page, 'link-refused');
    await page.getByRole('link', { name: 'To the jobs on this device' }).tap();
    await page.getByRole('link', { name: /R. Sample/ }).waitFor();
    expect(await page.getByRole('link', { name: /R. Sample – Perla/ }).count()).toBe(1);
  });
});

test('the packet joins the job the shop asked for, by pasting too, and one reading is asked again by link', async () => {
  await withPhone(app.url, { profile: atShop, screen: 'desk' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await page.getByText('Asked for, nothing measured yet').waitFor();
    await page.getByTestId('paste').click();
    await page.getByTestId('paste-text').fill(readFileSync(passed.packet, 'utf8'));
    await page.getByTestId('paste-open').click();
    await page.getByText('R. Sample – Perla: 1 new entry').waitFor();
    await page.getByTestId('paste-text').fill('kind,value\nnonsense,1');
    await page.getByTestId('paste-open').click();
    await page.getByText('Refused. What is stored was not touched.').waitFor();
    expect(await page.getByRole('link', { name: /R. Sample – Perla/ }).count()).toBe(1);
    await page.getByRole('link', { name: /R. Sample/ }).click();
    await page.getByTestId('ask-again').click();
    const ticked = page.getByRole('checkbox', { checked: true });
    while ((await ticked.count()) > 0) await ticked.first().uncheck();
    await page.getByRole('checkbox', { name: 'Ask again for A–C' }).check();
    await page.getByRole('textbox', { name: 'Note for A–C' }).fill('Was the pole leaning?');
    await page.getByTestId('make-ask').click();
    await page.getByTestId('ask-by-link').click();
    await page.getByRole('img', { name: 'Code that holds the link' }).waitFor();
    passed.again = await linkOf(phone.page);
    expect(await page.getByTestId('link-message').inputValue()).toContain('A–C');
    await page.getByTestId('link-message').scrollIntoViewIfNeeded();
    await shot(page, 'link-again-desk');
    await expectAccessible(page);
    await page.setViewportSize({ width: 390, height: 844 });
    await page.getByTestId('link-message').scrollIntoViewIfNeeded();
    await shot(page, 'link-again-narrow');
  });
});

test('a phone without the job says so and what to do', async () => {
  await withPhone(app.url, {}, async (phone) => {
    await follow(phone.page, passed.again);
    await phone.page.getByText('is not on this phone').waitFor();
    await phone.page.getByText('Open the link on the phone that measured it').waitFor();
    await shot(phone.page, 'link-not-here');
    await phone.page.getByRole('link', { name: 'To the jobs on this device' }).tap();
    await phone.page.getByText('No job yet').waitFor();
  });
});

test('the link leads the owner to that step and to nothing besides; the answer merges at the shop', async () => {
  await withPhone(app.url, { profile: atOwner }, async (phone) => {
    const { page } = phone;
    await phone.open();
    await page.getByTestId('paste').tap();
    await page.getByTestId('paste-text').fill(`Please look again:\n${passed.again}\nRobin`);
    await page.getByTestId('paste-open').tap();
    await page.getByText('Was the pole leaning?').waitFor();
    expect(new Installer(phone).stepKey()).toBe('A-C');
    await shot(page, 'link-again-step');
    const before = page.url();
    // An owner looks afresh: what was read before is not on the screen.
    expect(await page.locator('main').innerText()).not.toContain('91 13/16');
    await page.getByTestId('enter').tap();
    await page.getByTestId('next').waitFor();
    expect(await page.locator('main').innerText()).not.toContain('91 13/16');
    await new Installer(phone).type('91 7/8');
    await new Installer(phone).next();
    // Other steps of the walk are open still; none of them was asked for.
    await page.waitForURL(/#\/leave\//);
    await follow(phone.page, passed.again);
    await page.getByText('Everything asked for is answered already').waitFor();
    await page.goto(before);
    const { path, logbook } = await send(phone, 'answer');
    passed.answer = path;
    expect(logbook.filter(({ who }) => who.role === 'owner')).toHaveLength(2);
  });
  await withPhone(app.url, { profile: atShop, screen: 'desk' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await page.locator('input[type=file][multiple]').setInputFiles(passed.answer);
    await page.getByText('R. Sample – Perla: 1 new entry').waitFor();
    await page
      .getByRole('link', { name: /R. Sample/ })
      .first()
      .click();
    await page.getByText('answered', { exact: true }).first().waitFor();
    expect(await page.getByTestId('ask-by-link').count()).toBe(0);
  });
});
