import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parseLength } from '../../../src/core/length/index.ts';
import { readPacket } from '../../../src/core/packet/index.ts';
import { loadPieceWords, pieceWords } from '../../../src/text/guides.ts';
import { hasFirefox, hasWebkit, sayWhatIsLeftOut } from '../../runner/engines.ts';
import { type App, startApp } from '../support/app.ts';
import { withPhone } from '../support/phone.ts';
import { makePhoto } from '../support/photo.ts';
import { newProfile, removeProfile } from '../support/profile.ts';
import { truthOf } from '../support/truths.ts';
import { Bench } from './bench.ts';
import { startChromium } from './chromium.ts';
import type { Engine, Start } from './engine.ts';
import { startFirefox } from './firefox.ts';
import { Hand } from './hand.ts';
import { type Habits, Owner, type Past } from './owner.ts';
import { saidIn } from './packet.ts';
import { startWebkit } from './webkit.ts';

let app: App;
const folder = newProfile();
const photos = [1, 2, 3, 4].map((seed) => join(folder, `dock-${seed}.jpg`));

const truth = truthOf('tension-shade');
const tape = (slot: string): string => truth.readings[slot] ?? '';

/** 75 11/16 with its digits swapped, each time; port for starboard at one pair; centimetres read off for inches. */
const SLIPS: Habits['readings'] = {
  'A-B': ['57 11/16', '57 11/16', tape('A-B')],
  'A-C': [tape('B-D'), tape('A-C')],
  'B-D': [tape('A-C'), tape('B-D')],
  'C-D': ['150', tape('C-D')],
};
let habits: Habits;

beforeAll(async () => {
  sayWhatIsLeftOut();
  app = await startApp();
  await loadPieceWords(['tension-shade']);
  const questions = Object.entries(pieceWords('tension-shade')?.questions ?? {});
  habits = {
    readings: { ...Object.fromEntries(Object.keys(truth.readings).map((slot) => [slot, [tape(slot)]])), ...SLIPS },
    answers: Object.fromEntries(
      questions.map(([slot, { choices }]) => [slot, choices[truth.answers[slot] ?? ''] ?? '']),
    ),
    photos,
  };
  await withPhone(app.url, {}, async (phone) => {
    await phone.open();
    for (const [seed, path] of photos.entries())
      writeFileSync(path, await makePhoto(phone.page, { seed, width: 1200, height: 900, orientation: 6 }));
  });
});
afterAll(async () => {
  await app.stop();
  removeProfile(folder);
});

/** Takes a picture into the folder that SHOTS names. Without SHOTS, none. */
async function shot({ engine }: Hand, name: string): Promise<void> {
  const to = process.env.SHOTS;
  if (to === undefined || to === '') return;
  mkdirSync(to, { recursive: true });
  writeFileSync(join(to, `${engine.name.toLowerCase()}-${name}.png`), await engine.picture());
}

const ENGINES: readonly (readonly [string, boolean, Start])[] = [
  ['Chromium', true, (profile) => startChromium(app.url, profile)],
  ['WebKitGTK', hasWebkit(), startWebkit],
  ['Firefox', hasFirefox(), startFirefox],
];

