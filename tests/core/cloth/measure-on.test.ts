import { describe, expect, it } from 'vitest';
import { adjust, type Network, seededRandom } from '../../../src/core/adjust/index.ts';
import { normalDeviate } from '../../../src/core/adjust/random.ts';
import { judge } from '../../../src/core/check/index.ts';
import {
  type Measure,
  measureAngle,
  measureArea,
  measureDistance,
  measureRun,
  type Shape,
  type SpotName,
  shapeToMeasure,
} from '../../../src/core/cloth/index.ts';
import { distances, Job, type PieceSpec, pieceId, pointId, readingId, runId } from '../check/build.ts';

type Places = Record<string, [number, number, number]>;
const point = (label: string): SpotName => ({ on: 'point', id: pointId(label) });
const fastener = (run: string, index: number): SpotName => ({ on: 'station', id: readingId(`${run} ${index}`) });

/** A hatch cover, 3 by 4 m, with every straight taped. */
const HATCH: Places = { A: [0, 3000, 0], B: [0, 0, 0], C: [4000, 0, 0], D: [4000, 3000, 0] };
/** A top over the cockpit: four corners at different heights over the deck, and the middle of the aft edge. */
const TOP: Places = {
  A: [0, 900, 1900],
  B: [0, -900, 1880],
  C: [1800, 800, 1700],
  D: [1800, -780, 1720],
  M: [-60, 10, 2000],
};

function jobOf(places: Places, flat: boolean, spec: Partial<PieceSpec> = {}): Job {
  const lengths = distances(places);
  const heights = flat
    ? []
    : Object.keys(places).map((label) => ({ name: `up-${label}`, kind: 'height' as const, points: [label] }));
  const job = new Job().piece({ flat, points: places, readings: [...Object.keys(lengths), ...heights], ...spec });
  job.takes(lengths);
  for (const { name, points } of heights) job.take(name, places[points[0] ?? '']?.[2] ?? 0);
  return job;
}

const edges = (...runs: [string, ...string[]][]): Pick<PieceSpec, 'runs'> => ({
  runs: runs.map(([name, ...points]) => ({ name, points })),
});
const HATCH_EDGES = edges(['aft', 'A', 'B'], ['starboard', 'B', 'C'], ['forward', 'C', 'D'], ['port', 'D', 'A']);
const TOP_EDGES = edges(['aft', 'A', 'M', 'B'], ['starboard', 'B', 'D'], ['forward', 'D', 'C'], ['port', 'C', 'A']);

/** The shape of a job as its engine has it. */
function solvedShape(job: Job): { shape: Shape; network: Network } {
  const sheet = job.sheet();
  const judgement = judge(sheet).pieces.get(pieceId());
  if (judgement?.adjustment.state !== 'solved') throw new Error(`ended as ${judgement?.adjustment.state}`);
  const { network, adjustment } = judgement;
  const places = new Map(adjustment.solution.points.map(({ id, position }) => [id, position]));
  return { network, shape: shapeToMeasure(sheet, pieceId(), { network, places, things: new Map() }) };
}

const sigmaOf = (measure: Measure | null | undefined): number => {
  expect(measure).toMatchObject({ why: null });
  return measure?.sigma ?? Number.NaN;
};

describe('a flat piece', () => {
  const { shape } = solvedShape(jobOf(HATCH, true, HATCH_EDGES));

  it('has one distance, its own', () => {
    const found = measureDistance(shape, point('A'), point('C'));
    expect(found?.straight.value).toBeCloseTo(5000, 3);
    expect(sigmaOf(found?.straight)).toBeGreaterThan(0.5);
    expect(found).toMatchObject({ plan: null, rise: null, along: null });
  });

  it('has its area and perimeter in its own plane, and square corners', () => {
    const found = measureArea(shape);
    expect(found?.area?.value).toBeCloseTo(12e6, -1);
    expect(found?.perimeter.value).toBeCloseTo(14000, 3);
    expect(found).toMatchObject({ round: null, open: false });
    expect(measureAngle(shape, point('A'), point('B'), point('C'))?.value).toBeCloseTo(Math.PI / 2, 6);
  });

  it('hanging across the boat is measured as it lies', () => {
    const hung = Object.fromEntries(
      Object.entries(HATCH).map(([label, [x, y]]) => [label, [-300, y, x] as [number, number, number]]),
    );
    const own = solvedShape(jobOf(hung, true, HATCH_EDGES)).shape;
    for (const there of [own, shapeToMeasure(own.sheet, pieceId(), null)]) {
      expect(measureArea(there)?.area?.value).toBeCloseTo(12e6, -2);
      expect(measureDistance(there, point('A'), point('C'))).toMatchObject({ plan: null });
    }
  });
});

