/**
 * Owners who have never measured for cloth, simulated: each reads a guide through on a boat of its own, reads again what the
 * app asks a second and a third time, and sends; the shop asks again by a written policy, and clears or does not. What was
 * cleared is held against the true shape. Everything is invented and seeded; nothing here knows what the engine supposes.
 */
import { seededRandom } from '../../src/core/adjust/index.ts';
import { askAgain, askable, defaultLimits, type Finding, judge } from '../../src/core/check/index.ts';
import { type Guide, secondLooks, stepsOf } from '../../src/core/guide/index.ts';
import { FACT_KINDS, type Sheet, type SheetReading } from '../../src/core/job/index.ts';
import { owner } from '../core/check/build.ts';
import { deviates, Measured, type Place } from '../core/check/measured.ts';
import { errorsOf } from './owner-errors.ts';
import { slipOf } from './owner-slips.ts';

export interface Owners {
  readonly guide: Guide;
  readonly answers: Readonly<Record<string, string>>;
  /** Share of attempts to read the tape that are wrong. */
  readonly rate: number;
  /** False: the app asks for no second look but where the engine wants one. For comparison. */
  readonly looks?: boolean;
}

/** What became of one packet. rounds: how often the shop asked again before it cleared it; null where it never did. */
export interface Outcome {
  readonly rounds: number | null;
  readonly asked: number;
  readonly takes: number;
  readonly wrong: number;
  /** Of what was cleared: the largest error over twice its tolerance is more than 1. */
  readonly bad: boolean;
  readonly worst: string;
}

/** How often the shop asks before it sends somebody instead. */
const MOST_ROUNDS = 4;
/** One standard deviation by which a true point lies elsewhere than on the guide's layout, mm. */
const WANDER = 40;

/** Findings the strip beside an entry shows, by which a typed value is warned of. */
const warned = (findings: readonly Finding[], reading: string): boolean =>
  findings.some(
    ({ rule, severity, accepted, subjects }) =>
      severity !== 'note' && accepted === null && !LATER.has(rule) && subjects.some(({ id }) => id === reading),
  );
const LATER: ReadonlySet<string> = new Set([
  'missing-second-look',
  'reading-unchecked',
  'slip-unseen',
  'takes-disagree',
  'asked-again',
]);

class Owner {
  readonly measured: Measured;
  readonly truth: ReadonlyMap<string, Place>;
  takes = 0;
  wrong = 0;
  asked = 0;
  readonly #draw: () => number;
  readonly #noise: () => number;
  readonly #metric: boolean;
  readonly #case: Owners;

  constructor(one: Owners, seed: number) {
    const { guide, answers } = one;
    this.#case = one;
    this.#draw = seededRandom(seed);
    this.#noise = deviates(seed + 1);
    this.#metric = this.#draw() < 0.5;
    const wander = deviates(seed + 2);
    const places = new Map<string, Place>();
    for (const { slot, nominal } of guide.points) {
      const [x, y, z] = nominal;
      places.set(slot, [x + WANDER * wander(), y + WANDER * wander(), guide.flat ? z : z + WANDER * wander()]);
    }
    this.truth = places;
    this.measured = new Measured(guide, {
      who: owner,
      answers,
      system: this.#metric ? 'metric' : 'imperial',
      place: (slot, nominal) => places.get(slot) ?? nominal,
      open: guide.walk.map(({ slot }) => slot),
      bare: true,
    });
  }

  get sheet(): Sheet {
    return this.measured.job.sheet();
  }

  get piece(): string {
    return this.measured.piece.id;
  }

  /** The walk once, each reading as it comes; a value that is warned of is read again at once. */
  walk(): void {
    for (const step of stepsOf(this.sheet, this.piece)) {
      if (step.on !== 'reading' || !isTaped(step.reading)) continue;
      this.attempt(step.reading);
      if (warned(judge(this.sheet).findings, step.reading.id)) this.attempt(step.reading);
    }
  }

