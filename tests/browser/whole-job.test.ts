import { copyFileSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { exifOf } from './support/exif.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { newProfile, removeProfile } from './support/profile.ts';
import { shot } from './support/shots.ts';
import { truthOf } from './support/truths.ts';

let app: App;
const atDock = newProfile();
const atShop = newProfile();

beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
  removeProfile(atDock);
  removeProfile(atShop);
});

/** Where the whole story passes from one device to the other. */
const packets: Record<'sent' | 'asked' | 'answered', string> = { sent: '', asked: '', answered: '' };

async function openPacket(phone: Phone, path: string): Promise<string> {
  await phone.page.locator('input[type=file][multiple]').setInputFiles(path);
  const outcome = phone.page.locator('.banner').filter({ hasText: /new entr|nothing new|Refused/ });
  await outcome.first().waitFor();
  return await outcome.first().innerText();
}

test('the installer measures both pieces offline, makes a slip, sees it named, mends it and sends', async () => {
  await withPhone(app.url, { profile: atDock }, async (phone) => {
    const installer = new Installer(phone);
    await phone.open();
    await phone.readyOffline();
    await phone.offline(true);
    await installer.begin('R. Sample', 'Perla', 'Sam');
    await installer.addPiece('Tension shade');
    await installer.walk(truthOf('tension-shade'));
    await phone.page.getByRole('heading', { name: 'Before you leave' }).waitFor();
    await phone.page.getByText('Clear to leave').waitFor();
    await shot(phone.page, 'leave-clear');

    await phone.page.getByRole('link', { name: 'Back' }).tap();
    await installer.tap('Add a piece');
    await installer.addPiece('Open-bow cover');
    const truth = truthOf('open-bow');
    await installer.walk(truth, async (key) => {
      if (key !== 'P3-T') return false;
      // The tape says 34 15/16; the person types 94 15/16.
      await installer.type('94 15/16');
      await installer.next();
      const strip = phone.page.locator('.strip');
      await strip.getByText(/longer than/).waitFor();
      expect(await strip.innerText()).toMatch(/P3–T \(94 15\/16"\) is .* longer than .* allow/);
      expect(await strip.innerText()).toContain('Read P3–T again.');
      // The witness is not led: what would fit is nowhere on the screen.
      expect(await phone.page.locator('.page').innerText()).not.toContain('34 15/16');
      await shot(phone.page, 'step-slip-named');
      await expectAccessible(phone.page);
      await installer.tap('Strike out');
      await installer.tap('Misread');
      await phone.page.getByText('struck out: Misread').waitFor();
      await installer.type('34 15/16');
      await installer.next();
      return true;
    });
    await phone.page.getByText('Clear to leave').waitFor();
    await phone.page.getByRole('link', { name: 'Send to the shop' }).tap();
    const packet = await installer.savePacket();
    expect(packet.name).toMatch(/^20\d\d-\d\d-\d\d R. Sample - Perla - [0-9a-f]{4}\.json$/);
    await phone.page.getByText('Saved among your downloads').waitFor();
    await shot(phone.page, 'send');
    const written: { logbook: { kind: string }[]; photos: { data: string }[] } = JSON.parse(
      readFileSync(packet.path, 'utf8'),
    );
    expect(written.photos).toHaveLength(6);
    for (const photo of written.photos) expect(exifOf(Buffer.from(photo.data, 'base64'))?.place ?? false).toBe(false);
    packets.sent = keep(packet.path, 'sent');
  });
});

/** Downloads go with their browser; the story needs them afterwards. */
function keep(path: string, name: string): string {
  const kept = `${atShop}-${name}.json`;
  copyFileSync(path, kept);
  return kept;
}