for (const [name, here, start] of ENGINES)
  describe.skipIf(!here)(`a clumsy owner in ${name}`, () => {
    const atShop = newProfile();
    const atOwner = newProfile();
    /** What passes from one to the other. */
    const passed = { link: '', packet: '', again: '', answer: '' };
    /** How many looks the round had, before anything was read once more; what was left to settle then. */
    let [round, left] = [0, ''];
    const past: Past = { looks: [], pictures: 0 };
    const { looks } = past;
    afterAll(() => {
      removeProfile(atShop);
      removeProfile(atOwner);
    });

    /** The owner takes the phone in hand; afterwards its browser is ended without a warning. */
    async function withOwner(deed: (owner: Owner) => Promise<void>): Promise<void> {
      const engine: Engine = await start(atOwner);
      try {
        await deed(new Owner(new Hand(engine), habits, past));
      } catch (error) {
        await shot(new Hand(engine), 'failed').catch(() => undefined);
        await engine.end().catch((faults: unknown) => console.error(faults));
        throw error;
      }
      await engine.end();
    }

    const typed = (): string[][] => looks.map((look) => [look.slot, look.typed]);

    test('opens the link, is told, and is ended in the middle of a number', async () => {
      passed.link = await new Bench(app.url, atShop).ask();
      await withOwner(async (owner) => {
        const { hand } = owner;
        await owner.begin(passed.link, 'Alex');
        await hand.sees('A canvas shop asks you to measure.');
        await shot(hand, 'overview-empty');
        await owner.readBefore(() => shot(hand, 'before'));
        await shot(hand, 'question');
        await owner.walk('B-C');
        await shot(hand, 'look');
        await owner.enter();
        await owner.type('112');
        await shot(hand, 'pad');
      });
      expect(looks.map(({ slot, typed }) => `${slot} ${typed}`)).toEqual([
        'A-B 57 11/16',
        `A-C ${tape('B-D')}`,
        `A-D ${tape('A-D')}`,
        `B-D ${tape('A-C')}`,
      ]);
      // Four of six lengths: nothing is there yet that could speak against them.
      expect(looks.map((look) => look.said)).toEqual(['', '', '', '']);
    });

    test('comes back without a network to the same step, with all that was confirmed and nothing that was not', async () => {
      await app.stop();
      try {
        await withOwner(async (owner) => {
          const { hand } = owner;
          await hand.engine.go(app.url);
          await hand.sees('Go on where you left');
          await shot(hand, 'jobs');
          await hand.press(/Go on where you left/);
          await hand.until('the step that was left', async () => (await owner.step()) === 'B-C');
          await hand.seesElement('[data-testid=enter]');
          await hand.engine.reload();
          await hand.seesElement('[data-testid=enter]');
          await hand.press('Back');
          await hand.sees('A–B');
          await shot(hand, 'steps');
          for (const value of ['57 11/16', tape('B-D'), tape('A-D'), tape('A-C')]) await hand.sees(value);
          expect(await hand.text()).not.toContain('112');
          await hand.press(/^B–C/);
          await owner.walk('photo-mounts');
          await owner.enter();
          await shot(hand, 'photo');
          await owner.walk('photo-pole-port');
          await owner.losesPhoto('photo-pole-port', 'Too dark');
          await owner.walk();
          await hand.sees('Not because you did it wrong');
          round = looks.length;
          await owner.lookAgain(() => shot(hand, 'again'));
          await hand.sees('Before you leave');
          await shot(hand, 'leave');
          left = await hand.text();
          passed.packet = await owner.packet((await hand.place()).split('/')[2] ?? '');
        });
      } finally {
        await app.start();
      }
      // Centimetres are noticed at once, and nothing is said of what they might be; nothing else is, in the round.
      expect(looks.slice(0, round).filter((look) => look.said !== '')).toEqual([
        { slot: 'C-D', typed: '150', said: 'Please look at the tape again and type what it says.' },
      ]);
      // What was read twice already is left out; then whatever two looks do not agree on: the pair that was mixed up.
      expect(looks.slice(round).map(({ slot }) => slot)).toEqual([
        ...['A-B', 'A-C', 'A-D', 'B-D', 'B-C', 'h-A', 'h-B', 'h-C', 'h-D'],
        ...['A-C', 'B-D', 'C-D'],
        // Somebody in whose piece three slips were found reads a third time what nothing else checks.
        ...['h-A', 'h-B', 'h-C', 'h-D'],
      ]);
      // Swapped twice, the digits agree with themselves: that six lengths do not meet is all that can be said here.
      expect(left).toMatch(/Not yet: one contradiction\.[\s\S]*A–B.*: please look at the tape again/);
      const packet = saidIn(passed.packet);
      expect(packet.takes).toEqual(typed());
      expect(packet.photos).toBe(2);
    });

    test('is asked again by link for what stands, and answers', async () => {
      const { slips, link } = await new Bench(app.url, atShop).askAgain(passed.packet, ['Port pole and its holder']);
      // At the bench the swapped digits have their name, before anything else that might be.
      expect(slips.split('\n').find((line) => /: .* would fit/.test(line))).toBe(
        'A–B: 75 11/16" would fit, digits swapped',
      );
      await withOwner(async (owner) => {
        const { hand } = owner;
        await hand.engine.go(link);
        await hand.until('a step that is asked again', async () => (await owner.step()) !== null);
        await shot(hand, 'asked');
        await owner.walk();
        await owner.lookAgain();
        await hand.sees('Clear to leave');
        passed.answer = await owner.packet((await hand.place()).split('/')[2] ?? '');
      });
      const packet = saidIn(passed.answer);
      expect(packet.takes).toEqual(typed());
      expect(packet.photos).toBe(3);
    });

    test('is merged and cleared to cut: each slip put right, each take as it was typed', async () => {
      const bench = new Bench(app.url, atShop);
      await bench.clear(passed.answer);
      const packet = await bench.packet();
      expect(saidIn(packet).takes).toEqual(typed());
      const read = readPacket(packet);
      if (!read.ok) throw new Error(`the bench's own packet is refused: ${JSON.stringify(read)}`);
      const { readings, pieces } = read.packet.sheet;
      for (const [slot, text] of Object.entries(truth.readings)) {
        const [value, right] = [readings.find((reading) => reading.slot === slot)?.value, parseLength(text, 'in')];
        expect(value, slot).toBeCloseTo(right.ok ? right.mm : Number.NaN, 3);
      }
      expect(pieces).toHaveLength(1);
      expect(read.packet.sheet.clearances.map(({ voidedBy }) => voidedBy)).toEqual([[]]);
    });
  });
