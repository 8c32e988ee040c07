import { copyFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type JobRequest, linkAddress, writeLink } from '../../src/core/packet/link/index.ts';
import { loadPieceWords, pieceWords } from '../../src/text/guides.ts';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { withPhone } from './support/phone.ts';
import { newProfile, removeProfile } from './support/profile.ts';
import { shot } from './support/shots.ts';
import { truthOf } from './support/truths.ts';

let app: App;
const atShop = newProfile();
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
  removeProfile(atShop);
});

const truth = truthOf('tension-shade');
/** What the owner reads of A–C the first time. */
const WRONG = '85 3/8';

const request: JobRequest = {
  job: '0190a1b2-0000-7000-8000-000000000011',
  device: '0190a1b2-0000-7000-8000-000000000012',
  at: '2026-05-04T09:00:00+02:00',
  by: 'Robin',
  system: 'imperial',
  fraction: 16,
  customer: 'R. Sample',
  boat: 'Perla',
  pieces: [{ kind: 'tension-shade', name: 'Tension shade', answers: {} }],
  shop: 'A canvas shop',
  contact: '555 0100',
  note: '',
  language: 'en',
  measurer: 'owner',
};

/** From now on every text that the page shows, however briefly, is kept: all but what is being typed. */
async function watchEverything(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const seen = new Set<string>();
    const look = (): void => {
      for (const part of document.querySelectorAll('main > *')) {
        const copy = part.cloneNode(true) as Element;
        for (const typed of copy.querySelectorAll('.entry, .pad')) typed.remove();
        seen.add(copy.textContent ?? '');
        for (const labelled of copy.querySelectorAll('[aria-label]'))
          seen.add(labelled.getAttribute('aria-label') ?? '');
      }
    };
    new MutationObserver(look).observe(document.body, { subtree: true, childList: true, characterData: true });
    look();
    Object.assign(window, { everythingSeen: seen });
  });
  return () => page.evaluate(() => [...(window as unknown as { everythingSeen: Set<string> }).everythingSeen]);
}

class Owner extends Installer {
  /** One step of the round: the look before it, then its answer. */
  async step(key: string, value: string | undefined): Promise<void> {
    const words = pieceWords('tension-shade');
    if (key === 'A-B') await this.page.getByTestId('marks-skip').tap();
    const choice = words?.questions[key]?.choices[truth.answers[key] ?? ''] ?? key;
    const asks = words?.questions[key] !== undefined;
    const enter = this.page.getByTestId('enter');
    await this.understandCautions(asks ? this.page.getByRole('button', { name: choice, exact: true }) : enter);
    if (asks) {
      await this.tap(choice);
      await this.movedFrom(key);
      return;
    }
    await enter.tap();
    if (value === undefined) {
      await this.photograph(key.length);
      await this.next();
    } else {
      await this.typeNext(value);
      const kind = this.page.locator('.strip').getByText('Please look at the tape again');
      const moved = this.movedFrom(key);
      if (await Promise.race([moved.then(() => false), kind.waitFor().then(() => true)])) {
        await shot(this.page, `second-kind-${key}`);
        await this.typeNext(value);
      }
    }
    await this.movedFrom(key);
  }

  async typeNext(value: string): Promise<void> {
    await this.page.getByTestId('next').waitFor();
    await this.type(value);
    await this.next();
  }
}

test('an owner reads everything a second time from the other end, once a third time, and is never shown what was read', async () => {
  await loadPieceWords(['tension-shade']);
  const sent = `${atShop}-sent.json`;
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const owner = new Owner(phone);
    await phone.open(linkAddress(app.url, writeLink({ t: 'request', request }) ?? ''));
    await page.getByRole('textbox', { name: /^Your name/ }).fill('Ona');
    await page.getByTestId('begin-request').tap();
    await page.getByRole('link', { name: 'Start', exact: true }).tap();
    for (let at = 1; at < 5; at += 1) await owner.tap('Next');
    await owner.tap('Start measuring');
    await page.waitForURL(/#\/job\/.+\/.+\/.+/);

    for (let key = owner.stepKey(); key !== null; key = owner.stepKey())
      await owner.step(key, key === 'A-C' ? WRONG : truth.readings[key]);

    await page.getByRole('heading', { name: 'Once more' }).waitFor();
    await page.getByText('Not because you did it wrong').waitFor();
    await page.getByText('9 measurements').waitFor();
    await expectAccessible(page);
    await shot(page, 'second-page');
    const seen = await watchEverything(page);
    await page.getByTestId('look-again').tap();

    const looked: string[] = [];
    for (let key = owner.stepKey(); key !== null; key = owner.stepKey()) {
      looked.push(key);
      await page.getByTestId('enter').waitFor();
      if (key === 'A-B') await page.getByText('Put the hook of the tape on B').waitFor();
      if (key === 'A-B' || key === 'h-A') await shot(page, `second-look-${key}`, { fullPage: true });
      await owner.understandCautions();
      await page.getByTestId('enter').tap();
      if (key === 'A-B' || key === 'h-A') {
        await page.getByTestId('next').waitFor();
        await expectAccessible(page);
        await shot(page, `second-type-${key}`);
      }
      if (key === 'A-B') await page.locator('.instruction').getByText('Put the hook of the tape on B').waitFor();
      await owner.typeNext(truth.readings[key] ?? '');
      await owner.movedFrom(key);
    }
    // C–D, at which the wrong one was noticed, was read twice in the round.
    expect(looked).toEqual(Object.keys(truth.readings).filter((key) => key !== 'C-D'));

    await page.getByRole('heading', { name: 'One last look' }).waitFor();
    await page.getByText('One measurement.').waitFor();
    await shot(page, 'second-third-page');
    await page.getByTestId('look-again').tap();
    await page.getByText('Put the hook of the tape on A').waitFor();
    expect(owner.stepKey()).toBe('A-C');
    await shot(page, 'second-third');
    await page.getByTestId('enter').tap();
    await owner.typeNext(truth.readings['A-C'] ?? '');
    await page.getByText('Clear to leave').waitFor();
    await shot(page, 'second-leave', { fullPage: true });

    const values = [WRONG, ...Object.values(truth.readings)];
    const shown = await seen();
    expect(shown.some((text) => text.includes('Put the hook of the tape on B'))).toBe(true);
    for (const value of values) expect(shown.filter((text) => text.includes(value))).toEqual([]);

    await page.getByRole('link', { name: 'Send to the shop' }).tap();
    copyFileSync((await owner.savePacket()).path, sent);
    await page.getByTestId('receipt').waitFor();
  });
  await withPhone(app.url, { profile: atShop, screen: 'desk' }, async ({ page, open }) => {
    await open('#/bench');
    await page.locator('input[type=file][multiple]').setInputFiles(sent);
    await page.getByText(/new entries/).waitFor();
    await page
      .getByRole('link', { name: /R. Sample/ })
      .first()
      .click();
    await page.getByRole('heading', { name: 'Decide' }).waitFor();
    await shot(page, 'second-bench', { fullPage: true });
    const row = page.getByRole('row').filter({ hasText: 'A–C' }).first();
    expect(await row.innerText()).toContain(truth.readings['A-C']);
  });
});
