import { afterAll, beforeAll, expect, test } from 'vitest';
import { type App, startApp } from './support/app.ts';
import { type Killable, openKillable } from './support/killable.ts';
import { newProfile, removeProfile } from './support/profile.ts';
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

const press = (phone: Killable, name: string): Promise<void> =>
  phone.page.getByRole('button', { name, exact: true }).click();

async function typeReading(phone: Killable, text: string): Promise<void> {
  const [whole = '', fraction] = text.split(' ');
  for (const digit of whole) await press(phone, digit);
  if (fraction !== undefined) await press(phone, fraction);
}

test('a browser killed by its process id in the middle of typing has every confirmed entry after restart', async () => {
  const { readings } = truthOf('tension-shade');
  const confirmed = ['A-B', 'A-C', 'A-D', 'B-D'];
  let phone = await openKillable(app.url, profile);
  let { page } = phone;
  await page.goto(app.url);
  await page.getByRole('link', { name: 'New job' }).click();
  await page.getByRole('textbox', { name: /^Customer/ }).fill('K. Sample');
  await press(phone, 'Begin');
  await page.getByRole('button', { name: /^Tension shade/ }).click();
  await press(phone, 'Understood');
  await press(phone, 'Foredeck');
  await press(phone, 'The real poles');
  await press(phone, 'Understood');
  for (const step of confirmed) {
    await page.waitForFunction((key) => location.hash.endsWith(`/${key}`), step);
    await typeReading(phone, readings[step] ?? '');
    await press(phone, 'Next');
  }
  await page.waitForFunction(() => location.hash.endsWith('/B-C'));
  await typeReading(phone, '112');
  await phone.kill();
  phone.faults.check();

  phone = await openKillable(app.url, profile);
  ({ page } = phone);
  await page.goto(app.url);
  await page.getByRole('link', { name: 'Go on where you left' }).click();
  await page.waitForFunction(() => location.hash.endsWith('/B-C'));
  expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe('B–C');
  await page.getByRole('link', { name: /All steps/ }).click();
  for (const step of confirmed) {
    const row = page.getByRole('listitem').filter({ hasText: step.replace('-', '–') });
    expect(await row.innerText()).toContain(readings[step]);
  }
  const unconfirmed = page.getByRole('listitem').filter({ hasText: 'B–C' });
  expect(await unconfirmed.innerText()).not.toContain('112');
  await phone.kill();
  phone.faults.check();
});

test('a page ended while the camera is in front comes back to the same step with everything on disk', async () => {
  let phone = await openKillable(app.url, profile);
  let { page } = phone;
  await page.goto(app.url);
  await page.getByRole('link', { name: 'Go on where you left' }).click();
  await page.getByRole('link', { name: /All steps/ }).click();
  await page.getByRole('link', { name: /Both mounts/ }).click();
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByText('Take a photo').click()]);
  expect(chooser.isMultiple()).toBe(false);
  await phone.kill();

  phone = await openKillable(app.url, profile);
  ({ page } = phone);
  await page.goto(app.url);
  await page.getByRole('link', { name: 'Go on where you left' }).click();
  await page.getByRole('heading', { name: 'Both mounts' }).waitFor();
  await phone.kill();
  phone.faults.check();
});
