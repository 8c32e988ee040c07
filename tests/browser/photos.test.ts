import type { CDPSession, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { makePhoto } from './support/photo.ts';
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

type Spot = readonly [number, number];

/** A finger on the glass, which Playwright can only tap with. */
class Finger {
  private readonly page: Page;
  private readonly session: CDPSession;

  private constructor(page: Page, session: CDPSession) {
    this.page = page;
    this.session = session;
  }

  static async on({ context, page }: Phone): Promise<Finger> {
    return new Finger(page, await context.newCDPSession(page));
  }

  private touch(type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]): Promise<unknown> {
    return this.session.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  }

  /** Where a share of the picture lies on the screen. */
  async at([x, y]: Spot): Promise<{ x: number; y: number }> {
    const box = await picture(this.page).boundingBox();
    if (!box) throw new Error('no picture on the screen');
    return { x: box.x + box.width * x, y: box.y + box.height * y };
  }

  /** Presses, drags, does something meanwhile, and lifts. */
  async drag(from: Spot, to: Spot, meanwhile: () => Promise<void> = async () => undefined): Promise<void> {
    await picture(this.page).scrollIntoViewIfNeeded();
    const [a, b] = [await this.at(from), await this.at(to)];
    await this.touch('touchStart', [a]);
    for (const share of [0.25, 0.5, 0.75, 1])
      await this.touch('touchMove', [{ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share }]);
    await meanwhile();
    // Who aims holds still before lifting; without it the system takes the drag for a throw.
    await this.page.waitForTimeout(100);
    await this.touch('touchMove', [b]);
    await this.touch('touchEnd', []);
  }
}

const picture = (page: Page): Locator => page.locator('button.photo.placing');
const ask = (page: Page): Locator => page.locator('.photo-ask');
const marks = (page: Page): Locator => page.getByRole('list', { name: 'Marks on this photo' });

async function takePhoto(page: Page, seed: number, change: 'as it is' | 'dark' = 'as it is'): Promise<void> {
  const buffer = await makePhoto(page, { seed, width: 1200, height: 900, level: change === 'dark' ? 0.03 : 1 });
  await page.locator('input[type=file]').setInputFiles({ name: 'dock.jpg', mimeType: 'image/jpeg', buffer });
}

/** Where the rings are, as shares of the picture, by the label that stands in the list. */
async function rings(page: Page): Promise<{ x: number; y: number }[]> {
  await page.locator('.photo-marks').waitFor({ state: 'attached' });
  return await page.evaluate(() => {
    const svg = document.querySelector('.photo-marks');
    const [, , width = 1, height = 1] = (svg?.getAttribute('viewBox') ?? '').split(' ').map(Number);
    return [...(svg?.querySelectorAll('g[transform]') ?? [])].map((ring) => {
      const [x = 0, y = 0] = (ring.getAttribute('transform')?.match(/[\d.]+/g) ?? []).map(Number);
      return { x: x / width, y: y / height };
    });
  });
}

/** Every label lies inside its picture as it is drawn, letters and all. */
async function expectLabelsInside(page: Page): Promise<void> {
  const outside = await page.evaluate(() => {
    const frame = document.querySelector('.photo-marks')?.getBoundingClientRect();
    const texts = [...document.querySelectorAll('.photo-marks text')];
    return texts
      .filter((text) => {
        const box = text.getBoundingClientRect();
        const inside =
          frame &&
          box.left >= frame.left &&
          box.right <= frame.right &&
          box.top >= frame.top - 2 &&
          box.bottom <= frame.bottom + 2;
        return !inside;
      })
      .map((text) => text.textContent);
  });
  expect(outside).toEqual([]);
}

const stored = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('tapetrue');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const counting = opening.result.transaction('photos').objectStore('photos').count();
          counting.onsuccess = () => {
            opening.result.close();
            resolve(counting.result);
          };
        };
      }),
  );

/** A job with a shade whose walk stands at the picture of both mounts. */
async function atMounts(phone: Phone): Promise<Installer> {
  const installer = new Installer(phone);
  await installer.begin('M. Sample', 'Perla', 'Sam');
  await installer.addPiece('Tension shade');
  await phone.page.getByRole('link', { name: /All steps/ }).tap();
  await phone.page.getByRole('link', { name: /Both mounts/ }).tap();
  await installer.understandCautions();
  return installer;
}

