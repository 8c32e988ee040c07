import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { packetOf } from './support/packets.ts';
import { withPhone } from './support/phone.ts';
import { makePhoto } from './support/photo.ts';
import { newProfile, removeProfile } from './support/profile.ts';
import { shot } from './support/shots.ts';
import { truthOf } from './support/truths.ts';

let app: App;
const profile = newProfile();
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
  removeProfile(profile);
});

const place = { job: '', piece: '' };

async function note(page: Page, where: string, change: string, why: string): Promise<void> {
  await page.getByRole('button', { name: 'Note something from the fitting' }).click();
  await page.getByRole('combobox', { name: 'Where' }).selectOption({ label: where });
  await page.getByLabel(/^Changed by/).fill(change);
  await page.getByRole('textbox', { name: 'What was it, and why?' }).fill(why);
}

test('at the bench a cleared piece is noted on, a change that is no length is refused, and it stays cleared', async () => {
  await withPhone(app.url, { profile, screen: 'desk' }, async ({ page, open }) => {
    await open('#/bench');
    const pictures = ['photo-port', 'photo-bow', 'photo-starboard'].map(async (slot, seed) => ({
      slot,
      jpeg: await makePhoto(page, { seed, width: 1200, height: 900 }),
    }));
    const packet = packetOf(truthOf('open-bow'), await Promise.all(pictures));
    Object.assign(place, { job: packet.job, piece: packet.piece.id });
    await page.locator('input[type=file][multiple]').setInputFiles(packet.file);
    await page.getByText(/new entries/).waitFor();
    await open(`#/bench/${packet.job}`);
    await page.getByRole('heading', { name: 'Decide' }).waitFor();
    expect(await page.getByRole('heading', { name: 'After fitting' }).count()).toBe(0);
    expect(await page.getByTestId('file-fittings').count()).toBe(0);
    await page.getByTestId('clear').click();
    await page.getByTestId('clear-sure').click();
    await page.getByText(/^Clear to cut, said/).waitFor();
    await note(page, 'P3', 'a bit', 'Pulled past the snap.');
    await page.getByRole('button', { name: 'Keep this note' }).click();
    await page.getByRole('alert').waitFor();
    await page.getByLabel(/^Changed by/).fill('-3/8');
    expect(await page.getByRole('alert').count()).toBe(0);
    await shot(page, 'fitting-bench-form');
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Keep this note' }).click();
    await page.getByText('-3/8: Pulled past the snap.').first().waitFor();
    await page.getByText(/^Clear to cut, said/).waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId('file-fittings').click()]);
    expect(download.suggestedFilename()).toMatch(/fittings\.csv$/);
    expect(readFileSync(await download.path(), 'utf8')).toContain(",point,P3,-9.525,'-3/8,Pulled past the snap.,");
    await shot(page, 'fitting-bench-files');
    await page.getByRole('heading', { name: 'After fitting' }).scrollIntoViewIfNeeded();
    await shot(page, 'fitting-bench');
  });
});

test('at the dock too; the clearance stands, and the walk of a sister boat tells both at their steps', async () => {
  await withPhone(app.url, { profile }, async ({ page, open }) => {
    await open(`#/job/${place.job}`);
    await page.getByRole('button', { name: 'Paper, template, sister boat' }).tap();
    await page.getByText('-3/8: Pulled past the snap.').waitFor();
    await note(page, 'S2–S1', '', 'The cleat stood under the hem.');
    await shot(page, 'fitting-dock-form', { fullPage: true });
    await page.getByRole('button', { name: 'Keep this note' }).tap();
    await page.getByText('The cleat stood under the hem.').waitFor();
    await shot(page, 'fitting-dock', { fullPage: true });
    await expectAccessible(page);

    await page.getByRole('button', { name: 'Begin a job for a sister boat' }).tap();
    await page.getByRole('textbox', { name: 'Customer', exact: true }).fill('Q. Other');
    await page.getByRole('textbox', { name: 'Boat', exact: true }).fill('Pearl');
    await page.getByRole('button', { name: 'Begin', exact: true }).tap();
    await page.getByRole('heading', { name: /Q. Other/ }).waitFor();
    const walk = await page.getByRole('link', { name: 'All steps' }).first().getAttribute('href');
    for (const [step, said] of [
      ['F-P3', /After fitting on .*Perla.* \(P3\): -3\/8: Pulled past the snap\./],
      ['S2-S1', /After fitting on .* \(S2–S1\): The cleat stood under the hem\./],
    ] as const) {
      await open(`${walk}/${step}`);
      const understood = page.getByRole('button', { name: 'Understood' });
      await understood.or(page.getByText(said)).first().waitFor();
      if (await understood.isVisible()) await understood.tap();
      await page.getByText(said).waitFor();
      await shot(page, `fitting-sister-${step}`);
    }
    await open(`${walk}/F-T`);
    await page.getByTestId('next').waitFor();
    expect(await page.getByText('After fitting').count()).toBe(0);

    await open(`#/bench/${place.job}`);
    await page.getByText(/^Clear to cut, said/).waitFor();
    await page.getByText('The cleat stood under the hem.').first().waitFor();
  });
});
