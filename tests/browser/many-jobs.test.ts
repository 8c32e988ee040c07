import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { changeRecords, factsOf, fillDisk, recordsOnDisk } from '../bench/fill-disk.ts';
import { manyJobs } from '../bench/many-jobs.ts';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';

const JOBS = 60;
let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

const rows = (page: Page) => page.locator('ul.list > li');

/** A device with many jobs, their records made by the app itself. */
async function withJobs({ page, open }: Phone): Promise<void> {
  await open();
  await page.getByText('No job yet').waitFor();
  const jobs = manyJobs(JOBS);
  await fillDisk(page, jobs);
  await page.reload();
  while ((await recordsOnDisk(page)) < JOBS) await page.waitForTimeout(100);
  await changeRecords(page, factsOf(jobs));
  await page.reload();
  await page.getByRole('searchbox').waitFor();
}

test('a job among many is found without its accents, a page of them is drawn, and the rest is a tap away', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    await withJobs(phone);
    expect(await rows(page).count()).toBe(30);
    await expectAccessible(page);
    await shot(page, 'jobs-many');
    await page.getByRole('button', { name: /^Show .* more$/ }).tap();
    expect(await rows(page).count()).toBeGreaterThan(30);
    await page.getByRole('searchbox').fill('fjord etoile');
    await page.getByText(/^[1-9] of 60 jobs/).waitFor();
    const found = await rows(page).allInnerTexts();
    expect(found.length).toBeGreaterThan(0);
    for (const text of found) expect(text).toMatch(/Abelone Fjørd.*Étoile filante/s);
    await page.getByRole('searchbox').fill('nobody of that name');
    await page.getByText('No job with these words.').waitFor();
  });
});

test('what the shop asked again comes first when asked for, says so in words, and the order is kept', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    await withJobs(phone);
    await page.getByRole('combobox').selectOption('need');
    await rows(page)
      .first()
      .getByText(/Asked again: \d/)
      .waitFor();
    await page.reload();
    await page.getByRole('searchbox').waitFor();
    expect(await page.getByRole('combobox').inputValue()).toBe('need');
    expect(await rows(page).first().innerText()).toMatch(/Asked again: \d/);
    await phone.open('#/bench');
    await rows(page).first().getByText('No longer clear to cut').waitFor();
    await page.getByRole('searchbox').waitFor();
    await expectAccessible(page);
  });
});

test('a job is put away in one tap, stays in sight until the list is left, and is taken back in one', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    await withJobs(phone);
    const title = await rows(page).nth(1).locator('strong').innerText();
    const row = rows(page).filter({ has: page.getByText(title, { exact: true }) });
    await page.getByRole('button', { name: 'Put jobs away' }).tap();
    await row.getByRole('button', { name: /^Put away/ }).tap();
    await row.getByRole('button', { name: /^Take back/ }).waitFor();
    await shot(page, 'jobs-put-away');
    await page.getByRole('link', { name: 'New job' }).tap();
    await page.getByRole('heading', { name: 'New job' }).waitFor();
    await page.getByRole('link', { name: 'Back' }).tap();
    await page.getByRole('searchbox').waitFor();
    expect(await row.count()).toBe(0);
    await page.getByRole('searchbox').fill(title);
    await page.getByText(/more (is|are) put away/).waitFor();
    await page.getByRole('button', { name: /^Show \d+ put away/ }).tap();
    await row.getByRole('button', { name: /^Take back/ }).tap();
    await row.getByText('Put away', { exact: true }).waitFor({ state: 'detached' });
    await page.reload();
    await row.waitFor();
  });
});
