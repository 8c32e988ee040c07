import type { Hand } from './hand.ts';

/** What this owner types and chooses, look after look; the last stands for all that follow. */
export interface Habits {
  readonly readings: Readonly<Record<string, readonly string[]>>;
  /** Choices by the slot of their question, as they are called on the screen. */
  readonly answers: Readonly<Record<string, string>>;
  /** How often a reading is read again at once where the app speaks up; twice where nothing is said. */
  readonly patience?: Readonly<Record<string, number>>;
  /** Files of pictures, one after the other. */
  readonly photos: readonly string[];
}

/** What happened at one look at a reading: what was typed, and what the app said of it, if it stayed to say anything. */
export interface Look {
  readonly slot: string;
  readonly typed: string;
  readonly said: string;
}

/** What this person has done so far, whatever became of the browser. */
export interface Past {
  readonly looks: Look[];
  pictures: number;
}

/** Seconds, thirds, and what one answer to the shop may bring up. */
const MOST_ROUNDS = 5;

const USUAL_PATIENCE = 2;
/** Taps on Next that come sooner are taken for the second half of a double tap. */
const DOUBLE_TAP_MS = 600;
/** By then a look was judged, even where what is said of it stays the same. */
const JUDGED_MS = 1_200;

/** Somebody who measures for the first time, and slips. Does everything on the screen, as it comes. */
export class Owner {
  readonly hand: Hand;
  readonly habits: Habits;
  readonly past: Past;

  constructor(hand: Hand, habits: Habits, past: Past) {
    this.hand = hand;
    this.habits = habits;
    this.past = past;
  }

  /** The step on the screen; null where there is none. */
  async step(): Promise<string | null> {
    const [, at, , , step] = (await this.hand.place()).split('/');
    return at === 'job' ? (step ?? null) : null;
  }

  async begin(link: string, name: string): Promise<void> {
    const { hand } = this;
    await hand.engine.go(link);
    await hand.sees('A canvas shop asks you to measure');
    await hand.write(/^Your name/, name);
    await hand.pressElement('[data-testid=begin-request]');
  }

  /** What is told before the first step, page by page, and past the practice. look: at the first page. */
  async readBefore(look: () => Promise<void>): Promise<void> {
    const { hand } = this;
    await hand.press('Start');
    await hand.sees('Before you start');
    await look();
    while (!(await hand.isThere('button', 'Start measuring'))) await hand.press('Next');
    await hand.press('Try the tape on a sheet of paper first');
    await hand.press('Skip the practice');
  }

  /** Does one step after the other until the walk is over, or until a step that is left to the caller. */
  async walk(stopAt?: string): Promise<void> {
    for (let step = await this.step(); step !== null && step !== stopAt; step = await this.step()) {
      await this.enter();
      if (await this.hand.isThere('.pad')) await this.reading(step);
      else if (step.startsWith('photo-')) await this.photo(step);
      else await this.question(step);
    }
  }

  /** Reads once more whatever the app asks for after the round; look: at the page before it. */
  async lookAgain(look: () => Promise<void> = async () => undefined): Promise<void> {
    const { hand } = this;
    for (let round = 0; (await hand.place()).endsWith('/again') && round < MOST_ROUNDS; round += 1) {
      await hand.seesElement('[data-testid=look-again]');
      await look();
      await hand.pressElement('[data-testid=look-again]');
      await hand.until('the first of them', async () => (await this.step()) !== null);
      await this.walk();
    }
  }

  /** Past what must be read first, as far as where something is entered. */
  async enter(): Promise<void> {
    const { hand } = this;
    await hand.until('something to do', () =>
      hand.isThere(
        '.pad, .choices, [data-testid=enter], [data-testid=marks-skip], .caution button, input[type=file] ~ *, label.button',
      ),
    );
    if (await hand.isThere('[data-testid=marks-skip]')) {
      await hand.pressElement('[data-testid=marks-skip]');
      await hand.until('the step itself', () =>
        hand.isThere('.pad, [data-testid=enter], .caution button, label.button'),
      );
    }
    if (await hand.isThere('button', 'Understood')) {
      await hand.press('Understood');
      await hand.until('the step behind its caution', () =>
        hand.isThere('.pad, .choices, [data-testid=enter], label.button'),
      );
    }
    if (await hand.isThere('[data-testid=enter]')) await hand.pressElement('[data-testid=enter]');
    await hand.until('where it is entered', () => hand.isThere('.pad, .choices, label.button'));
  }

  /** Key by key, as `75 5/8`. */
  async type(text: string): Promise<void> {
    const [whole = '', fraction] = text.split(' ');
    for (const digit of whole) await this.hand.press(digit);
    if (fraction !== undefined) await this.hand.press(fraction);
  }

