import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  distance,
  type Face,
  type Point3,
  seenAs,
  seenTurned,
  TURNS,
  type Turn,
  turnedBy,
} from '../../../src/core/geometry/index.ts';

const coordinate = fc.integer({ min: -9000, max: 9000 });
const place = fc.tuple(coordinate, coordinate, coordinate);
const angle = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const turn: fc.Arbitrary<Turn> = fc.record({ around: angle(Math.PI), down: angle(Math.PI / 2) });

const dot = (a: Point3, b: Point3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const AXES: readonly Point3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

describe('a turned view', () => {
  it('keeps every distance', () => {
    fc.assert(
      fc.property(turn, place, place, (as, a, b) => {
        expect(distance(seenTurned(as, a), seenTurned(as, b))).toBeCloseTo(distance(a, b), 6);
      }),
    );
  });

  it('is a rotation, and no mirror', () => {
    fc.assert(
      fc.property(turn, (as) => {
        const [bow, port, up] = AXES.map((axis) => seenTurned(as, axis)) as [Point3, Point3, Point3];
        for (const one of [bow, port, up]) expect(dot(one, one)).toBeCloseTo(1, 12);
        for (const [a, b] of [
          [bow, port],
          [port, up],
          [up, bow],
        ] as const)
          expect(dot(a, b)).toBeCloseTo(0, 12);
        const cross: Point3 = [
          bow[1] * port[2] - bow[2] * port[1],
          bow[2] * port[0] - bow[0] * port[2],
          bow[0] * port[1] - bow[1] * port[0],
        ];
        expect(dot(cross, up)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('from above, from a side or an end is what that face shows', () => {
    fc.assert(
      fc.property(fc.constantFrom<Face>('plan', 'port', 'starboard', 'astern', 'ahead'), place, (face, at) => {
        const [right, up] = seenTurned(TURNS[face], at);
        const [faceRight, faceUp] = seenAs(face, at);
        expect(right).toBeCloseTo(faceRight, 6);
        expect(up).toBeCloseTo(faceUp, 6);
      }),
    );
  });

  it('has what is nearer to the eye above zero', () => {
    expect(seenTurned(TURNS.astern, [-1000, 0, 0])[2]).toBeCloseTo(1000, 9);
    expect(seenTurned(TURNS.plan, [0, 0, 700])[2]).toBeCloseTo(700, 9);
    expect(seenTurned(TURNS.starboard, [0, -800, 0])[2]).toBeCloseTo(800, 9);
  });

  it('turned all the way round is where it was, and never looks over the top', () => {
    fc.assert(
      fc.property(turn, angle(20), angle(20), place, (as, around, down, at) => {
        const on = turnedBy(as, around, down);
        expect(Math.abs(on.down)).toBeLessThanOrEqual(Math.PI / 2);
        expect(Math.abs(on.around)).toBeLessThanOrEqual(Math.PI + 1e-9);
        const once = seenTurned(turnedBy(as, around + 2 * Math.PI, 0), at);
        const same = seenTurned(turnedBy(as, around, 0), at);
        for (const c of [0, 1, 2] as const) expect(once[c]).toBeCloseTo(same[c], 6);
      }),
    );
  });
});