test('marks are placed under a loupe, moved, and keep their labels inside the picture', async () => {
  await withPhone(app.url, { profile }, async (phone) => {
    const { page } = phone;
    const finger = await Finger.on(phone);
    const installer = await atMounts(phone);
    await takePhoto(page, 3);
    await ask(page).getByText('Tap where A is').waitFor();
    await finger.drag([0.5, 0.5], [0.98, 0.03], async () => {
      const loupe = await page.locator('.loupe').boundingBox();
      const tip = await finger.at([0.98, 0.03]);
      if (!loupe) throw new Error('no loupe while the finger is down');
      const [cx, cy] = [loupe.x + loupe.width / 2, loupe.y + loupe.height / 2];
      expect(Math.hypot(cx - tip.x, cy - tip.y)).toBeGreaterThan(loupe.width / 2 + 10);
      expect(loupe.x).toBeGreaterThanOrEqual(0);
      expect(loupe.x + loupe.width).toBeLessThanOrEqual(390);
      await shot(page, 'photo-loupe');
    });
    await ask(page).getByText('Tap where B is').waitFor();
    expect(await page.locator('.loupe').count()).toBe(0);
    const [first] = await rings(page);
    expect(first?.x).toBeCloseTo(0.98, 1);
    expect(first?.y).toBeCloseTo(0.03, 1);
    await expectLabelsInside(page);
    // Slid off the picture, nothing is placed.
    await finger.drag([0.5, 0.5], [0.5, 1.3]);
    expect(await rings(page)).toHaveLength(1);
    await picture(page).tap({ position: { x: 5, y: 5 } });
    await ask(page).getByText('All points are marked.').waitFor();
    await expectLabelsInside(page);
    await shot(page, 'photo-marked');
    await expectAccessible(page);
    await installer.tap('B');
    await ask(page).getByText('Tap the new place of B').waitFor();
    for (const way of ['Right', 'Right', 'Down']) await installer.tap(way);
    await shot(page, 'photo-fine');
    await installer.tap('Put it here');
    await ask(page).getByText('All points are marked.').waitFor();
    const moved = await rings(page);
    expect(moved).toHaveLength(2);
    expect(moved.some(({ x, y }) => Math.abs(x - 5 / 358 - 0.008) < 0.01 && y > 0.01)).toBe(true);
    await installer.tap('B');
    await picture(page).focus();
    for (const key of ['Shift+ArrowRight', 'Shift+ArrowDown', 'ArrowLeft']) await page.keyboard.press(key);
    await page.locator('.loupe').waitFor();
    await page.keyboard.press('Enter');
    await ask(page).getByText('All points are marked.').waitFor();
    await installer.tap('B');
    await installer.tap('Remove this mark');
    await ask(page).getByText('Tap where B is').waitFor();
    expect(await rings(page)).toHaveLength(1);
  });
});

