import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { sigmaOf } from '../../../src/core/check/index.ts';
import { declarePiece } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import type { Who } from '../../../src/core/job/index.ts';
import { apart, distances, installer, Job, owner, type PieceSpec, pieceId, uuid } from './build.ts';

/**
 * A stop must never be a false alarm. True shapes are built at random, read with the noise the checker grants the tape
 * (normal, cut off at 3.5 standard deviations) and rounded to the tape's marks; no stop may follow. The seed is fixed,
 * because three points in a line alone exceed four standard deviations once in 30,000 times.
 */
const RUNS = { seed: 20260504, numRuns: 60 };
// Counted in shapes, not in seconds: a busy machine must not fail a true statement.
vi.setConfig({ testTimeout: 60_000 });

type Place = [number, number, number];

const coordinate = (reach: number) => fc.integer({ min: -reach, max: reach });
const inSpace: fc.Arbitrary<Place> = fc.tuple(coordinate(3000), coordinate(2000), coordinate(1500));
const onDeck: fc.Arbitrary<Place> = fc.tuple(coordinate(3000), coordinate(2000), fc.constant(0));
const inLine: fc.Arbitrary<Place> = coordinate(3000).map((x): Place => [x, x / 3, 0]);
const person = fc.constantFrom(installer, owner);
const system = fc.constantFrom('metric' as const, 'imperial' as const);

/** Normal deviates by Box and Muller, cut off at 3.5, from a fixed stream of numbers (Park and Miller's generator). */
function noise(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  const uniform = (): number => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return () => {
    let value = normal();
    while (Math.abs(value) > 3.5) value = normal();
    return value;
  };
}

interface World {
  readonly places: Place[];
  readonly seed: number;
  readonly who: Who;
  readonly system: 'metric' | 'imperial';
}
const worlds = (place: fc.Arbitrary<Place>, size: number): fc.Arbitrary<World> =>
  fc.record({
    places: fc.array(place, { minLength: size, maxLength: size }),
    seed: fc.integer({ min: 1, max: 2147483000 }),
    who: person,
    system,
  });

const LABELS = ['A', 'B', 'C', 'D', 'E', 'F', 'G'];
const named = (places: readonly Place[]): Record<string, Place> =>
  Object.fromEntries(places.map((place, index) => [LABELS[index] ?? '', place]));

function noisy(true_: Record<string, number>, kind: 'straight' | 'girth' | 'running', who: Who, deviate: () => number) {
  return Object.fromEntries(
    Object.entries(true_).map(([name, value]) => {
      const sigma = sigmaOf({ kind }, { value, text: '1', unit: 'mm', sigma: null }, who);
      return [name, value + sigma * deviate()];
    }),
  );
}

function stopsOf(world: World, spec: Pick<PieceSpec, 'flat' | 'boxes'>): string[] {
  const lengths = distances(named(world.places));
  // Points closer together than a hand's breadth are one point to a tape.
  const far = Object.fromEntries(Object.entries(lengths).filter(([, mm]) => mm > 80));
  const labels = Object.fromEntries(world.places.map((_, index) => [LABELS[index] ?? '', null]));
  const job = new Job({ who: world.who, system: world.system });
  job.piece({ points: labels, readings: Object.keys(far), ...spec });
  job.takes(noisy(far, 'straight', world.who, noise(world.seed)));
  return job
    .findings()
    .filter(({ severity }) => severity === 'stop')
    .map(({ id }) => id);
}

