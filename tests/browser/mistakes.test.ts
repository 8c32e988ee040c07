import { afterAll, beforeAll, expect, test } from 'vitest';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { withPhone } from './support/phone.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

test('undo on the first step does not take the piece away, and a reading that could not be taken says so on return', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Tension shade');
    expect(await page.getByRole('button', { name: 'Undo' }).count()).toBe(0);
    await installer.understandCautions();
    await installer.tap('Foredeck');
    await installer.tap('The real poles');
    await installer.understandCautions();
    await installer.tap('No value');
    await installer.tap('Could not measure it');
    await installer.tap('Cannot be reached');
    await page.waitForFunction(() => location.hash.endsWith('/A-C'));
    await installer.tap('Back');
    await page.getByText('Recorded: Could not measure it (Cannot be reached).').waitFor();
  });
});

test('a fastener that goes backwards is said beside the pad, and is gone whole when it is removed', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const installer = new Installer(phone);
    const { page } = phone;
    await installer.begin('M. Sample', 'Perla', 'Sam');
    await installer.addPiece('Open-bow cover');
    await page.getByRole('link', { name: /All steps/ }).tap();
    await page.getByRole('link', { name: /Edge fasteners/ }).tap();
    await installer.understandCautions();
    await installer.fastenerFacts();
    for (const place of ['2', '8 1/2', '4']) {
      await installer.type(place);
      await installer.next();
      await page.locator('.fasteners > li').first().getByText(place).waitFor();
    }
    await page.getByText(/Fastener 3 \(4"\) lies .* before Fastener 2/).waitFor();
    await installer.tap('Remove fastener 3');
    await page.getByText(/lies .* before/).waitFor({ state: 'detached' });
    expect(await page.locator('.fasteners > li').count()).toBe(2);
  });
});
