import { copyFileSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { packetOf } from './support/packets.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { newProfile, removeProfile } from './support/profile.ts';
import { shot } from './support/shots.ts';
import { truthOf } from './support/truths.ts';

let app: App;
const profiles = { Robin: newProfile(), Kim: newProfile() };
type Shop = keyof typeof profiles;
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
  for (const profile of Object.values(profiles)) removeProfile(profile);
});

const packet = packetOf(truthOf('open-bow'));
const region = (page: Page, name: string) => page.getByRole('region', { name, exact: true });
const idsIn = (path: string): string[] =>
  (JSON.parse(readFileSync(path, 'utf8')) as { logbook: { id: string }[] }).logbook.map(({ id }) => id).sort();

/** The bench of one of the two, on a device that knows whose it is. */
const atBench = (who: Shop, body: (phone: Phone) => Promise<void>): Promise<void> =>
  withPhone(app.url, { profile: profiles[who] }, body);

async function begin(phone: Phone, who: Shop): Promise<void> {
  await new Installer(phone).begin('Q. Other', 'Pearl', who);
  await phone.page.waitForURL(/#\/job\//);
  await phone.open('#/bench');
  await phone.page.getByText('Drop a packet').waitFor();
  await phone.page.locator('input[type=file][multiple]').setInputFiles(packet.file);
  await phone.page.getByText(/R. Sample – Perla: \d+ new entries/).waitFor();
  await phone.open(`#/bench/${packet.job}`);
  await region(phone.page, 'Decide').waitFor();
}

/** The packet that goes back, kept beyond its browser. */
async function sendBack({ page }: Phone, name: string): Promise<string> {
  await page.getByTestId('send-back').first().tap();
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId('download-back').tap()]);
  const kept = `${profiles.Robin}-${name}.json`;
  copyFileSync(await download.path(), kept);
  return kept;
}

const sent = { Robin: '', Kim: '' };

test('two at the bench decide without knowing of each other', async () => {
  await atBench('Robin', async (phone) => {
    await begin(phone, 'Robin');
    const decide = region(phone.page, 'Decide');
    while ((await decide.getByRole('button', { name: 'Accept it as it is' }).count()) > 0) {
      const left = await decide.getByRole('listitem').count();
      await decide.getByRole('button', { name: 'Accept it as it is' }).first().tap();
      await decide.getByRole('button', { name: 'We do not need it for this piece' }).tap();
      await expect.poll(() => decide.getByRole('listitem').count()).toBeLessThan(left);
    }
    await phone.page.getByTestId('clear').tap();
    await phone.page.getByTestId('clear-sure').tap();
    await decide.getByText(/^Clear to cut, said Robin/).waitFor();
    sent.Robin = await sendBack(phone, 'robin');
  });
  await atBench('Kim', async (phone) => {
    const { page } = phone;
    await begin(phone, 'Kim');
    await region(page, 'Readings').getByRole('button', { name: 'F–P2', exact: true }).tap();
    await page.getByRole('button', { name: 'Strike out 45 9/16' }).tap();
    await page.getByRole('button', { name: 'The photo shows otherwise' }).tap();
    await page.getByTestId('ask-again').tap();
    await page.getByRole('textbox', { name: 'Note for all of it' }).fill('From the seat side, please.');
    await page.getByTestId('make-ask').tap();
    await region(page, 'Asked again').getByText('From the seat side, please.').waitFor();
    sent.Kim = await sendBack(phone, 'kim');
  });
});

test('packets exchanged both ways leave both with the same, nothing lost, and every decision says whose it was', async () => {
  const all = [...new Set([...idsIn(sent.Robin), ...idsIn(sent.Kim)])].sort();
  const decided: string[] = [];
  for (const [who, other] of [
    ['Robin', 'Kim'],
    ['Kim', 'Robin'],
  ] as const)
    await atBench(who, async (phone) => {
      const { page } = phone;
      await phone.open('#/bench');
      await page.locator('input[type=file][multiple]').setInputFiles(sent[other]);
      const news = idsIn(sent[other]).filter((id) => !idsIn(sent[who]).includes(id)).length;
      await page.getByText(new RegExp(`R. Sample – Perla: ${news} new entr`)).waitFor();
      await phone.open(`#/bench/${packet.job}`);
      const decide = region(page, 'Decide');
      await decide.getByText(/^No longer clear to cut\. Robin cleared it/).waitFor();
      await decide
        .getByText(/F–P2.* \(Kim, /)
        .first()
        .waitFor();
      await page
        .getByText(/^Accepted by Robin, .*: We do not need it for this piece$/)
        .first()
        .waitFor();
      await region(page, 'Asked again')
        .getByText(/^Kim, /)
        .waitFor();
      decided.push(await decide.innerText());
      await decide.scrollIntoViewIfNeeded();
      await shot(page, `two-benches-${who}`);
      expect(idsIn(await sendBack(phone, `both-${who}`))).toEqual(all);
    });
  expect(decided[0]).toBe(decided[1]);
});
