import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, DIST, startApp } from './support/app.ts';
import { type Phone, SCREENS, withPhone } from './support/phone.ts';
import { newProfile, removeProfile } from './support/profile.ts';
import { shot } from './support/shots.ts';

let app: App;

beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

/** The app is there when it has drawn something into its place, not merely when the page was answered. */
async function expectApp({ page }: Phone): Promise<void> {
  await page.locator('#app h1').first().waitFor();
  expect(await page.locator('#app').innerText()).not.toBe('');
}

describe('offline after one visit', () => {
  test('with no network and no server, on a deep link too', async () => {
    await withPhone(app.url, {}, async (phone) => {
      await phone.open();
      await expectApp(phone);
      await phone.readyOffline();
      await app.stop();
      await phone.offline(true);
      try {
        await phone.page.reload();
        await expectApp(phone);
        const before = await phone.page.locator('#app').innerText();
        await phone.page.goto('about:blank');
        await phone.open('#/bench');
        await expectApp(phone);
        expect(await phone.page.locator('#app').innerText()).not.toBe(before);
        expect(await phone.page.evaluate(() => fetch('./packet.schema.json').then((answer) => answer.ok))).toBe(true);
      } finally {
        await app.start();
      }
    });
  });

  test('on the first visit itself, to a screen not seen yet', async () => {
    await withPhone(app.url, {}, async (phone) => {
      await phone.open();
      await expectApp(phone);
      await phone.readyOffline();
      await app.stop();
      try {
        await phone.page.evaluate(() => {
          location.hash = '#/bench';
        });
        await expectApp(phone);
        // Long enough for what comes in parts; a part that cannot be had is a fault of the page.
        await phone.page.waitForTimeout(500);
      } finally {
        await app.start();
      }
    });
  });

  test('after the browser was closed and started again', async () => {
    const profile = newProfile();
    try {
      await withPhone(app.url, { profile }, async (phone) => {
        await phone.open();
        await phone.readyOffline();
      });
      await app.stop();
      await withPhone(app.url, { profile }, async (phone) => {
        await phone.open();
        await expectApp(phone);
      });
    } finally {
      await app.start();
      removeProfile(profile);
    }
  });
});

test('the folder works under any path, offline too', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'tapetrue-below-'));
  cpSync(DIST, join(folder, 'shop/tape'), { recursive: true });
  const below = await startApp(folder);
  try {
    await withPhone(below.url, {}, async (phone) => {
      await phone.open('shop/tape/');
      await expectApp(phone);
      await phone.readyOffline();
      await below.stop();
      await phone.open('shop/tape/#/bench');
      await phone.page.reload();
      await expectApp(phone);
    });
  } finally {
    await below.stop();
    rmSync(folder, { recursive: true });
  }
});

test('a browser would offer to install it', async () => {
  await withPhone(app.url, {}, async ({ context, page, open }) => {
    await open();
    const session = await context.newCDPSession(page);
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
    expect(installabilityErrors).toEqual([]);
  });
});

describe('the first screen', () => {
  test.each(['light', 'dark'] as const)('has nothing that keeps people out, %s', async (colorScheme) => {
    await withPhone(app.url, { colorScheme }, async (phone) => {
      await phone.open();
      await expectApp(phone);
      await expectAccessible(phone.page);
    });
  });

  test.each(Object.keys(SCREENS) as (keyof typeof SCREENS)[])('fits a %s', async (screen) => {
    await withPhone(app.url, { screen }, async (phone) => {
      await phone.open();
      await expectApp(phone);
      const spill = await phone.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(spill).toBeLessThanOrEqual(0);
      await shot(phone.page, `first-${screen}`);
    });
  });
});