test('an edge, a card, a note at a place and a note on the whole are put on the picture and can go again', async () => {
  await withPhone(app.url, { profile }, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    const finger = await Finger.on(phone);
    await phone.open();
    await page
      .getByRole('link', { name: /M. Sample/ })
      .first()
      .tap();
    await installer.tap('Add a piece');
    await installer.addPiece('Open-bow cover');
    await page.getByRole('link', { name: /All steps/ }).tap();
    await page
      .getByRole('link', { name: /Port edge/ })
      .first()
      .tap();
    await installer.understandCautions();
    await takePhoto(page, 5);
    await ask(page)
      .getByText(/Tap where/)
      .waitFor();
    await installer.tap('Mark something else');
    await shot(page, 'photo-mark-other');
    await page.getByRole('textbox', { name: /note at a place/ }).fill('Cord leaves here');
    await installer.tap('Tap its place');
    await ask(page).getByText('Tap the place of “Cord leaves here”').waitFor();
    await finger.drag([0.4, 0.4], [0.97, 0.95]);
    await marks(page).getByText('Cord leaves here').waitFor();
    await expectLabelsInside(page);
    await installer.tap('Draw an edge');
    await ask(page)
      .getByText(/Tap along/)
      .waitFor();
    for (const spot of [
      [0.1, 0.8],
      [0.35, 0.6],
      [0.6, 0.55],
      [0.85, 0.65],
    ] as const)
      await finger.drag([spot[0], spot[1] - 0.1], spot);
    await ask(page).getByText('4 places so far').waitFor();
    await shot(page, 'photo-edge');
    await installer.tap('Last one back');
    await ask(page).getByText('3 places so far').waitFor();
    await installer.tap('Finish the line');
    const lines = page.getByRole('list', { name: 'Lines on this photo' });
    await lines.getByRole('listitem').waitFor();
    await installer.tap('Known size');
    await shot(page, 'photo-known-size');
    await installer.tap('Bank card');
    await ask(page).getByText('Tap both ends of its long side').waitFor();
    await finger.drag([0.3, 0.3], [0.2, 0.25]);
    await ask(page).getByText('Now the other end').waitFor();
    await finger.drag([0.3, 0.3], [0.3, 0.25]);
    await lines.getByText('Bank card, 3 3/8"').waitFor();
    // A tenth of the width is 85.6 mm, so the whole of it 856 mm.
    await lines.getByText('the picture would be 34 in wide').waitFor();
    await installer.tap('Known size');
    await installer.tap('Something else');
    await page.getByRole('textbox', { name: 'What is it?' }).fill('Hatch');
    await page.getByRole('textbox', { name: /How long/ }).fill('24');
    await installer.tap('Tap its ends');
    await finger.drag([0.5, 0.5], [0.1, 0.4]);
    await finger.drag([0.5, 0.5], [0.9, 0.4]);
    await lines.getByText('Hatch, 24"').waitFor();
    await installer.tap('Write a note');
    await page.getByRole('textbox', { name: 'Note on this photo' }).fill('Taken at low water');
    await installer.tap('Save');
    await page.getByText('Taken at low water').waitFor();
    await shot(page, 'photo-all-on-it', { fullPage: true });
    await expectAccessible(page);
    await expectLabelsInside(page);
    await page.getByRole('button', { name: /^Remove Hatch/ }).tap();
    await lines.getByText('Hatch').waitFor({ state: 'detached' });
  });
});

test('a dark picture is said to be dark and kept; one that is removed comes back, one that is withdrawn leaves no byte', async () => {
  await withPhone(app.url, { profile }, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    await phone.open();
    await page
      .getByRole('link', { name: /M. Sample/ })
      .first()
      .tap();
    await page.getByRole('link', { name: 'All steps' }).first().tap();
    await page.getByRole('link', { name: /Both mounts/ }).tap();
    const before = await stored(page);
    await takePhoto(page, 8, 'dark');
    await page.getByText('Very dark.').waitFor();
    const strip = page.getByRole('list', { name: 'Photos taken here' });
    expect(await strip.getByRole('button').count()).toBe(2);
    await shot(page, 'photo-dark');
    expect(await stored(page)).toBe(before + 1);
    await strip.getByRole('button', { name: 'Photo 1 of 2' }).tap();
    await page.getByText('Very dark.').waitFor({ state: 'detached' });
    await strip.getByRole('button', { name: 'Photo 2 of 2' }).tap();
    await installer.tap('Remove');
    await shot(page, 'photo-remove');
    await installer.tap('Remove this photo');
    await page.getByText('One photo was removed here.').waitFor();
    expect(await strip.count()).toBe(0);
    expect(await stored(page)).toBe(before + 1);
    await shot(page, 'photo-removed', { fullPage: true });
    await installer.tap('Bring it back');
    await strip.waitFor();
    await strip.getByRole('button', { name: 'Photo 2 of 2' }).tap();
    await installer.tap('Remove');
    await installer.tap('Withdraw for good');
    await page.getByText('Gone for good: the picture.').waitFor();
    expect(await page.getByTestId('withdraw').isDisabled()).toBe(true);
    await installer.tap('Taken by mistake');
    await shot(page, 'photo-withdraw', { fullPage: true });
    await expectAccessible(page);
    await page.getByTestId('withdraw').tap();
    await strip.waitFor({ state: 'detached' });
    expect(await page.getByText('was removed here').count()).toBe(0);
    expect(await stored(page)).toBe(before);
    await page.reload();
    await page
      .getByText(/Both mounts/)
      .first()
      .waitFor();
    expect(await stored(page)).toBe(before);
  });
});

