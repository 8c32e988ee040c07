/** Slip trials: `npm run bench adjust-trials [jobs per cell]`. Prints the table kept in the developers' guide. */
import { adjust, nameSlips, type SlipReport, seededRandom } from '../../src/core/adjust/index.ts';
import type { Random } from '../../src/core/adjust/random.ts';
import { bowJob, type Job, type ShadeTapes, shadeJob } from './adjust-jobs.ts';
import { MISDEED_NAMES, misread, SIZELESS, type Slipped, withSlips } from './adjust-slips.ts';

const shadeWith =
  (tapes: ShadeTapes) =>
  (random: Random): Job =>
    shadeJob(random, undefined, tapes);

/** The shade as its guide asks, and with tapes from its corners to a mark on the deck besides, or to two instead of heights. */
export const PIECES = {
  shade: shadeWith({ heights: [...'ABCD'], marks: [] }),
  'shade and a mark': shadeWith({ heights: [...'ABCD'], marks: ['K'], onPlane: true }),
  'shade by two marks': shadeWith({ heights: [], marks: ['K', 'L'] }),
  bow: (random: Random): Job => bowJob(random),
} as const;
export type Piece = keyof typeof PIECES;

export interface Tally {
  jobs: number;
  doubted: number;
  /** The right reading with the right value leads, stands among the first three, stands anywhere in the list. */
  first: number;
  firstReading: number;
  inThree: number;
  listed: number;
  /** Tied, but the list holds the truth and a tape that decides is offered. */
  shortList: number;
  /** What picking the largest standardised residual alone would have got right. */
  largestW: number;
  /** Named outright, and wrong. */
  misnamed: number;
  /** Largest error of a distance between points in jobs where nothing was doubted, mm. */
  missedShape: number;
  missed: number;
}

const newTally = (): Tally => ({
  jobs: 0,
  doubted: 0,
  first: 0,
  firstReading: 0,
  inThree: 0,
  listed: 0,
  shortList: 0,
  largestW: 0,
  misnamed: 0,
  missedShape: 0,
  missed: 0,
});

/** Whether an explanation names exactly these slips with the right values. */
function says(report: SlipReport, at: number, slips: readonly Slipped[], readingOnly = false): boolean {
  const explanation = report.explanations[at];
  if (explanation === undefined || explanation.slips.length !== slips.length) return false;
  return slips.every((s) =>
    explanation.slips.some((e) => {
      if (e.reading !== s.id) return false;
      // A slip of no particular size leaves nothing in the text: there the network's estimate is all there is.
      const tolerance = e.valueSigma > 0 || SIZELESS.includes(s.kind) ? Math.max(4, 4 * e.valueSigma, 10) : 1;
      return readingOnly || Math.abs(e.value - s.right) <= tolerance;
    }),
  );
}

function shapeError(job: Job, positions: readonly { id: string; position: readonly number[] }[]): number {
  let worst = 0;
  const span = (a: readonly number[], b: readonly number[]): number => Math.hypot(...a.map((v, c) => v - (b[c] ?? 0)));
  for (const p of positions) {
    for (const q of positions) {
      const [tp, tq] = [job.truth.get(p.id) ?? [], job.truth.get(q.id) ?? []];
      worst = Math.max(worst, Math.abs(span(p.position, q.position) - span(tp, tq)));
    }
  }
  return worst;
}

/** Runs one slipped job and counts how it went. */
function tryJob(job: Job, slips: readonly Slipped[], tally: Tally): void {
  const slipped = withSlips(job, slips);
  const adjustment = adjust(slipped.network);
  tally.jobs++;
  if (!('solution' in adjustment)) return;
  const { solution } = adjustment;
  if (!solution.doubted) {
    tally.missed++;
    tally.missedShape = Math.max(tally.missedShape, shapeError(job, solution.points));
    return;
  }
  tally.doubted++;
  const largest = [...solution.readings].sort(
    (a, b) => Math.abs(b.standardised ?? 0) - Math.abs(a.standardised ?? 0),
  )[0];
  if (slips.some((s) => s.id === largest?.id)) tally.largestW++;
  const report = nameSlips(slipped.network, adjustment);
  if (says(report, 0, slips)) tally.first++;
  else if (report.verdict === 'named') tally.misnamed++;
  if (says(report, 0, slips, true)) tally.firstReading++;
  if ([0, 1, 2].some((k) => says(report, k, slips))) tally.inThree++;
  if (report.explanations.some((_, k) => says(report, k, slips))) {
    tally.listed++;
    if (report.verdict === 'tied' && (report.tellsApart.length > 0 || report.readAgain.length > 0)) tally.shortList++;
  }
}

