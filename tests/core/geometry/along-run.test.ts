import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fastenersByStretch,
  nominalPlaces,
  type Point3,
  placeAlong,
  pointsAlong,
  stationsAlong,
  stretchLength,
} from '../../../src/core/geometry';
import type { Sheet, SheetRun } from '../../../src/core/job/index.ts';
import { Job, readingId } from '../check/build.ts';

const LABELS = ['A', 'B', 'C', 'D'] as const;
type Places = Record<(typeof LABELS)[number], [number, number, number] | null>;
/** 300 mm along, 400 across, 500 along. */
const BENT: Places = { A: [0, 0, 0], B: [300, 0, 0], C: [300, 400, 0], D: [800, 400, 0] };

function edge(places: Places, values: Record<string, number> = {}, stations: readonly (number | null)[] = []): Job {
  const job = new Job().piece({
    points: places,
    readings: ['A-B', 'B-C', 'C-D', { name: 'whole', kind: 'girth', points: ['A', 'D'], run: 'edge' }],
    runs: [{ name: 'edge', points: [...LABELS], whole: 'whole' }],
  });
  return job.takes(values).fasteners('edge', stations);
}
function read(job: Job): { sheet: Sheet; run: SheetRun; placeOf: (point: string) => Point3 | undefined } {
  const sheet = job.sheet();
  return { sheet, run: sheet.runs[0] as SheetRun, placeOf: nominalPlaces(sheet) };
}
const marksOf = (job: Job) => {
  const { sheet, run, placeOf } = read(job);
  return pointsAlong(run, sheet, placeOf);
};
const EVERYWHERE_NULL: Places = { A: null, B: null, C: null, D: null };

describe('how far along an edge its points lie', () => {
  it('goes by the places, by tapes between the points before them, and shares the whole out', () => {
    expect(marksOf(edge(BENT))).toEqual([0, 300, 700, 1200]);
    expect(marksOf(edge(BENT, { 'B-C': 500 }))).toEqual([0, 300, 800, 1300]);
    expect(marksOf(edge(BENT, { whole: 1500 }))).toEqual([0, 375, 875, 1500]);
    expect(marksOf(edge(EVERYWHERE_NULL, { 'A-B': 310, 'B-C': 390, 'C-D': 500 }))).toEqual([0, 310, 700, 1200]);
  });

  it('is not told where a step is unknown, nor bent by a whole that is a slip', () => {
    expect(marksOf(edge(EVERYWHERE_NULL, { 'A-B': 310, 'B-C': 390 }))).toBeNull();
    expect(marksOf(edge(BENT, { whole: 12_000 }))).toEqual([0, 300, 700, 1200]);
  });
});

describe('places along an edge', () => {
  it('come from the start, or add up from gap to gap until one is not measured', () => {
    const along = (job: Job) => {
      const { sheet, run } = read(job);
      return stationsAlong(run, sheet).map(({ along: mm, number }) => [number, mm]);
    };
    const ways = [30, 200, null, 150];
    expect(along(edge(BENT, {}, ways))).toEqual([
      [1, 30],
      [2, 200],
      [4, 150],
    ]);
    expect(along(edge(BENT, {}, ways).runDetails('edge', { manner: 'gaps' }))).toEqual([
      [1, 30],
      [2, 230],
    ]);
  });

  it('lie on the straight between the points they lie between, never off the ends', () => {
    const { run, placeOf } = read(edge(BENT));
    const at = (along: number) => placeAlong(run, [0, 300, 700, 1200], placeOf, along);
    expect(at(150)).toEqual([150, 0, 0]);
    expect(at(300)).toEqual([300, 0, 0]);
    expect(at(500)).toEqual([300, 200, 0]);
    expect(at(-20)).toEqual([0, 0, 0]);
    expect(at(5000)).toEqual([800, 400, 0]);
  });

  it('keep their order and never lie further apart than the tape says', () => {
    const mark = fc.integer({ min: 0, max: 1300 });
    const { run, placeOf } = read(edge(BENT));
    fc.assert(
      fc.property(mark, mark, (a, b) => {
        const [p, q] = [a, b].map((mm) => placeAlong(run, [0, 300, 700, 1200], placeOf, mm) ?? [0, 0, 0]);
        const [dx, dy] = [(p?.[0] ?? 0) - (q?.[0] ?? 0), (p?.[1] ?? 0) - (q?.[1] ?? 0)];
        expect(Math.hypot(dx, dy)).toBeLessThanOrEqual(Math.abs(a - b) + 1e-9);
        // This edge only ever goes forward or to port.
        if (a <= b) expect([dx, dy].every((step) => step <= 1e-9)).toBe(true);
      }),
    );
  });
});

describe('fasteners by stretch', () => {
  const split = (job: Job, facts: Record<string, string>) => job.stretch('edge', 'C', { begins: 'yes', ...facts });
  const lists = (job: Job) => {
    const { sheet, run, placeOf } = read(job);
    return fastenersByStretch(run, sheet, placeOf).map((list) => list.map(({ reading }) => reading));
  };
  const names = (...numbers: number[]) => numbers.map((number) => readingId(`edge ${number}`));

  it('are all of them where the edge is one stretch', () => {
    expect(lists(edge(EVERYWHERE_NULL, {}, [30, 200]))).toEqual([names(0, 1)]);
  });

  it('go by their place, and near the meeting of two stretches by what closes each', () => {
    const job = split(edge(BENT, {}, [30, 690, 720, 900]), { closes: 'zip' });
    job.stretch('edge', 'A', { closes: 'snap' });
    expect(lists(job)).toEqual([names(0, 1, 2), names(3)]);
    job.stretch('edge', 'A', { closes: 'zip' }).stretch('edge', 'C', { closes: 'snap' });
    expect(lists(job)).toEqual([names(0), names(1, 2, 3)]);
  });

  it('count for every stretch that is closed so where nobody can tell', () => {
    const job = split(edge(EVERYWHERE_NULL, {}, [30, 900]), { closes: 'snap' });
    job.stretch('edge', 'A', { closes: 'snap' });
    expect(lists(job)).toEqual([names(0, 1), names(0, 1)]);
    job.stretch('edge', 'A', { closes: 'zip' });
    expect(lists(job)).toEqual([[], names(0, 1)]);
  });

  it('have a length to stand on where it was taped, or its points have places', () => {
    const lengths = (job: Job, nominal: boolean) => {
      const { sheet, run, placeOf } = read(job);
      return run.stretches.map((stretch) => stretchLength(run, sheet, nominal ? placeOf : () => undefined, stretch));
    };
    expect(lengths(split(edge(BENT, { whole: 1500 }), {}), true)).toEqual([875, 625]);
    expect(lengths(split(edge(BENT, { whole: 1500 }), {}), false)).toEqual([null, null]);
    expect(lengths(split(edge(BENT, { 'C-D': 510 }), {}), false)).toEqual([null, 510]);
    expect(lengths(edge(EVERYWHERE_NULL, { whole: 1500 }), false)).toEqual([1500]);
    expect(lengths(edge(EVERYWHERE_NULL), false)).toEqual([null]);
  });
});
