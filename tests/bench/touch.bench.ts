/** How long a tap at the dock takes until the screen shows it, on the demo job, also on a phone four times slower. */
import type { Page } from 'playwright-core';
import { z } from 'zod';
import { startApp } from '../browser/support/app.ts';
import { withPhone } from '../browser/support/phone.ts';

const WANTED_MS = 100;
const SLOWDOWNS = [1, 4];

const Times = z.array(z.object({ name: z.string(), duration: z.number() }));

/** Durations the browser itself measured (Event Timing, W3C): from the tap to the next frame, in steps of 8 ms. */
async function watch(page: Page): Promise<void> {
  await page.evaluate(() => {
    const seen: { name: string; duration: number }[] = [];
    Object.assign(globalThis, { seen });
    new PerformanceObserver((list) => {
      for (const { name, duration } of list.getEntries()) if (name === 'click') seen.push({ name, duration });
    }).observe({ type: 'event', durationThreshold: 16, buffered: false } as PerformanceObserverInit);
  });
}

async function taps(page: Page, what: () => Promise<number>): Promise<{ count: number; slow: number[] }> {
  await page.evaluate(() => (globalThis as unknown as { seen: unknown[] }).seen.splice(0));
  const count = await what();
  await page.waitForTimeout(400);
  const times = Times.parse(await page.evaluate(() => (globalThis as unknown as { seen: unknown[] }).seen));
  return { count, slow: times.map(({ duration }) => duration) };
}

const key = (page: Page, label: string) => page.locator('.pad').getByRole('button', { name: label, exact: true }).tap();

async function measure(url: string, slowdown: number): Promise<string[]> {
  const rows: string[] = [];
  await withPhone(url, { slowdown }, async (phone) => {
    const { page } = phone;
    await phone.open();
    await page.getByRole('button', { name: 'Load the demo job' }).tap();
    await page.getByRole('link', { name: 'All steps' }).last().waitFor();
    await watch(page);
    const row = (name: string, { count, slow }: { count: number; slow: number[] }): void => {
      const worst = slow.length === 0 ? 'under 16' : String(Math.max(...slow));
      const over = slow.filter((time) => time > WANTED_MS).length;
      rows.push(`| ${slowdown} x | ${name} | ${count} | ${worst} | ${over} |`);
    };
    row(
      'open the walk of the bow cover',
      await taps(page, async () => {
        await page.getByRole('link', { name: 'All steps' }).last().tap();
        return 1;
      }),
    );
    await page.getByRole('link', { name: /F–P2/ }).first().tap();
    await page.locator('.pad').waitFor();
    const understood = page.getByRole('button', { name: 'Understood' });
    if (await understood.isVisible()) await understood.tap();
    row(
      'keys of the length pad',
      await taps(page, async () => {
        for (const label of ['4', '5', '5', '5', '3', '0', '1', '2']) await key(page, label);
        return 8;
      }),
    );
    row(
      'Next, with the check and the engine behind it',
      await taps(page, async () => {
        await page.getByTestId('next').tap();
        await page.waitForTimeout(1500);
        return 1;
      }),
    );
    await phone.open('#/');
    await page.getByRole('link', { name: /demo/i }).first().tap();
    await watch(page);
    row(
      'open what stands in the way of leaving',
      await taps(page, async () => {
        await page.getByRole('link', { name: 'What stands in the way' }).tap();
        await page.waitForTimeout(1000);
        return 1;
      }),
    );
  });
  return rows;
}

const app = await startApp();
try {
  console.log(`| slower by | what | taps | slowest, ms | over ${WANTED_MS} ms |\n|---|---|---|---|---|`);
  for (const slowdown of SLOWDOWNS) console.log((await measure(app.url, slowdown)).join('\n'));
} finally {
  await app.stop();
}