/** Smallest visible slip of every reading of a sound job. */
function visible(job: Job): Map<string, number> {
  const a = adjust(job.network);
  return new Map(
    'solution' in a ? a.solution.readings.map((r) => [r.id, r.minimalDetectableBias ?? Number.POSITIVE_INFINITY]) : [],
  );
}

/** A job with `count` slips of random kinds, each `low` to `high` times its smallest visible size. */
function slippedJob(
  piece: Piece,
  random: Random,
  count: number,
  low: number,
  high: number,
): { job: Job; slips: Slipped[] } {
  for (;;) {
    const job = PIECES[piece](random);
    const bound = visible(job);
    for (let attempt = 0; attempt < 40; attempt++) {
      const slips: Slipped[] = [];
      while (slips.length < count) {
        const kind = MISDEED_NAMES[Math.floor(random() * MISDEED_NAMES.length)] ?? '';
        const made = misread(job, kind, random);
        if (made === undefined) continue;
        slips.push(...made);
      }
      const sized = slips.every((s) => {
        const ratio = Math.abs(s.wrong - s.right) / (bound.get(s.id) ?? Number.POSITIVE_INFINITY);
        return ratio >= low && ratio < high;
      });
      const apart = new Set(slips.map((s) => s.id)).size === slips.length;
      if (sized && apart) return { job, slips };
    }
  }
}

export function sizedTrial(piece: Piece, seed: number, jobs: number, count: number, low: number, high: number): Tally {
  const tally = newTally();
  const random = seededRandom(seed);
  for (let k = 0; k < jobs; k++) {
    const { job, slips } = slippedJob(piece, random, count, low, high);
    tryJob(job, slips, tally);
  }
  return tally;
}

/** Any size: one slip of one kind. */
function kindTrial(piece: Piece, kind: string, seed: number, jobs: number): Tally {
  const tally = newTally();
  const random = seededRandom(seed);
  for (let k = 0; k < 60 * jobs && tally.jobs < jobs; k++) {
    const job = PIECES[piece](random);
    const slips = misread(job, kind, random);
    if (slips !== undefined) tryJob(job, slips, tally);
  }
  return tally;
}

/** How many clean jobs are doubted. */
export function cleanTrial(piece: Piece, seed: number, jobs: number): { jobs: number; accused: number } {
  let accused = 0;
  const random = seededRandom(seed);
  for (let k = 0; k < jobs; k++) {
    const adjustment = adjust(PIECES[piece](random).network);
    if (!('solution' in adjustment) || adjustment.solution.doubted || adjustment.state !== 'solved') accused++;
  }
  return { jobs, accused };
}

const percent = (n: number, of: number): string => (of === 0 ? '-' : `${((100 * n) / of).toFixed(1)} %`);

function line(name: string, t: Tally): string {
  const cells = [
    t.jobs,
    percent(t.doubted, t.jobs),
    percent(t.first, t.doubted),
    percent(t.inThree, t.doubted),
    percent(t.listed, t.doubted),
    percent(t.shortList, t.doubted),
    percent(t.misnamed, t.doubted),
    percent(t.largestW, t.doubted),
    t.missed === 0 ? '-' : `${t.missedShape.toFixed(0)} mm`,
  ];
  return `| ${name} | ${cells.join(' | ')} |`;
}

const HEAD =
  '| slip | jobs | doubted | first, right value | in first three | in the list | tied, list holds it | named wrongly | largest w alone | worst shape error when missed |\n|---|---|---|---|---|---|---|---|---|---|';

export function main(jobs: number): void {
  for (const piece of Object.keys(PIECES) as Piece[]) {
    const clean = cleanTrial(piece, 11, 4 * jobs);
    console.log(
      `\n${piece}: ${clean.jobs} clean jobs, ${clean.accused} accused (${percent(clean.accused, clean.jobs)})\n\n${HEAD}`,
    );
    console.log(
      line('4 times the smallest visible or more', sizedTrial(piece, 1, jobs, 1, 4, Number.POSITIVE_INFINITY)),
    );
    console.log(line('2 times or more', sizedTrial(piece, 2, jobs, 1, 2, Number.POSITIVE_INFINITY)));
    console.log(line('2 to 4 times', sizedTrial(piece, 3, jobs, 1, 2, 4)));
    console.log(line('two slips, 4 times or more', sizedTrial(piece, 4, jobs, 2, 4, Number.POSITIVE_INFINITY)));
    for (const [i, kind] of MISDEED_NAMES.entries())
      console.log(line(`any size: ${kind}`, kindTrial(piece, kind, 100 + i, Math.ceil(jobs / 3))));
  }
}
