import type { Locator, Page } from 'playwright-core';
import type { PieceKind } from '../../../src/core/job/index.ts';
import { loadPieceWords, pieceWords } from '../../../src/text/guides.ts';
import { expectAccessible } from './accessible.ts';
import type { Phone } from './phone.ts';
import { makePhoto } from './photo.ts';
import { shot } from './shots.ts';

/** What the tape says at each step of a piece, and what is answered. */
export interface PieceTruth {
  kind: PieceKind;
  readings: Readonly<Record<string, string>>;
  answers: Readonly<Record<string, string>>;
  fasteners: readonly string[];
}

/** An installer at the dock: does everything by touch on the length pad and the buttons. */
export class Installer {
  readonly page: Page;
  private readonly phone: Phone;

  constructor(phone: Phone) {
    this.phone = phone;
    this.page = phone.page;
  }

  tap(name: string | RegExp): Promise<void> {
    return this.page.getByRole('button', { name, exact: true }).tap();
  }

  async begin(customer: string, boat: string, name: string): Promise<void> {
    await this.phone.open();
    await this.page.getByRole('link', { name: 'New job' }).tap();
    await this.page.getByRole('textbox', { name: /^Customer/ }).fill(customer);
    await this.page.getByRole('textbox', { name: /^Boat/ }).fill(boat);
    await this.page.getByRole('textbox', { name: /^Your name/ }).fill(name);
    await this.tap('Begin');
  }

  async addPiece(title: string): Promise<void> {
    await this.page.getByRole('button', { name: new RegExp(`^${title}`) }).tap();
    await this.page.waitForURL(/#\/job\/.+\/.+\/.+/);
  }

  /** The key of the step on the screen; null when the walk is over. */
  stepKey(): string | null {
    const [, at, , , step] = new URL(this.page.url()).hash.split('/');
    return at === 'job' && step !== undefined ? decodeURIComponent(step) : null;
  }

  /** Waits until the screen has moved on from a step. */
  async movedFrom(key: string): Promise<void> {
    await this.page.waitForFunction((before) => decodeURIComponent(location.hash.split('/')[4] ?? '') !== before, key);
  }

  /** Taps a reading into the pad, key by key, as `75 5/8`. */
  async type(text: string): Promise<void> {
    const [whole = '', fraction] = text.split(' ');
    for (const digit of whole) await this.tap(digit);
    if (fraction !== undefined) await this.tap(fraction);
  }

  async next(): Promise<void> {
    await this.page.getByTestId('next').tap();
  }

  async reading(text: string): Promise<void> {
    const key = this.stepKey();
    const second = this.page.locator('.strip').getByText('Read it a second time');
    await this.page.getByTestId('next').waitFor();
    const askedBefore = await second.isVisible();
    await this.type(text);
    await this.next();
    if (key === null) return;
    // A reading that nothing else checks is asked for twice; the screen stays until the second look agrees.
    const moved = this.movedFrom(key);
    if (!askedBefore && (await Promise.race([moved.then(() => false), second.waitFor().then(() => true)]))) {
      await this.type(text);
      await this.next();
    }
    await moved;
  }

  /** then: what an owner's step shows once its cautions are read; they stand alone before it, and come a moment after the address. */
  async understandCautions(then?: Locator): Promise<void> {
    const button = this.page.getByRole('button', { name: 'Understood' });
    if (then) await button.or(then).first().waitFor();
    if (await button.isVisible()) await button.tap();
  }

  /** Takes the picture that a step asks for and taps one mark for each of its points. */
  async photograph(seed: number): Promise<void> {
    const jpeg = await makePhoto(this.page, { seed, width: 1200, height: 900, orientation: 6 });
    await this.page
      .locator('input[type=file]')
      .setInputFiles({ name: 'dock.jpg', mimeType: 'image/jpeg', buffer: jpeg });
    const picture = this.page.locator('button.photo');
    await picture.locator('img').waitFor();
    for (let marks = 0; (await picture.count()) > 0 && marks < 5; marks += 1) {
      const asked = await this.page.locator('.mark-ask').innerText();
      const box = await picture.boundingBox();
      if (!box) throw new Error('the picture is not on the screen');
      await picture.tap({ position: { x: box.width * (0.25 + 0.2 * marks), y: box.height * 0.4 } });
      await this.page.waitForFunction((before) => document.querySelector('.mark-ask')?.textContent !== before, asked);
    }
  }

  /** One row of snaps that is there, all along; the line was answered for the whole piece. */
  async fastenerFacts(): Promise<void> {
    const line = this.page.getByRole('heading', { name: 'Which line is it?' });
    const closes = this.page.getByRole('heading', { name: 'What closes it?' });
    if (await Promise.race([line.waitFor().then(() => true), closes.waitFor().then(() => false)]))
      await this.tap('Line of the fasteners');
    await this.tap('Snaps');
    await this.tap('On the boat already');
    await this.tap('Solid laminate');
  }

  async fasteners(places: readonly string[]): Promise<void> {
    await this.fastenerFacts();
    for (const place of places) {
      await this.type(place);
      await this.next();
      await this.page.locator('.fasteners > li').first().getByText(place, { exact: false }).waitFor();
    }
    await this.page.getByTestId('run-done').tap();
  }

  /** Walks a piece from where the screen stands until nothing is open, looking at each kind of step once. */
  async walk(truth: PieceTruth, onStep: (key: string) => Promise<boolean> = async () => false): Promise<void> {
    await loadPieceWords([truth.kind]);
    const words = pieceWords(truth.kind);
    const looked = new Set<string>();
    for (let key = this.stepKey(); key !== null; key = this.stepKey()) {
      await this.understandCautions();
      const { [key]: value } = truth.readings;
      const kind =
        value !== undefined ? 'reading' : words?.questions[key] ? 'question' : words?.runs[key] ? 'run' : 'shot';
      if (!looked.has(kind)) {
        looked.add(kind);
        await shot(this.page, `step-${truth.kind}-${kind}`);
        await expectAccessible(this.page);
      }
      if (await onStep(key)) {
        await this.movedFrom(key);
        continue;
      }
      if (value !== undefined) await this.reading(value);
      else if (kind === 'question') await this.tap(words?.questions[key]?.choices[truth.answers[key] ?? ''] ?? key);
      else if (kind === 'run') await this.fasteners(truth.fasteners);
      else {
        await this.photograph(looked.size + key.length);
        await this.next();
      }
      await this.movedFrom(key);
    }
  }

  /** From the list before leaving: reads again whatever nothing else would check. */
  async secondLooks(truth: PieceTruth): Promise<void> {
    const rows = this.page.getByRole('listitem').filter({ hasText: 'second time' });
    await this.page.getByRole('heading', { name: 'Before you leave' }).waitFor();
    while ((await rows.count()) > 0) {
      await rows.first().getByRole('link', { name: 'Go there' }).tap();
      await this.page.waitForURL(/#\/job\/.+\/.+\/.+/);
      await this.reading(truth.readings[this.stepKey() ?? ''] ?? '');
      await this.page.getByRole('heading', { name: 'Before you leave' }).waitFor();
    }
  }

  /** The packet, as it lands among the downloads. */
  async savePacket(): Promise<{ name: string; path: string }> {
    const button = this.page.getByTestId('download');
    await this.page.locator('[data-testid=download]:not([disabled])').waitFor();
    const [download] = await Promise.all([this.page.waitForEvent('download'), button.click()]);
    return { name: download.suggestedFilename(), path: await download.path() };
  }
}
