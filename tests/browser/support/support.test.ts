import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { expectAccessible } from './accessible.ts';
import { type App, startApp } from './app.ts';
import { exifOf } from './exif.ts';
import { openKillable } from './killable.ts';
import { openPhone, withPhone } from './phone.ts';
import { makePhoto } from './photo.ts';
import { newProfile, removeProfile } from './profile.ts';

/** A page of its own, so that these tests of the tests do not hang on the app. */
const PAGE = `<!doctype html><html lang="en"><head><title>Trial</title><link rel="icon" href="./icon.png"><script src="./go.js"></script></head>
<body><main><h1>Trial</h1><img src="./icon.png"></main></body></html>`;

let dir: string;
let app: App;

beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'tapetrue-trial-'));
  writeFileSync(join(dir, 'index.html'), PAGE);
  writeFileSync(join(dir, 'go.js'), 'document.documentElement.dataset.ran = "yes";');
  writeFileSync(join(dir, 'icon.png'), Buffer.from('89504e470d0a1a0a', 'hex'));
  app = await startApp(dir);
});
afterAll(async () => {
  await app.stop();
  rmSync(dir, { recursive: true });
});

describe('a fault in the browser fails the test', () => {
  const faultOf = async (cause: () => void) => {
    const phone = await openPhone(app.url);
    await phone.open();
    await phone.page.evaluate(cause);
    await phone.page.waitForTimeout(200);
    return phone.close().then(
      () => 'none',
      (error: unknown) => String(error),
    );
  };

  test('a console error', async () => {
    expect(await faultOf(() => console.error('broken'))).toContain('console: broken');
  });

  test('an error nobody caught', async () => {
    expect(await faultOf(() => void setTimeout(() => Promise.reject(new Error('lost'))))).toContain('lost');
  });

  test('something the policy blocks', async () => {
    const fault = await faultOf(() => {
      document.body.append(Object.assign(document.createElement('script'), { textContent: 'window.no = 1' }));
    });
    expect(fault).toContain('policy: script-src-elem blocked inline');
  });

  test('a request to another origin', async () => {
    const fault = await faultOf(() => void Object.assign(window, { open: window.open('https://example.test/') }));
    expect(fault).toContain('request: GET https://example.test/');
  });

  test('none, none', async () => {
    expect(await faultOf(() => console.log('fine'))).toBe('none');
  });
});

describe('the parts', () => {
  test('axe runs under the policy and names what is wrong', async () => {
    await withPhone(app.url, {}, async (phone) => {
      await phone.open();
      await expect(expectAccessible(phone.page)).rejects.toThrow(/image-alt/);
      await phone.page.evaluate(() => document.querySelector('img')?.setAttribute('alt', 'A mark'));
      await expectAccessible(phone.page);
    });
  });

  test('a photo is a JPEG the browser reads, turned as its EXIF says', async () => {
    await withPhone(app.url, {}, async ({ page }) => {
      const photo = await makePhoto(page, { width: 400, height: 300, orientation: 6 });
      expect(exifOf(photo)).toEqual({ orientation: 6, place: true });
      const size = await page.evaluate(async (base64) => {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
        const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
        return [bitmap.width, bitmap.height];
      }, photo.toString('base64'));
      expect(size).toEqual([300, 400]);
    });
  });

  test('grain makes it as heavy as a phone photo', async () => {
    await withPhone(app.url, {}, async ({ page }) => {
      const [one, two] = [
        await makePhoto(page, { grain: true, seed: 1 }),
        await makePhoto(page, { grain: true, seed: 2 }),
      ];
      expect(one.length).toBeGreaterThan(700_000);
      expect(one.equals(two)).toBe(false);
    });
  });

  test('a killed browser leaves its profile to the next', async () => {
    const profile = newProfile();
    try {
      const first = await openKillable(app.url, profile);
      await first.page.goto(app.url);
      await first.page.evaluate(
        () =>
          new Promise<void>((resolve, reject) => {
            const asked = indexedDB.open('kept', 1);
            asked.onupgradeneeded = () => asked.result.createObjectStore('entries');
            asked.onsuccess = () => {
              const change = asked.result.transaction('entries', 'readwrite', { durability: 'strict' });
              change.objectStore('entries').put('12 ft 3 1/2 in', 1);
              change.oncomplete = () => resolve();
              change.onabort = () => reject(change.error);
            };
          }),
      );
      await first.kill();
      expect(first.page.isClosed()).toBe(true);
      const second = await openKillable(app.url, profile);
      await second.page.goto(app.url);
      const kept = await second.page.evaluate(
        () =>
          new Promise<unknown>((resolve) => {
            const asked = indexedDB.open('kept', 1);
            asked.onsuccess = () => {
              const read = asked.result.transaction('entries').objectStore('entries').get(1);
              read.onsuccess = () => resolve(read.result);
            };
          }),
      );
      await second.kill();
      expect(kept).toBe('12 ft 3 1/2 in');
    } finally {
      removeProfile(profile);
    }
  });
});
