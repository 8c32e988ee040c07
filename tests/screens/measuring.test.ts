import { afterEach, describe, expect, it } from 'vitest';
import type { SpotName } from '../../src/core/cloth/index.ts';
import {
  chooseRun,
  measuring,
  startMeasuring,
  stopMeasuring,
  tapSpot,
} from '../../src/screens/bench/state/measuring.ts';

const point = (id: string): SpotName => ({ on: 'point', id });
const taken = (): (string | null)[] => measuring.value?.spots.map((spot) => spot?.id ?? null) ?? [];

afterEach(stopMeasuring);

describe('taps on the drawing', () => {
  it('do nothing while nobody measures', () => {
    tapSpot(point('A'));
    expect(measuring.value).toBeNull();
  });

  it('take one end after the other, and the next one begins anew', () => {
    startMeasuring('distance');
    for (const id of ['A', 'B']) tapSpot(point(id));
    expect(taken()).toEqual(['A', 'B']);
    tapSpot(point('C'));
    expect(taken()).toEqual(['C', null]);
  });

  it('let go of what is tapped once more', () => {
    startMeasuring('angle');
    for (const id of ['A', 'B', 'A', 'C']) tapSpot(point(id));
    expect(taken()).toEqual(['C', 'B', null]);
  });

  it('take an edge where an edge is measured, and nothing where the whole is', () => {
    startMeasuring('edge');
    tapSpot(point('A'));
    chooseRun('edge');
    expect(measuring.value).toEqual({ kind: 'edge', spots: [], run: 'edge' });
    startMeasuring('area');
    tapSpot(point('A'));
    expect(taken()).toEqual([]);
  });
});