  /** Seconds, then thirds, until the app asks for no more. */
  lookAgain(): void {
    for (;;) {
      const { findings } = judge(this.sheet);
      const own = this.#case.looks === false ? findings.filter(({ rule }) => rule !== 'missing-second-look') : findings;
      const next = secondLooks(this.sheet, own);
      if (next.length === 0) return;
      for (const { reading } of next) this.attempt(this.#reading(reading));
    }
  }

  /** One attempt to read the tape and type what it says. */
  attempt(reading: SheetReading): void {
    const truth = this.#true(reading);
    const sound = truth + this.#noise() * this.#sigma(reading, truth);
    const slipped = this.#draw() < this.#case.rate;
    const mm = slipped ? slipOf(this.#scene(reading, sound), this.#draw).mm : sound;
    if (slipped) this.wrong++;
    this.takes++;
    this.measured.job.add('take.add', { reading: reading.id, ...this.measured.job.typed(mm) });
  }

  answer(items: readonly { on: string; id: string }[]): void {
    this.asked += items.length;
    this.measured.job.add(
      'ask.again',
      { piece: this.piece, note: '', items: items.map((item) => ({ ...item, note: '' })) },
      { who: { name: 'Bea', role: 'bench' } },
    );
    for (const { on, id } of items) if (on === 'reading') this.attempt(this.#reading(id));
  }

  accept({ id, basis }: Finding): void {
    this.measured.job.add('finding.accept', { finding: id, basis, reason: 'said on the telephone' });
  }

  #reading(id: string): SheetReading {
    const found = this.sheet.readings.find((reading) => reading.id === id);
    if (!found) throw new Error('asked for a reading that is not there');
    return found;
  }

  #true = (reading: SheetReading): number => this.measured.length(reading.slot ?? '');

  /** The app's own figures for an owner's tape. */
  #sigma({ kind }: SheetReading, mm: number): number {
    return this.measured.sigma(kind, mm);
  }

  #scene(reading: SheetReading, mm: number) {
    const readings = this.sheet.readings.filter(isTaped);
    const same = readings.filter(({ kind, id }) => kind === reading.kind && id !== reading.id);
    const mirrored = this.measured.mirror(reading.points);
    const twin = same.find(({ points }) => points.length > 0 && points.every((id) => mirrored.includes(id)));
    const at = readings.findIndex(({ id }) => id === reading.id);
    const [before, after] = [readings[at - 1], readings[at + 1]];
    const neighbour = this.#draw() < 0.5 ? (before ?? after) : (after ?? before);
    return {
      mm,
      metric: this.#metric,
      others: same.map(this.#true),
      twin: twin ? this.#true(twin) : null,
      neighbour: neighbour ? this.#true(neighbour) : null,
    };
  }
}

const isTaped = ({ kind, needed, slot }: SheetReading): boolean => needed && slot !== null && !FACT_KINDS.has(kind);

/**
 * The shop's policy. What stands is asked again: what the screen ticks by itself, and every reading that a stop or a doubt
 * names. A stop that names no reading asks for all of the point's, or of the piece's. Taken on with a reason, once the owner was
 * asked: a value unlike any boat that two looks agree on, and doubts about how the piece is used. Nothing else is.
 */
function policy(at: Owner): { on: string; id: string }[] {
  const first = judge(at.sheet);
  for (const finding of first.findings.filter((one) => open(one) && mayBeTakenOn(one, at.sheet))) at.accept(finding);
  const sheet = at.sheet;
  const { findings, pieces } = judge(sheet);
  const items = [...askAgain(sheet, findings, at.piece, pieces.get(at.piece))];
  const suspected = items.length > 0;
  for (const { subjects, rule } of findings.filter(open)) {
    if (rule === 'asked-again') continue;
    const named = subjects.filter(({ on }) => on === 'reading').map(({ id }) => askable(sheet, id));
    if (named.length > 0) items.push(...named);
    else if (!suspected) items.push(...readingsAt(sheet, subjects).map((id) => askable(sheet, id)));
  }
  return [...new Map(items.map((item) => [item.id, item])).values()];
}

const open = ({ severity, accepted }: Finding): boolean => severity !== 'note' && accepted === null;

function mayBeTakenOn({ severity, rule, subjects }: Finding, sheet: Sheet): boolean {
  if (severity === 'stop') return false;
  if (rule !== 'implausible-value')
    return ['choice-conflict', 'unsure-choice', 'missing-photo', 'missing-mark', 'missing-cord-exit'].includes(rule);
  return subjects.every(({ id }) => {
    const takes = sheet.readings.find((reading) => reading.id === id)?.takes ?? [];
    return takes.filter(({ struck, outvoted }) => struck === null && outvoted !== true).length > 1;
  });
}

function readingsAt(sheet: Sheet, subjects: Finding['subjects']): string[] {
  const ids = new Set(subjects.map(({ id }) => id));
  const own = sheet.readings.filter(isTaped);
  const near = own.filter(({ points }) => points.some((id) => ids.has(id)));
  return (near.length > 0 ? near : own).map(({ id }) => id);
}

export function oneOwner(one: Owners, seed: number): Outcome {
  const at = new Owner(one, seed);
  at.walk();
  at.lookAgain();
  for (let rounds = 0; ; rounds++) {
    const items = policy(at);
    const { takes, wrong, asked } = at;
    if (items.length === 0) {
      const { worst, share } = errorsOf(at.sheet, at.measured, at.truth, defaultLimits);
      return { rounds, asked, takes, wrong, bad: share > 1, worst };
    }
    if (rounds === MOST_ROUNDS) return { rounds: null, asked, takes, wrong, bad: false, worst: '' };
    at.answer(items);
    at.lookAgain();
  }
}
