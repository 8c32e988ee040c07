import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type App, startApp } from './support/app.ts';
import { Installer } from './support/dock.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';
import { written } from './support/written.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

type Tape = 'imperial' | 'metric';

/** A bow cover begun, and one of its readings on the screen. */
async function atReading(phone: Phone, slot: string, tape: Tape = 'imperial'): Promise<Installer> {
  const { page } = phone;
  await phone.open('#/keep');
  await page.getByLabel('The tape reads').selectOption(tape);
  await written(page);
  const installer = new Installer(phone);
  await installer.begin('M. Sample', 'Perla', 'Sam');
  await installer.addPiece('Open-bow cover');
  await toReading(page, slot);
  return installer;
}

async function toStep(page: Page, slot: string): Promise<void> {
  await page.getByRole('link', { name: /All steps/ }).tap();
  await page.locator(`a[href$="/${slot}"]`).first().tap();
  await page.waitForURL((url) => url.hash.endsWith(`/${slot}`));
}

async function toReading(page: Page, slot: string): Promise<void> {
  await toStep(page, slot);
  await page.getByTestId('next').waitFor();
}

const entry = (page: Page) => page.getByRole('status', { name: 'Reading' });

/** All keys of a text within one task of the page, as a meter sends them: faster than any screen is drawn. */
const burst = (page: Page, text: string): Promise<void> =>
  page.evaluate((keys) => {
    for (const key of keys)
      document.body.dispatchEvent(
        new KeyboardEvent('keydown', { key: key === '\n' ? 'Enter' : key, bubbles: true, cancelable: true }),
      );
  }, text);

test('a meter that types is understood however fast: unit and all, and never two readings in one', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const installer = await atReading(phone, 'W1-P1');
    await burst(page, '47.625\n');
    await installer.movedFrom('W1-P1');
    await page.keyboard.type('1.234 m\n');
    await installer.movedFrom('W1-P2');
    await burst(page, '48.5\n49.25\n');
    await installer.movedFrom('W1-P3');
    // The second came while the first was being written: it waits where it belongs, and nobody has recorded it.
    await entry(page).getByText('49.25').waitFor();
    await installer.tap('Back');
    for (const [step, said] of [
      ['W1-P3', '48.5'],
      ['W1-P2', '1.234 m'],
      ['W1-P1', '47.625'],
    ] as const) {
      await page.waitForFunction((at) => location.hash.endsWith(at), step);
      expect(await page.locator('.takes > li').count(), step).toBe(1);
      expect(await page.locator('.takes > li').innerText()).toContain(said);
      await installer.tap('Back');
    }
  });
});

test('the unit of a metric tape stays until another is pressed, and is written into every reading', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const installer = await atReading(phone, 'W1-P1', 'metric');
    await installer.tap('cm');
    for (const key of ['4', '7', '. decimal point', '6']) await installer.tap(key);
    await installer.next();
    await installer.movedFrom('W1-P1');
    await page.reload();
    for (const key of ['9', '1']) await installer.tap(key);
    expect(await entry(page).innerText()).toBe('91 cm');
    await installer.next();
    await installer.movedFrom('W1-P2');
    await burst(page, '1.234 m\n');
    await installer.movedFrom('W1-P3');
    expect(await page.getByRole('button', { name: 'cm', pressed: true }).count()).toBe(1);
    for (const text of ['1.234 m', '91 cm', '47.6 cm']) {
      await installer.tap('Back');
      await page.locator('.takes').getByText(text, { exact: true }).waitFor();
    }
  });
});

test('what was typed and not recorded is there again on return, until it is recorded or deleted', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const installer = await atReading(phone, 'W1-P1');
    const notice = page.getByText('Typed before, not recorded yet');
    await installer.type('47');
    expect(await notice.count()).toBe(0);
    await installer.tap('Skip');
    await installer.movedFrom('W1-P1');
    expect(await entry(page).innerText()).toBe('Type what the tape says.');
    await installer.tap('Back');
    await notice.waitFor();
    expect(await entry(page).innerText()).toBe('47 in');
    await shot(page, 'half-typed');
    expect(await page.locator('.takes').count()).toBe(0);
    await installer.tap('5/8');
    await notice.waitFor({ state: 'detached' });
    await installer.next();
    await installer.movedFrom('W1-P1');
    await installer.tap('Back');
    await page.locator('.takes').getByText('47 5/8', { exact: true }).waitFor();
    expect(await entry(page).innerText()).toBe('Type what the tape says.');
  });
});

test('one half of the reading before can be tapped again, and nothing is offered for a second look', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const again = page.getByRole('button', { name: /again$/ });
    const installer = await atReading(phone, 'W1-P1');
    expect(await again.count()).toBe(0);
    await installer.type('47 5/8');
    await installer.next();
    await installer.movedFrom('W1-P1');
    await installer.tap('47 again');
    expect(await entry(page).innerText()).toBe('47 in');
    expect(await again.count()).toBe(0);
    for (let taps = 0; taps < 2; taps += 1) await installer.tap('⌫ delete one step');
    await installer.type('83');
    await installer.tap('5/8 again');
    expect(await entry(page).innerText()).toBe('83 5/8 in');
    await installer.next();
    await installer.movedFrom('W1-P2');
    await page.getByRole('button', { name: '83 again' }).waitFor();
    await installer.tap('Back');
    await page.locator('.takes').getByText('83 5/8', { exact: true }).waitFor();
    expect(await again.count()).toBe(0);
    // Undone, so that it stands open again: still nothing of itself.
    await installer.tap('Undo');
    await page.locator('.takes').waitFor({ state: 'detached' });
    expect(await again.count()).toBe(0);
  });
});

