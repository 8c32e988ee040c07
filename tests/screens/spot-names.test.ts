import { describe, expect, it } from 'vitest';
import type { SheetPoint } from '../../src/core/job/index.ts';
import { heightsOf, type Spot, withNames } from '../../src/screens/bench/drawing/spot-names.ts';
import { type Flat, nameSpot } from '../../src/screens/parts/drawing/project.ts';

const WIDTH = 360;
const named = (label: string, at: Flat): SheetPoint => ({
  id: `${label} ${at}`,
  label,
  slot: null,
  role: 'corner',
  sides: [],
  nominal: null,
  pieces: [],
  replacedBy: null,
});
const spot = (label: string, at: Flat): Omit<Spot, 'label'> => ({
  point: named(label, at),
  at,
  name: nameSpot(at, [WIDTH / 2, 100], 20),
  height: '1900 mm',
  heightX: 0,
  heightY: 0,
  heightReading: null,
  measured: true,
  floats: false,
});

describe('names of points on a drawing', () => {
  it('stand each for itself where points lie apart', () => {
    const spots = withNames([spot('A', [100, 100]), spot('B', [160, 100])], WIDTH);
    expect(spots.map(({ label }) => label)).toEqual(['A', 'B']);
    expect(heightsOf(spots)).toBe(2);
  });

  it('stand together, without heights, where one hides the other', () => {
    const spots = withNames([spot('A', [100, 100]), spot('B', [106, 103]), spot('C', [200, 100])], WIDTH);
    expect(spots.map(({ label }) => label)).toEqual(['A, B', '', 'C']);
    expect(heightsOf(spots)).toBe(1);
  });

  it('have their heights beyond them, never on the point', () => {
    for (const y of [20, 60, 99, 101, 140, 180]) {
      const [one] = withNames([spot('A', [WIDTH / 2, y])], WIDTH);
      expect(Math.abs((one?.heightY ?? y) - y)).toBeGreaterThan(30);
    }
  });

  it('keep their heights inside the frame', () => {
    for (const x of [30, 100, 180, 260, 335]) {
      const [one] = withNames([spot('A', [x, 100])], WIDTH);
      const wide = 9 * 8.6;
      const { anchor } = one?.name ?? { anchor: 'middle' };
      const left = (one?.heightX ?? 0) - (anchor === 'end' ? wide : anchor === 'middle' ? wide / 2 : 0);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + wide).toBeLessThanOrEqual(WIDTH);
    }
  });
});
