import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildPacket } from '../../src/core/packet/index.ts';
import { HOSTILE, hostileJob } from '../core/packet/hostile.ts';
import { MADE, noFindings } from '../core/packet/sample.ts';
import { type App, startApp } from './support/app.ts';
import { withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

/** What stands out to the right of the page. */
const wideParts = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const room = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= room) return [];
    const out = [...document.querySelectorAll('main *')].filter(
      (part) => part.getBoundingClientRect().right > room + 1,
    );
    return out
      .slice(0, 5)
      .map((part) => `${part.tagName}.${part.getAttribute('class')} ${part.textContent?.slice(0, 30)}`);
  });

/** Texts that force a direction on what stands after them in the same line: no element of their own ends with them. */
const turning = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const texts = document.createTreeWalker(document.querySelector('main') ?? document.body, NodeFilter.SHOW_TEXT);
    const found: string[] = [];
    while (texts.nextNode() && found.length < 5) {
      const said = texts.currentNode.textContent ?? '';
      const parent = texts.currentNode.parentElement;
      const ends = parent?.textContent?.endsWith(said) && getComputedStyle(parent).unicodeBidi !== 'normal';
      const sentence = /[\u202a-\u202e].*\)/.test(said);
      if (/[\u202a-\u202e]/.test(said) && (sentence || !ends))
        found.push(`${parent?.tagName}.${parent?.className}: ${JSON.stringify(said).slice(0, 60)}`);
    }
    return found;
  });

/** Every packet, into the inbox by its picker. */
async function takeIn(page: Page, jobs: readonly ReturnType<typeof hostileJob>[]): Promise<void> {
  await page.locator('input[type=file][multiple]').setInputFiles(
    jobs.map(({ entries, photos }, at) => ({
      name: `${at}.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(buildPacket({ entries, made: MADE, photos, check: noFindings }))),
    })),
  );
  const opened = page.getByRole('link', { name: 'Open it' });
  await expect.poll(() => opened.count(), { timeout: 60_000 }).toBe(jobs.length);
}

/** The long history too, which is short at first. */
async function wholeBench(page: Page): Promise<void> {
  await page.locator('#bench-history').waitFor();
  expect(await page.locator('#bench-plan svg').count()).toBeGreaterThan(0);
  const history = page.locator('#bench-history');
  await history.getByRole('button', { name: /^Show all \d+ entries/ }).evaluate((all: HTMLElement) => all.click());
  await history.locator('button[aria-expanded=true]').waitFor();
}

test.each(['phone', 'desk'] as const)(
  'hostile text in every field runs nowhere and breaks no layout: %s',
  async (screen) => {
    await withPhone(app.url, { screen }, async ({ page, open }) => {
      const dialogs: string[] = [];
      page.on('dialog', (dialog) => {
        dialogs.push(dialog.message());
        void dialog.dismiss();
      });
      const jobs = HOSTILE.map((text, at) => hostileJob(text, at * 1000));
      await open('#/bench');
      await takeIn(page, jobs);
      const wrong: Record<string, string[]> = {};
      const look = async (where: string): Promise<void> => {
        const found = [...(await wideParts(page)), ...(await turning(page))];
        if (found.length > 0) wrong[where] = found;
      };
      await look('inbox');
      await shot(page, `hostile-${screen}-inbox`);
      for (const [at, { job, piece }] of jobs.entries()) {
        await open(`#/bench/${job}`);
        await wholeBench(page);
        await look(`bench ${at}`);
        if (at === 0 || at === 6 || at === 17) await shot(page, `hostile-${screen}-${at}`);
        await open(`#/bench/${job}/sheet/${piece}`);
        await page.locator('.paper-page').first().waitFor();
        await look(`job sheet ${at}`);
        await open(`#/job/${job}`);
        await page.locator('.piece').first().waitFor();
        await look(`job ${at}`);
        await open(`#/leave/${job}`);
        await page.getByRole('heading', { name: 'Before you leave' }).waitFor();
        await look(`leave ${at}`);
        await open(`#/paper/${job}/${piece}`);
        await page.locator('.paper-facts').first().waitFor();
        await look(`paper ${at}`);
      }
      await open('#/');
      await page.locator('ul.list > li').first().waitFor();
      await look('list');
      expect(dialogs).toEqual([]);
      expect(await page.evaluate(() => 'ran' in window)).toBe(false);
      expect(wrong).toEqual({});
    });
  },
);