describe('no stop without cause', () => {
  it.each([
    ['in space', inSpace],
    ['on a flat deck', onDeck],
    ['in a line', inLine],
  ] as const)('on points %s, all taped to all', (_, place) => {
    fc.assert(
      fc.property(worlds(place, 6), (world) => {
        expect(stopsOf(world, {})).toEqual([]);
      }),
      RUNS,
    );
  });
  it('on boxes in space', () => {
    fc.assert(
      fc.property(worlds(inSpace, 4), (world) => {
        expect(stopsOf(world, { boxes: [['A', 'B', 'C', 'D']] })).toEqual([]);
      }),
      { ...RUNS, numRuns: 250 },
    );
  });
  it.each([true, false])('on flat boxes, with whatever corners (piece flat: %s)', (flat) => {
    fc.assert(
      fc.property(worlds(onDeck, 4), (world) => {
        expect(stopsOf(world, { flat, boxes: [['A', 'B', 'C', 'D']] })).toEqual([]);
      }),
      { ...RUNS, numRuns: 250 },
    );
  });
  it('on boxes of which three corners stand in a line', () => {
    const corners = fc.tuple(fc.integer({ min: 200, max: 1800 }), coordinate(2000));
    fc.assert(
      fc.property(worlds(onDeck, 4), corners, fc.boolean(), (world, [at, y], flat) => {
        const places: Place[] = [
          [0, 0, 0],
          [at, 0, 0],
          [2000, 0, 0],
          [700, y, 0],
        ];
        expect(stopsOf({ ...world, places }, { flat, boxes: [['A', 'B', 'C', 'D']] })).toEqual([]);
      }),
      { ...RUNS, numRuns: 150 },
    );
  });
  it('on girths along taut lines, and on runs along them', () => {
    const spaces = fc.array(fc.integer({ min: 105, max: 195 }), { minLength: 2, maxLength: 20 });
    const manner = fc.constantFrom('gaps', 'cumulative');
    fc.assert(
      fc.property(worlds(onDeck, 2), spaces, manner, ({ seed, who, system }, gaps, how) => {
        const deviate = noise(seed);
        const sums = gaps.map((_, index) => gaps.slice(0, index + 1).reduce((sum, gap) => sum + gap, 0));
        const length = (sums.at(-1) ?? 0) + 20;
        const readings = [{ name: 'whole', kind: 'girth' as const, points: ['A', 'B'], run: 'edge' }, 'A-B'];
        const closing = { name: 'closing', kind: 'running' as const, run: 'edge' };
        const inGaps = how === 'gaps';
        const job = new Job({ who, system }).piece({
          points: { A: null, B: null },
          readings: inGaps ? [...readings, closing] : readings,
          runs: [{ name: 'edge', points: ['A', 'B'], whole: 'whole' }],
        });
        job.runDetails('edge', { manner: how, line: 'fastener-line' });
        const places = Object.entries(inGaps ? gaps : sums).map(([index, mm]) => [index, mm] as const);
        job.fasteners('edge', Object.values(noisy(Object.fromEntries(places), 'running', who, deviate)));
        job
          .takes(noisy({ whole: length }, 'girth', who, deviate))
          .takes(noisy({ 'A-B': length }, 'straight', who, deviate));
        if (inGaps) job.takes(noisy({ closing: 20 }, 'running', who, deviate));
        expect(job.findings().filter(({ severity }) => severity === 'stop')).toEqual([]);
      }),
      { ...RUNS, numRuns: 150 },
    );
  });
});

describe('no stop on a guide measured as it asks', () => {
  const measured = guides.flatMap((guide) =>
    [installer, owner].map((who) => [guide.kind, who.role, guide, who] as const),
  );
  it.each(measured)('%s, by an %s', (_, __, guide, who) => {
    for (let seed = 1; seed <= 40; seed++) {
      let count = 0;
      const piece = declarePiece(guide, 'Piece', () => uuid(`guide ${count++}`));
      const deviate = noise(seed * 7919);
      const job = new Job({ who, system: seed % 2 ? 'imperial' : 'metric' });
      job.add('piece.add', piece);
      const places = new Map(piece.points.map((point) => [point.id, point.nominal]));
      for (const { id, kind, points } of piece.readings) {
        const [from, to] = points.map((point) => places.get(point));
        if (kind !== 'straight' || !from || !to) continue;
        const sigma = sigmaOf({ kind }, { value: apart(from, to), text: '1', unit: 'mm', sigma: null }, who);
        job.add('take.add', { reading: id, ...job.typed(apart(from, to) + sigma * deviate()) });
      }
      const wrong = job.findings().filter(({ severity, rule }) => severity !== 'note' && !rule.startsWith('missing-'));
      expect(wrong, `seed ${seed}`).toEqual([]);
    }
  });
});

describe('a slip is seen', () => {
  it('in a flat box with a diagonal, wherever it is, once it is a foot long', () => {
    const names = ['A-B', 'B-C', 'C-D', 'A-D', 'A-C', 'B-D'];
    const corners = fc.tuple(...[0, 1, 2, 3].map(() => fc.tuple(coordinate(150), coordinate(150))));
    fc.assert(
      fc.property(corners, fc.constantFrom(...names), fc.constantFrom(-304.8, 304.8), (jitter, name, slip) => {
        const base: Place[] = [
          [0, 0, 0],
          [2400, 0, 0],
          [2400, 1800, 0],
          [0, 1800, 0],
        ];
        const places = base.map(
          ([x, y], index): Place => [x + (jitter[index]?.[0] ?? 0), y + (jitter[index]?.[1] ?? 0), 0],
        );
        const lengths = distances(named(places));
        const job = new Job().piece({
          points: { A: null, B: null, C: null, D: null },
          readings: Object.keys(lengths),
          flat: true,
          boxes: [['A', 'B', 'C', 'D']],
        });
        job.takes({ ...lengths, [name]: (lengths[name] ?? 0) + slip });
        expect(job.findings()).toMatchObject([{ severity: 'stop', piece: pieceId() }]);
      }),
      RUNS,
    );
  });
});