  async reading(step: string): Promise<void> {
    const { hand } = this;
    const patience = this.habits.patience?.[step] ?? USUAL_PATIENCE;
    for (let again = 0; again <= patience; again += 1) {
      const said = await this.look(step);
      if (said === null) return;
    }
    await new Promise((resolve) => setTimeout(resolve, DOUBLE_TAP_MS));
    await hand.pressElement('[data-testid=next]');
    await this.movedFrom(step);
  }

  /** Types one value. What the app says of it, and null where it goes on. */
  private async look(slot: string): Promise<string | null> {
    const { hand } = this;
    const typed = this.next(slot);
    await this.type(typed);
    const place = await hand.place();
    const before = await this.said();
    const moved = async () => (await hand.place()) !== place;
    // Next is pressed again where the look before was still being judged: what is typed waits on the pad.
    await hand.until(`${typed} to be taken at ${slot}`, async () => {
      if ((await moved()) || (await hand.isThere('.entry-hint'))) return true;
      await hand.pressIfThere('[data-testid=next]');
      return false;
    });
    const soon = performance.now() + JUDGED_MS;
    await hand.until(`an answer to ${typed} at ${slot}`, async () => {
      if (await moved()) return true;
      const said = await this.said();
      return said !== '' && (said !== before || performance.now() > soon);
    });
    const stayed = !(await moved());
    const said = stayed ? await this.said() : '';
    this.past.looks.push({ slot, typed, said });
    return stayed ? said : null;
  }

  /** What the app says of the reading on the screen. */
  private async said(): Promise<string> {
    return String(await this.hand.engine.read("document.querySelector('.strip')?.innerText ?? ''"));
  }

  /** What this look at a reading gives. */
  private next(slot: string): string {
    const values = this.habits.readings[slot] ?? [];
    const taken = this.past.looks.filter((look) => look.slot === slot).length;
    const value = values[Math.min(taken, values.length - 1)];
    if (value === undefined) throw new Error(`nobody knows what ${slot} is`);
    return value;
  }

  async question(step: string): Promise<void> {
    const choice = this.habits.answers[step];
    if (choice === undefined) throw new Error(`nobody knows an answer to ${step}`);
    await this.hand.press(choice);
    await this.movedFrom(step);
  }

  async photo(step: string): Promise<void> {
    const { hand } = this;
    await this.takePhoto();
    await hand.pressElement('[data-testid=next]');
    await this.movedFrom(step);
  }

  /** Takes a picture, takes it away again, and says that there will be none. */
  async losesPhoto(step: string, why: string): Promise<void> {
    const { hand } = this;
    await this.enter();
    await this.takePhoto();
    await hand.press('Remove');
    await hand.press('Remove this photo');
    await hand.until('the picture to be gone', async () => !(await hand.isThere('button.photo, [data-testid=next]')));
    // What stood at the foot moves down when the picture goes: a hand that missed it presses again.
    await hand.until('the reasons', async () => {
      if (await hand.isThere('button', why)) return true;
      await hand.press('No photo');
      return hand.isThere('button', why);
    });
    await hand.press(why);
    await this.movedFrom(step);
  }

  /** A picture, and a tap on it for each point that is asked for. */
  async takePhoto(): Promise<void> {
    const { hand } = this;
    const { photos } = this.habits;
    await hand.put('input[type=file]', photos[this.past.pictures % photos.length] ?? '');
    this.past.pictures += 1;
    await hand.seesElement('button.photo img');
    for (let marks = 0; (await hand.isThere('.mark-ask')) && marks < 5; marks += 1) {
      const asked = await this.asked();
      await hand.pressElement('button.photo', [0.25 + 0.2 * marks, 0.4]);
      await hand.until('the next mark', async () => (await this.asked()) !== asked);
    }
  }

  private async asked(): Promise<string> {
    return String(await this.hand.engine.read("document.querySelector('.mark-ask')?.innerText ?? ''"));
  }

  private async movedFrom(step: string): Promise<void> {
    await this.hand.until(`what comes after ${step}`, async () => (await this.step()) !== step);
  }

  /** The packet as it would be handed over, byte for byte as text. */
  async packet(job: string): Promise<string> {
    const { hand } = this;
    const { engine } = hand;
    await engine.read(CATCH);
    await engine.read(`location.hash = ${JSON.stringify(`#/send/${job}`)}`);
    await hand.pressElement('[data-testid=download]');
    await hand.until(
      'the packet',
      async () => (await engine.read("typeof globalThis.caughtPacket === 'string'")) === true,
    );
    await hand.sees('Saved among your downloads');
    return String(await engine.read('globalThis.caughtPacket'));
  }
}

/** Reads along what the page gives to its downloads, which differ from driver to driver. */
const CATCH = `(() => {
  if (globalThis.caughtPacket !== undefined) return;
  globalThis.caughtPacket = null;
  const make = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (blob) => {
    if (blob instanceof File) blob.text().then((text) => (globalThis.caughtPacket = text));
    return make(blob);
  };
})()`;