describe('a piece that is not flat', () => {
  const { shape } = solvedShape(jobOf(TOP, false, TOP_EDGES));

  it('has a distance straight, one on plan and a difference of height, that make a right triangle', () => {
    const found = measureDistance(shape, point('A'), point('D'));
    if (!found?.plan || !found.rise) throw new Error('no plan');
    expect(Math.hypot(found.plan.value, found.rise.value)).toBeCloseTo(found.straight.value, 6);
    expect(found.straight.value).toBeCloseTo(Math.hypot(1800, 1680, 180), -1);
    for (const one of [found.straight, found.plan, found.rise]) expect(sigmaOf(one)).toBeGreaterThan(0.3);
  });

  it('has the area of its plan, and a way round it that is longer than that of the plan', () => {
    const found = measureArea(shape);
    if (!found?.round) throw new Error('no way round');
    expect(found.area?.value).toBeCloseTo((1800 * (1800 + 1580)) / 2 + 60 * 900, -4);
    expect(found.round.value).toBeGreaterThan(found.perimeter.value + 20);
  });

  it('does not say plus or minus how a distance lies in plan where nothing was read over the deck', () => {
    const lengths = distances(TOP);
    const job = new Job().piece({ points: TOP, readings: Object.keys(lengths) }).takes(lengths);
    const sheet = job.sheet();
    const { network, adjustment } = judge(sheet).pieces.get(pieceId()) ?? {};
    if (!network || adjustment?.state !== 'solved') throw new Error('not solved');
    const places = new Map(adjustment.solution.points.map(({ id, position }) => [id, position]));
    const found = measureDistance(
      shapeToMeasure(sheet, pieceId(), { network, places, things: new Map() }),
      point('A'),
      point('D'),
    );
    expect(found?.straight.why).toBeNull();
    expect(found?.plan).toMatchObject({ sigma: null, why: 'not-level' });
    expect(found?.rise).toMatchObject({ sigma: null, why: 'not-level' });
  });

  it('does not say plus or minus of what is too small for it', () => {
    const stacked: Places = { ...TOP, N: [1800, 801, 300] };
    const found = measureDistance(solvedShape(jobOf(stacked, false)).shape, point('C'), point('N'));
    expect(found?.straight.why).toBeNull();
    expect(found?.plan).toMatchObject({ sigma: null, why: 'too-small' });
  });
});

describe('along an edge', () => {
  it('is the sum of its legs, and between two fasteners what lies between them', () => {
    const job = jobOf(TOP, false, TOP_EDGES).runDetails('aft', { manner: 'cumulative' });
    const { shape } = solvedShape(job.fasteners('aft', [100, 600, 1200, 1700]));
    const legs = [measureDistance(shape, point('A'), point('M')), measureDistance(shape, point('M'), point('B'))];
    const whole = measureRun(shape, runId('aft'));
    expect(whole?.value).toBeCloseTo(
      legs.reduce((sum, leg) => sum + (leg?.straight.value ?? 0), 0),
      6,
    );
    const found = measureDistance(shape, fastener('aft', 0), fastener('aft', 3));
    expect(found?.along).toMatchObject({ run: runId('aft'), taped: { value: 1600, why: null } });
    expect(Math.abs((found?.along?.length.value ?? 0) - 1600)).toBeLessThan(3);
    // Round the middle it is further than straight across.
    expect(found?.along?.length.value).toBeGreaterThan((found?.straight.value ?? 0) + 1);
    expect(measureDistance(shape, point('A'), point('B'))?.along?.length.value).toBeCloseTo(whole?.value ?? 0, 6);
    expect(measureDistance(shape, point('A'), fastener('aft', 1))?.along?.length.value).toBeCloseTo(600, 0);
  });

  it('between two fasteners errs by both stations and not by the shape, on one straight leg', () => {
    const job = jobOf(HATCH, true, HATCH_EDGES).runDetails('starboard', { manner: 'cumulative' });
    const { shape } = solvedShape(job.fasteners('starboard', [500, 3500]));
    const found = measureDistance(shape, fastener('starboard', 0), fastener('starboard', 1));
    // Steel tape, 1 mm and 0.3 mm a metre: 1.15 and 2.05 mm.
    const taped = Math.hypot(1.15, 2.05);
    expect(sigmaOf(found?.along?.taped)).toBeCloseTo(taped, 6);
    // Its own two readings, and three quarters of what the leg of 4 m may be off by.
    const leg = sigmaOf(measureDistance(shape, point('B'), point('C'))?.straight);
    expect(sigmaOf(found?.straight)).toBeCloseTo(Math.hypot(taped, 0.75 * leg), 4);
    expect(found?.straight.value).toBeCloseTo(3000, 1);
  });

  it('gap to gap sums what lies between', () => {
    const job = jobOf(HATCH, true, HATCH_EDGES).runDetails('starboard', { manner: 'gaps' });
    const { shape } = solvedShape(job.fasteners('starboard', [100, 150, 160, 170]));
    const found = measureDistance(shape, fastener('starboard', 3), fastener('starboard', 1));
    expect(found?.along?.taped?.value).toBe(330);
    expect(sigmaOf(found?.along?.taped)).toBeCloseTo(Math.hypot(1.048, 1.051), 6);
  });
});

