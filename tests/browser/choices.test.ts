import { afterAll, beforeAll, expect, test } from 'vitest';
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

/** Opens a step of the piece on the screen and waits until it is there. */
async function stepOf({ page }: Phone, installer: Installer, key: string): Promise<void> {
  const [, at, job, piece] = new URL(page.url()).hash.split('/');
  await page.evaluate((hash) => location.assign(hash), `#/${at}/${job}/${piece}/${key}`);
  await page.waitForFunction((now) => location.hash.endsWith(`/${now}`), key);
  await installer.understandCautions();
}

test('the second half of a doubled tap does not answer the question that has come in its place', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Tension shade');
    // Where a choice of the next question will be.
    await stepOf(phone, installer, 'speed');
    const box = await page.locator('.choices button').first().boundingBox();
    if (!box) throw new Error('the question is not on the screen');
    const spot = [box.x + box.width / 2, box.y + box.height / 2] as const;
    await stepOf(phone, installer, 'berth');
    await page.locator('.choices button').first().tap();
    await installer.movedFrom('berth');
    // At once, as a doubled tap comes: nobody waits until the question can be tapped.
    await page.touchscreen.tap(...spot);
    await page.waitForTimeout(700);
    expect(installer.stepKey()).toBe('speed');
    expect(await page.locator('.choices button[aria-pressed=true]').count()).toBe(0);
    // The same tap a moment later is an answer.
    await page.touchscreen.tap(...spot);
    await installer.movedFrom('speed');
  });
});

test('an answer that is changed leads on in the walk as it then is', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Tension shade');
    await stepOf(phone, installer, 'poles');
    await installer.tap('Nothing yet');
    await page.locator('.strip').getByText('Nothing stands in the rod holders').waitFor();
    await installer.tap('Go on anyway');
    await installer.movedFrom('poles');
    // The lean of the holders is asked only where there is nothing to tape to.
    expect(installer.stepKey()).toBe('lean');
    await stepOf(phone, installer, 'poles');
    await page.waitForTimeout(400);
    await installer.tap('The real poles');
    await installer.movedFrom('poles');
    expect(installer.stepKey()).not.toBe('lean');
    await page.locator('.step').waitFor();
  });
});

test('choices that do not go together are said where they are made; an answer stands ready for the next piece', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Tension shade');
    await stepOf(phone, installer, 'rain');
    await installer.tap('Stays up');
    await page.locator('.strip').getByText('holds water').waitFor();
    await expectAccessible(page);
    await shot(page, 'choice-conflict');
    await installer.tap('Go on anyway');
    await installer.movedFrom('rain');
    await stepOf(phone, installer, 'berth');
    await installer.tap('On a lift');
    await installer.movedFrom('berth');
    await stepOf(phone, installer, 'cloth');
    await page.getByRole('textbox', { name: 'In your own words' }).fill('navy, acrylic');
    await shot(page, 'choice-words');
    // Words without a choice are still there after a look elsewhere.
    await installer.tap('Skip');
    await installer.movedFrom('cloth');
    await installer.tap('Back');
    await page.waitForFunction(() => location.hash.endsWith('/cloth'));
    expect(await page.getByRole('textbox').inputValue()).toBe('navy, acrylic');
    await installer.tap('Mesh');
    await installer.movedFrom('cloth');
    // Mesh lets the rain through: nothing is said any more.
    await stepOf(phone, installer, 'rain');
    expect(await page.locator('.strip').getByText('holds water').count()).toBe(0);

    await page.goto(new URL(`#/job/${new URL(page.url()).hash.split('/')[2]}`, app.url).href);
    await installer.tap('Add a piece');
    await installer.addPiece('Open-bow cover');
    await stepOf(phone, installer, 'berth');
    await shot(page, 'choice-as-for');
    await installer.tap('As for Tension shade: On a lift');
    await installer.movedFrom('berth');
    await stepOf(phone, installer, 'cloth');
    await installer.tap('As for Tension shade: Mesh, navy, acrylic');
    await installer.movedFrom('cloth');
    await stepOf(phone, installer, 'cloth');
    expect(await page.getByRole('textbox').inputValue()).toBe('navy, acrylic');
    expect(await page.getByRole('button', { name: 'Mesh', exact: true }).getAttribute('aria-pressed')).toBe('true');
  });
});

const LOOKS: readonly [string, string, readonly string[]][] = [
  ['Folding-frame top', 'top', ['line', 'P1-S1', 'crown-1', 'h-P1', 'rise-P2', 'headroom']],
  ['Seat, helm, console or engine cover', 'box', ['what', 'T1-B2', 'h-T4']],
  ['Cushion, bolster or carpet', 'cushion', ['L-R', 'R-E3', 'E1-E2', 'thickness', 'bevel']],
];

test.each(LOOKS)('%s: its steps fit the smallest phone, with large text too', async (title, name, keys) => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await page.setViewportSize({ width: 320, height: 640 });
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece(title);
    if (name === 'top') {
      await stepOf(phone, installer, 'bows');
      await installer.tap('Three');
      await installer.movedFrom('bows');
    }
    if (name === 'cushion') {
      for (const [key, choice] of [
        ['what', 'A cushion'],
        ['outline', 'By a tape from either end'],
      ] as const) {
        await stepOf(phone, installer, key);
        await installer.tap(choice);
        await installer.movedFrom(key);
      }
    }
    for (const size of ['100%', '200%']) {
      await page.evaluate((text) => document.documentElement.style.setProperty('font-size', text), size);
      for (const key of keys) {
        await stepOf(phone, installer, key);
        await shot(page, `guide-${name}-${key}-${size.replace('%', '')}`);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(wide, `${key} at ${size}`).toBeLessThanOrEqual(0);
      }
    }
  });
});