test('a photo is taken at a reading, with its two points to mark', async () => {
  await withPhone(app.url, { profile }, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    await phone.open();
    await page
      .getByRole('link', { name: /M. Sample/ })
      .first()
      .tap();
    await page.getByRole('link', { name: 'All steps' }).first().tap();
    await page.getByRole('link', { name: /^A–C/ }).tap();
    await installer.understandCautions();
    await page.getByRole('link', { name: 'Photo', exact: true }).tap();
    await page.getByRole('heading', { name: 'Photos: A–C' }).waitFor();
    await takePhoto(page, 11);
    await ask(page).getByText('Tap where A is').waitFor();
    await picture(page).tap({ position: { x: 60, y: 60 } });
    await ask(page).getByText('Tap where C is').waitFor();
    await picture(page).tap({ position: { x: 260, y: 120 } });
    await ask(page).getByText('All points are marked.').waitFor();
    await shot(page, 'photo-at-reading', { fullPage: true });
    await expectAccessible(page);
    await page.getByRole('link', { name: 'Back to A–C' }).tap();
    await page.getByRole('link', { name: 'Photo 1' }).waitFor();
    await shot(page, 'step-with-photo');
    await page.goBack();
    await page.getByRole('heading', { name: 'Photos: A–C' }).waitFor();
  });
});

test('boat and customer can be written down, and the customer withdrawn for good', async () => {
  await withPhone(app.url, { profile }, async (phone) => {
    const { page } = phone;
    const installer = new Installer(phone);
    await phone.open();
    await page
      .getByRole('link', { name: /M. Sample/ })
      .first()
      .tap();
    await page.getByRole('link', { name: 'Boat and customer' }).tap();
    await page.getByRole('textbox', { name: 'Contact' }).fill('555 0100');
    await page.getByRole('textbox', { name: 'Place' }).fill('Berth 4');
    await shot(page, 'details', { fullPage: true });
    await expectAccessible(page);
    await installer.tap('Save');
    await page.getByRole('link', { name: 'Boat and customer' }).tap();
    expect(await page.getByRole('textbox', { name: 'Contact' }).inputValue()).toBe('555 0100');
    await installer.tap('Withdraw a person’s details for good');
    await page.getByText('it will be “Perla”').waitFor();
    await installer.tap('They asked for it');
    await shot(page, 'details-withdraw', { fullPage: true });
    await expectAccessible(page);
    await page.getByTestId('withdraw').tap();
    await page.getByTestId('withdraw').waitFor({ state: 'detached' });
    expect(await page.getByRole('textbox', { name: 'Customer' }).inputValue()).toBe('');
    expect(await page.getByRole('textbox', { name: 'Contact' }).inputValue()).toBe('');
    expect(await page.getByRole('textbox', { name: 'Place' }).inputValue()).toBe('Berth 4');
    expect(await page.getByRole('textbox', { name: 'Name of the job' }).inputValue()).toBe('Perla');
    await phone.open();
    await page.getByRole('link', { name: /Perla/ }).first().waitFor();
    expect(await page.locator('body').innerText()).not.toContain('Sample');
  });
});

test('at the bench pictures stand in the plan’s place, and their marks light up what belongs to them', async () => {
  await withPhone(app.url, { profile, screen: 'desk' }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await page.getByRole('link', { name: /Perla/ }).first().click();
    await page.getByRole('button', { name: /^Open-bow cover/ }).click();
    await page.getByText('Taken at low water').first().waitFor();
    await page
      .getByRole('button', { name: /^Large:/ })
      .first()
      .click();
    await page.getByRole('button', { name: 'Back to the drawing' }).waitFor();
    await shot(page, 'bench-photo-large');
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Larger' }).click();
    await page.getByRole('button', { name: 'Larger' }).click();
    await shot(page, 'bench-photo-zoomed');
    await page.getByRole('button', { name: 'Back to the drawing' }).click();
    await page.getByRole('button', { name: /^Tension shade/ }).click();
    await page.getByRole('button', { name: 'Large: A–C' }).click();
    const large = page.locator('.bench-large');
    await large.locator('.hit').first().hover();
    await large.locator('text.lit').waitFor();
    await large.locator('.hit').first().click();
    await page.getByText(/Point [AC] and the readings that end there/).waitFor();
    await page.getByRole('row', { name: /^A–C/ }).first().waitFor();
    await shot(page, 'bench-photo-linked');
  });
});