/** Keys whose words do not fit in them, that are too small, that lie on another, or that reach over the screen's side. */
const faultyKeys = (page: Page): Promise<string[]> =>
  page.locator('.pad .key, .entry .key').evaluateAll((keys) => {
    const boxes = keys.map((key) => key.getBoundingClientRect());
    return keys.flatMap((key, i) => {
      const box = boxes[i] as DOMRect;
      const words = document.createRange();
      words.selectNodeContents(key);
      const cut = [...words.getClientRects()].some(
        (part) =>
          part.left < box.left - 0.5 ||
          part.right > box.right + 0.5 ||
          part.top < box.top - 0.5 ||
          part.bottom > box.bottom + 0.5,
      );
      const faults = [
        cut && 'cut',
        (key.scrollWidth > key.clientWidth || key.scrollHeight > key.clientHeight) && 'spills',
        (box.left < 0 || box.right > innerWidth) && 'over the side',
        box.height < (key.closest('.pad') ? 60 : 44) - 0.5 && 'low',
        boxes.some(
          (other, j) =>
            j > i &&
            other.left < box.right - 0.5 &&
            other.right > box.left + 0.5 &&
            other.top < box.bottom - 0.5 &&
            other.bottom > box.top + 0.5,
        ) && 'on another',
      ].filter(Boolean);
      return faults.length > 0 ? [`${key.getAttribute('aria-label') ?? key.textContent}: ${faults.join(', ')}`] : [];
    });
  });

const SIZES = [
  [390, 844],
  [320, 640],
] as const;

test('no key is cut, at 390 and 320 px, with text as it is and twice as large, for either hand and either tape', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    let looked = 0;
    const look = async (name: string): Promise<void> => {
      for (const [width, height] of SIZES)
        for (const size of ['', '200%']) {
          await page.setViewportSize({ width, height });
          await page.evaluate((to) => {
            document.documentElement.style.fontSize = to;
          }, size);
          expect(await faultyKeys(page), `${name}, ${width} px ${size}`).toEqual([]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
          await shot(page, `pad-${name}-${width}${size && '-large'}`);
          looked += await page.locator('.pad .key').count();
        }
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '';
      });
      await page.setViewportSize({ width: 390, height: 844 });
    };
    for (const hand of ['Right hand', 'Left hand'])
      for (const tape of ['imperial', 'metric'] as const) {
        await phone.open('#/keep');
        await page.getByRole('button', { name: hand }).tap();
        await page.getByLabel('The tape reads').selectOption(tape);
        if (tape === 'imperial')
          await page.getByLabel('to the nearest').selectOption(hand === 'Left hand' ? '8' : '32');
        await written(page);
        const installer = await atReading(phone, 'W1-P1', tape);
        await installer.type('47');
        await installer.next();
        await installer.movedFrom('W1-P1');
        await look(`${tape}-${hand}-straight`);
        // A height may be below, and is asked where the cover goes up the glass.
        await toStep(page, 'glass');
        await installer.tap('Up the glass');
        await installer.movedFrom('glass');
        await toReading(page, 'h-G');
        await installer.tap('± minus or plus');
        await installer.type('4');
        await look(`${tape}-${hand}-height`);
        // No boat has this: the check speaks, and Next has its longest words beside the sign.
        await installer.type(tape === 'imperial' ? '000' : '0000');
        await installer.next();
        await page.getByRole('button', { name: 'Go on anyway' }).waitFor();
        await look(`${tape}-${hand}-doubted`);
      }
    expect(looked).toBeGreaterThan(48 * 15);
  });
});

test('a left hand has Next and the fractions under its thumb, a right hand under its own', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const middleOf = async (name: string): Promise<number> => {
      const box = await page.getByRole('button', { name, exact: true }).boundingBox();
      return (box?.x ?? 0) + (box?.width ?? 0) / 2;
    };
    await atReading(phone, 'W1-P1');
    const half = 390 / 2;
    for (const name of ['Next', '5/8', '1/16', '15/16']) expect(await middleOf(name)).toBeGreaterThan(half);
    expect(await middleOf('7')).toBeLessThan(half);
    await phone.open('#/keep');
    await page.getByRole('button', { name: 'Left hand' }).tap();
    await page.goBack();
    for (const name of ['Next', '5/8', '1/16', '15/16']) expect(await middleOf(name)).toBeLessThan(half);
    expect(await middleOf('7')).toBeGreaterThan(half);
    await written(page);
    await page.reload();
    expect(await middleOf('Next')).toBeLessThan(half);
  });
});