describe('where there is no plus or minus', () => {
  it('a sketched shape says that it is not adjusted', () => {
    const sheet = jobOf(TOP, false, TOP_EDGES).sheet();
    const shape = shapeToMeasure(sheet, pieceId(), null);
    expect(measureDistance(shape, point('A'), point('B'))?.straight).toMatchObject({
      sigma: null,
      why: 'not-adjusted',
    });
    expect(measureArea(shape)?.area).toMatchObject({ sigma: null, why: 'not-adjusted' });
    expect(measureDistance(shape, point('A'), point('B'))?.straight.value).toBeCloseTo(1800, -2);
  });

  it('a point that was not taped says so', () => {
    const job = jobOf(HATCH, true, { points: { ...HATCH, E: [2000, 1500, 0] } });
    const { shape } = solvedShape(job);
    expect(measureDistance(shape, point('A'), point('E'))?.straight).toMatchObject({
      sigma: null,
      why: 'not-measured',
    });
    expect(measureDistance(shape, point('A'), point('Z'))).toBeNull();
  });
});

/** What the readings of a solved shape come out as, drawn again and again from their own spread. */
function spreads(
  job: Job,
  measures: readonly ((shape: Shape) => Measure | null | undefined)[],
  times: number,
  seed: number,
) {
  const { shape, network } = solvedShape(job);
  const start = shape.places;
  const first = adjust(network, { seekShapes: false, start });
  if (first.state !== 'solved') throw new Error(first.state);
  const exact = new Map(first.solution.readings.map(({ id, adjusted }) => [id, adjusted]));
  const random = seededRandom(seed);
  const values = measures.map((): number[] => []);
  for (let n = 0; n < times; n++) {
    const readings = network.readings.map((reading) => ({
      ...reading,
      value: (exact.get(reading.id) ?? reading.value) + reading.sigma * normalDeviate(random),
    }));
    const again = adjust({ ...network, readings }, { seekShapes: false, start });
    if (again.state !== 'solved') throw new Error(again.state);
    const places = new Map(again.solution.points.map(({ id, position }) => [id, position]));
    const now: Shape = { ...shape, places, joint: null };
    for (const [i, measure] of measures.entries()) values[i]?.push(measure(now)?.value ?? Number.NaN);
  }
  return measures.map((measure, i) => {
    const list = values[i] ?? [];
    const mean = list.reduce((sum, value) => sum + value, 0) / times;
    const drawn = Math.sqrt(list.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (times - 1));
    return { drawn, propagated: sigmaOf(measure(shape)) };
  });
}

// 2000 draws give a standard deviation to 1.6 % (one in its own); four of those is 6.4 %.
const TIMES = 2000;
const CLOSE = 4 / Math.sqrt(2 * TIMES);

describe('the propagated spread is that of many jobs measured anew', () => {
  it.each([
    ['flat', jobOf(HATCH, true, HATCH_EDGES), 7],
    ['not flat', jobOf(TOP, false, TOP_EDGES), 8],
  ] as const)('of a piece that is %s', { timeout: 60_000 }, (_, job, seed) => {
    const found = spreads(
      job,
      [
        (shape) => measureDistance(shape, point('A'), point('C'))?.straight,
        (shape) => measureDistance(shape, point('B'), point('D'))?.straight,
        (shape) => measureRun(shape, runId('aft')),
        (shape) => measureAngle(shape, point('A'), point('B'), point('D')),
        (shape) => measureArea(shape)?.area,
        (shape) => measureArea(shape)?.perimeter,
        ...(job.sheet().pieces[0]?.flat
          ? []
          : [
              (shape: Shape) => measureDistance(shape, point('A'), point('D'))?.plan,
              (shape: Shape) => measureDistance(shape, point('A'), point('D'))?.rise,
              (shape: Shape) => measureArea(shape)?.round,
            ]),
      ],
      TIMES,
      seed,
    );
    for (const { drawn, propagated } of found) expect(Math.abs(drawn / propagated - 1)).toBeLessThan(CLOSE);
  });
});
