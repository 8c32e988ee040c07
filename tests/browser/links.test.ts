import { copyFileSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { codeInText, readLink, requestEntries } from '../../src/core/packet/link/index.ts';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
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
function pieceOf(address: string): unknown {
  const read = readLink(codeInText(address) ?? '');
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

test('the shop asks an owner to measure, and gets a link, a code and a message', async () => {
  await withPhone(app.url, { profile: atShop, screen: 'desk', colorScheme: 'dark' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await page.getByRole('link', { name: 'Ask an owner to measure' }).click();
    await page.getByTestId('make-link').click();
    await page.getByText('Choose at least one piece').waitFor();
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
    await page.setViewportSize({ width: 390, height: 844 });
    await shot(page, 'link-asked-narrow', { fullPage: true });
    await page.getByRole('link', { name: 'Back' }).click();
    await page.getByText('Asked for, nothing measured yet').waitFor();
    await shot(page, 'link-inbox-asked', { fullPage: true });
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
    await phone.open(`#/job/${job}/${pieceOf(passed.request)}/A-C`);
    await readFirst(phone);
    await phone.open(`#/job/${job}/${pieceOf(passed.request)}/A-C`);
    await page.getByTestId('enter').tap();
    await new Installer(phone).type('91 13/16');
    await new Installer(phone).next();
    await new Installer(phone).movedFrom('A-C');
    const { path, logbook } = await send(phone, 'packet');
    passed.packet = path;
    expect(logbook.filter(({ who }) => who.role === 'owner')).toHaveLength(1);
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
