import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';
import { written } from './support/written.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

/** Words that English can hardly do without and Spanish does not have. */
const ENGLISH = /\b(the|and|your|with|what|this|from|that|which|not|yet|here|job|reading|photo|back|next|piece)\b/i;

/** What is on the screen, hidden labels too, without what is English in any language. */
const textOf = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const labels = [...document.querySelectorAll('[aria-label]')].map((one) => one.getAttribute('aria-label'));
    const own = [...document.querySelectorAll('#app [lang]')].map((one) => one.textContent ?? '');
    return [document.body.innerText, ...labels]
      .join('\n')
      .replaceAll(own.find((name) => name === 'English') ?? 'English', '');
  });

async function inSpanish(page: Page, name: string): Promise<void> {
  await page.waitForLoadState('networkidle');
  const english = (await textOf(page)).split('\n').filter((line) => ENGLISH.test(line));
  expect(english, name).toEqual([]);
  await shot(page, `es-${name}`);
}

test('a phone that speaks Spanish is spoken to in Spanish, from the first screen to the bench', async () => {
  await withPhone(app.url, { locale: 'es-MX' }, async (phone) => {
    const { page } = phone;
    await phone.open();
    await page.getByRole('link', { name: 'Nuevo trabajo' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
    await inSpanish(page, 'jobs');
    await page.getByRole('link', { name: 'Nuevo trabajo' }).tap();
    await page.getByRole('textbox', { name: /^Cliente/ }).fill('M. Ejemplo');
    await page.getByRole('textbox', { name: /^Barco/ }).fill('Perla');
    await page.getByRole('textbox', { name: /nombre/ }).fill('Sam');
    await inSpanish(page, 'new');
    await page.getByRole('button', { name: 'Empezar' }).tap();
    await page.getByRole('button', { name: /^Toldo de tensión/ }).waitFor();
    await inSpanish(page, 'pieces');
    await new Installer(phone).addPiece('Toldo de tensión');
    const job = new URL(page.url()).hash.split('/')[2] ?? '';
    const piece = new URL(page.url()).hash.split('/')[3] ?? '';
    for (const [name, at] of [
      ['walk', `#/job/${job}/${piece}`],
      ['reading', `#/job/${job}/${piece}/A-B`],
      ['question', `#/job/${job}/${piece}/poles`],
      ['shot', `#/job/${job}/${piece}/photo-mounts`],
      ['table', `#/job/${job}/${piece}/change/points`],
      ['things', `#/things/${job}/${piece}`],
      ['leave', `#/leave/${job}`],
      ['details', `#/details/${job}`],
      ['send', `#/send/${job}`],
      ['keep', '#/keep'],
      ['shop', '#/shop'],
      ['inbox', '#/bench'],
      ['judge', `#/bench/${job}`],
      ['paper', `#/paper/${job}/${piece}`],
    ] as const) {
      await phone.open(at);
      await page.locator('h1').first().waitFor();
      await inSpanish(page, name);
    }
    await expectAccessible(page);
  });
});

test('the language is chosen on the device, at once and for good; a piece nobody named is called by its kind in it', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Tension shade');
    const job = new URL(page.url()).hash.split('/')[2] ?? '';
    await phone.open('#/keep');
    await page.getByRole('button', { name: 'Español' }).tap();
    await page.getByRole('heading', { name: 'Este dispositivo', exact: true }).waitFor();
    await written(page);
    await phone.open(`#/job/${job}`);
    await page.reload();
    await page.getByRole('heading', { name: 'Toldo de tensión' }).waitFor();
    await phone.open('#/keep');
    await page.getByRole('button', { name: 'English' }).tap();
    await page.getByRole('heading', { name: 'This device', exact: true }).waitFor();
    await written(page);
    await phone.open(`#/job/${job}`);
    await page.getByRole('heading', { name: 'Tension shade' }).waitFor();
  });
});

test('a link’s language is spoken from the moment it is opened, said, and taken back in one tap; the shop’s message is in it', async () => {
  const passed = { address: '' };
  await withPhone(app.url, { screen: 'desk' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench/ask');
    await page.getByRole('checkbox', { name: 'Tension shade' }).check();
    await page.getByRole('textbox', { name: 'Boat' }).fill('Perla');
    await page.getByRole('textbox', { name: 'Your shop' }).fill('A canvas shop');
    await page.getByLabel('Language of the measurer').selectOption('es');
    await page.getByTestId('make-link').click();
    const message = await page.getByTestId('link-message').inputValue();
    expect(message).toContain('A canvas shop le pide que mida Perla: Toldo de tensión.');
    await page.getByRole('heading', { name: 'Asked to measure' }).waitFor();
    await shot(page, 'language-message');
    passed.address = message.split('\n').find((line) => line.startsWith('http')) ?? '';
  });
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    await phone.open(passed.address);
    await page.getByText('La aplicación habla ahora español').waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
    await shot(page, 'language-link', { fullPage: true });
    await expectAccessible(page);
    await page.getByRole('button', { name: 'English' }).tap();
    await page.getByRole('heading', { name: 'A canvas shop asks you to measure' }).waitFor();
    expect(await page.getByText('La aplicación').count()).toBe(0);
    await page.getByRole('textbox', { name: /^Your name/ }).fill('Ona');
    await page.getByTestId('begin-request').tap();
    await page.getByRole('link', { name: 'Start', exact: true }).waitFor();
    // Chosen by the person now: the next link does not change it.
    await page.goto('about:blank');
    await page.goto(passed.address);
    await page.getByText('on this device already').waitFor();
  });
});
