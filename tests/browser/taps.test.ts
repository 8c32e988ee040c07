import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { withPhone } from './support/phone.ts';
import { truthOf } from './support/truths.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

const EDGE = ['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1'];
/** The straight tapes from the three marks: to one another, and to every point of the edge. */
const TAPES = [
  'W1-W2',
  'W1-F',
  'W2-F',
  ...['W1', 'W2', 'F'].flatMap((mark) => EDGE.map((point) => `${mark}-${point}`)),
];

/** What a reading must cost: a tap for each digit, one for the fraction, one for Next. */
function keysOf(text: string): string[] {
  const [whole = '', fraction] = text.split(' ');
  return [...whole, ...(fraction === undefined ? [] : [fraction]), 'Next'];
}

interface Place {
  x: number;
  y: number;
}

/** The middle of every key of the pad, by its name. */
async function keyPlaces(page: Page): Promise<Map<string, Place>> {
  const keys = await page.locator('.pad .key').evaluateAll((all) =>
    all.map((key) => {
      const { x, y, width, height } = key.getBoundingClientRect();
      const name = key.getAttribute('aria-label') ?? key.textContent ?? '';
      return [name, { x: x + width / 2, y: y + height / 2 }] as const;
    }),
  );
  return new Map(keys);
}

/** Counts what a finger does on the page, as the page itself sees it. */
async function countTouches(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    const counted = globalThis as unknown as { touches: number };
    counted.touches = 0;
    addEventListener('touchstart', (event) => event.isTrusted && counted.touches++, { capture: true, passive: true });
  });
  return () => page.evaluate(() => (globalThis as unknown as { touches: number }).touches);
}

test('twenty-four readings of the bow cover take a tap a digit, one for the fraction, one for Next, and no more', async () => {
  const { readings } = truthOf('open-bow');
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Open-bow cover');
    await page.getByRole('link', { name: /All steps/ }).tap();
    await page.locator(`a[href$="/${TAPES[0]}"]`).first().tap();
    await page.getByTestId('next').waitFor();

    const places = await keyPlaces(page);
    const touches = await countTouches(page);
    const walked: string[] = [];
    const began = performance.now();
    for (let step = installer.stepKey(); step !== null && walked.length < TAPES.length; step = installer.stepKey()) {
      for (const key of keysOf(readings[step] ?? '')) {
        const place = places.get(key);
        if (!place) throw new Error(`no key ${key}`);
        await page.touchscreen.tap(place.x, place.y);
      }
      await installer.movedFrom(step);
      walked.push(step);
    }
    const seconds = (performance.now() - began) / 1000;

    expect([...walked].sort()).toEqual([...TAPES].sort());
    const wanted = walked.flatMap((step) => keysOf(readings[step] ?? '')).length;
    const used = await touches();
    const each = (all: number): string => (all / walked.length).toFixed(2);
    console.log(
      `${walked.length} readings: ${used} taps, ${each(used)} a reading (${wanted} wanted); ` +
        `${each(seconds)} s a reading as fast as the app lets a robot tap`,
    );
    expect(used).toBe(wanted);
    expect(await keyPlaces(page), 'no key has moved on the way').toEqual(places);

    await page.getByRole('link', { name: /All steps/ }).tap();
    for (const step of TAPES) {
      const row = page.locator(`a[href$="/${step}"]`);
      expect(await row.first().innerText(), step).toContain(readings[step]);
    }
  });
});