interface Noted {
  said: string[];
  felt: number[][];
}

/** A phone that can shake, and has voices: one of its own, or only one over the network. */
async function noteAnswers(phone: Phone, ownVoice: boolean): Promise<() => Promise<Noted>> {
  await phone.context.addInitScript((own) => {
    const noted: Noted = { said: [], felt: [] };
    Object.assign(globalThis, { noted });
    navigator.vibrate = (pattern) => noted.felt.push([pattern].flat().map(Number)) > 0;
    const voices = [
      { lang: 'en-US', localService: false, default: true },
      ...(own ? [{ lang: 'en-GB', localService: true, default: false }] : []),
    ];
    const speech = Object.assign(new EventTarget(), {
      speaking: false,
      pending: false,
      getVoices: () => voices,
      cancel: () => undefined,
      speak: ({ text, voice, volume }: { text: string; voice: { lang: string }; volume: number }) =>
        noted.said.push(`${voice.lang} ${volume} ${text}`),
    });
    Object.defineProperty(globalThis, 'speechSynthesis', { value: speech });
    Object.defineProperty(globalThis, 'SpeechSynthesisUtterance', {
      value: class {
        text: string;
        constructor(text: string) {
          this.text = text;
        }
      },
    });
  }, ownVoice);
  return () => phone.page.evaluate(() => (globalThis as unknown as { noted: Noted }).noted);
}

test('a reading that is recorded is felt, and read back by a voice of the phone once that is switched on', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const noted = await noteAnswers(phone, true);
    const said = async () => (await noted()).said;
    const installer = await atReading(phone, 'W1-P1');
    await installer.type('9 3/4');
    await installer.next();
    await installer.movedFrom('W1-P1');
    await expect.poll(noted).toMatchObject({ said: [], felt: [[35]] });

    await phone.open('#/keep');
    await page.getByRole('switch', { name: /^Read every value back/ }).tap();
    await expect.poll(said).toEqual(['en-GB 1 forty-seven and five eighths']);
    await shot(page, 'keep-pad', { fullPage: true });
    await written(page);
    await page.goBack();
    await page.reload();
    await installer.type('35 15/16');
    await installer.next();
    await installer.movedFrom('W1-P2');
    // Silently within the tap, so that a phone which asks for that lets it speak afterwards.
    await expect.poll(said).toEqual(['en-GB 0  ', 'en-GB 1 thirty-five and fifteen sixteenths']);

    await phone.open('#/keep');
    await page.getByRole('switch', { name: /^Shake/ }).tap();
    await written(page);
    await page.goBack();
    await page.reload();
    await installer.type('65 3/4');
    await installer.next();
    await installer.movedFrom('W1-P3');
    expect((await noted()).felt).toEqual([]);
  });
});

test('a reading the check doubts is felt twice, and so is one that is no length', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const noted = await noteAnswers(phone, false);
    const installer = await atReading(phone, 'W1-P1');
    await page.keyboard.type('12\' 15"\n');
    await page.getByText('With feet, inches go up to 11').waitFor();
    expect((await noted()).felt).toEqual([[60, 90, 60]]);
    for (let i = 0; i < 7; i += 1) await page.keyboard.press('Backspace');
    await installer.type('0');
    await installer.next();
    await page.locator('.strip .state').first().waitFor();
    expect((await noted()).felt).toEqual([
      [60, 90, 60],
      [60, 90, 60],
    ]);

    await phone.open('#/keep');
    await page.getByText('no voice of its own').waitFor();
    expect(await page.getByRole('switch', { name: /^Read every value back/ }).isDisabled()).toBe(true);
  });
});

test('fasteners are answered like any reading, and one left half typed waits; a second look is begun anew', async () => {
  await withPhone(app.url, {}, async (phone) => {
    const { page } = phone;
    const noted = await noteAnswers(phone, false);
    const installer = await atReading(phone, 'W1-P1');
    await page.getByRole('link', { name: /All steps/ }).tap();
    await page.getByRole('link', { name: /Edge fasteners/ }).tap();
    await installer.understandCautions();
    await installer.fastenerFacts();
    const latest = page.locator('.fasteners > li').first();
    for (const place of ['2', '8 1/2']) {
      await installer.type(place);
      await installer.next();
      await latest.getByText(place).waitFor();
    }
    await expect.poll(async () => (await noted()).felt).toEqual([[35], [35]]);
    await installer.type('15');
    const step = installer.stepKey() ?? '';
    await installer.tap('Skip');
    await installer.movedFrom(step);
    await installer.tap('Back');
    await page.getByText('Typed before, not recorded yet').waitFor();
    expect(await entry(page).innerText()).toBe('15 in');
    for (const [width, height] of SIZES) {
      await page.setViewportSize({ width, height });
      expect(await faultyKeys(page)).toEqual([]);
      await shot(page, `pad-fasteners-${width}`);
    }
    await latest.getByRole('button', { name: 'Read it again' }).tap();
    expect(await entry(page).innerText()).toBe('Type what the tape says.');
    expect(await page.locator('.fasteners > li').count()).toBe(2);
  });
});
