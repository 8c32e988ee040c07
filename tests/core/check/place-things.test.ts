import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/core/check/index.ts';
import { apart, type Job, pieceId, pointId, readingId } from './build.ts';
import { deck, toDeck } from './deck.ts';

type Place = readonly [number, number, number];

/** A cleat somebody pointed at, taped from marks. */
const cleat = (job: Job, truly: Place, pointed: [number, number, number] | null, from: readonly string[]): Job =>
  job.placeThing('C1', pointed, toDeck(truly, from)).thing('cleat', 'C1', {}, true);

const thingIn = (job: Job) => judge(job.sheet()).pieces.get(pieceId())?.things.get(pointId('C1'));

describe('a thing in the way', () => {
  it('lies where its two tapes meet on the side somebody pointed at', () => {
    const at: Place = [600, 300, 0];
    const place = thingIn(cleat(deck(), at, [650, 200, 0], ['W1', 'W2']));
    expect(apart(place?.position ?? [0, 0, 0], at)).toBeLessThan(3);
    expect(place?.sure).toBeGreaterThan(0);
    const behind = thingIn(cleat(deck(), at, [-500, 250, 0], ['W1', 'W2']));
    expect(behind?.position[0]).toBeCloseTo(-600, -1);
  });

  it('needs nobody to point where a third tape tells the side', () => {
    const at: Place = [600, 300, 0];
    expect(apart(thingIn(cleat(deck(), at, null, ['W1', 'W2', 'F']))?.position ?? [0, 0, 0], at)).toBeLessThan(3);
  });

  it('lies anywhere the tapes say, whatever the place', () => {
    const near = fc.integer({ min: -80, max: 80 });
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 1500 }),
        fc.integer({ min: -900, max: 900 }),
        near,
        near,
        (x, y, dx, dy) => {
          const place = thingIn(cleat(deck(), [x, y, 0], [x + dx, y + dy, 0], ['W1', 'W2']));
          expect(apart(place?.position ?? [0, 0, 0], [x, y, 0])).toBeLessThan(6);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('is not placed by one tape, nor on a side nobody can tell', () => {
    expect(thingIn(cleat(deck(), [600, 300, 0], [600, 300, 0], ['W1']))).toBeUndefined();
    expect(thingIn(cleat(deck(), [600, 300, 0], null, ['W1', 'W2']))).toBeUndefined();
    expect(thingIn(cleat(deck(), [600, 300, 0], [10, 300, 0], ['W1', 'W2']))).toBeUndefined();
  });

  it('never bends the shape nor leaves it waiting, however it is taped', () => {
    const before = judge(deck().sheet());
    for (const from of [['W1'], ['W1', 'W2'], ['W1', 'W2', 'F']]) {
      const job = cleat(deck(), [600, 300, 0], null, from);
      job.take('W1-C1', 900);
      const after = judge(job.sheet());
      expect(after.pieces.get(pieceId())?.adjustment).toEqual(before.pieces.get(pieceId())?.adjustment);
      const stops = ({ findings }: typeof after) =>
        findings.filter(({ severity, rule }) => severity === 'stop' && !rule.startsWith('impossible'));
      expect(stops(after)).toEqual(stops(before));
    }
  });

  it('is placed by station and offset from the string between two points too', () => {
    const job = cleat(deck(), [600, 300, 0], [500, 400, 0], []);
    const facts = { slot: null, points: [pointId('C1')], baseline: [pointId('W1'), pointId('W2')], needed: false };
    for (const [kind, value] of [
      ['along', 600],
      ['out', 600],
    ] as const) {
      job.add('reading.add', { piece: pieceId(), reading: { ...facts, id: readingId(kind), kind } });
      job.take(kind, value);
    }
    expect(apart(thingIn(job)?.position ?? [0, 0, 0], [600, 300, 0])).toBeLessThan(3);
  });
});
