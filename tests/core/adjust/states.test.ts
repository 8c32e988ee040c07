import { describe, expect, it } from 'vitest';
import {
  adjust,
  type Network,
  type NetworkPoint,
  type NetworkReading,
  type Side,
} from '../../../src/core/adjust/index.ts';

type Xyz = readonly [number, number, number];

function tapes(truth: Record<string, Xyz>, pairs: readonly string[]): NetworkReading[] {
  return pairs.map((pair) => {
    const [a = '', b = ''] = pair.split('-');
    const [p, q] = [truth[a] ?? [0, 0, 0], truth[b] ?? [0, 0, 0]];
    const value = Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
    return { id: pair, kind: 'straight', points: [a, b], value, sigma: 1 };
  });
}

const named = (
  ids: readonly string[],
  sides: Record<string, Side[]> = {},
  marks: readonly string[] = [],
): NetworkPoint[] =>
  ids.map((id) => ({
    id,
    label: id,
    ...(sides[id] === undefined ? {} : { sides: sides[id] }),
    ...(marks.includes(id) ? { role: 'mark' as const } : {}),
  }));

/** A flat box, 3 m by 2 m. */
const box: Record<string, Xyz> = { A: [0, 0, 0], B: [3000, 0, 0], C: [3000, 2000, 0], D: [0, 2000, 0] };
const boxIds = ['A', 'B', 'C', 'D'];

describe('not enough readings', () => {
  it('four sides of a box leave one way to sheer', () => {
    const a = adjust({ dimension: 2, points: named(boxIds), readings: tapes(box, ['A-B', 'B-C', 'C-D', 'D-A']) });
    expect(a.state).toBe('not-enough-readings');
    if (a.state !== 'not-enough-readings') return;
    expect(a.ways).toBe(1);
    expect(a.floating.length).toBeGreaterThan(0);
    expect(a.solution.globalTest.verdict).toBe('cannot tell');
  });
  it('one diagonal fixes it, with nothing to spare and nothing checked', () => {
    const a = adjust({
      dimension: 2,
      points: named(boxIds),
      readings: tapes(box, ['A-B', 'B-C', 'C-D', 'D-A', 'A-C']),
    });
    // Folding D over A-C fits as well: without declared sides that cannot be told.
    expect(a.state).toBe('two-shapes');
    if (a.state !== 'two-shapes') return;
    expect(a.solution.globalTest.verdict).toBe('cannot tell');
    expect(a.solution.readings.every((r) => r.control === 'unchecked')).toBe(true);
    expect(a.tellsApart[0]).toMatchObject({ from: 'B', to: 'D' });
  });
  it('the second diagonal checks all of them', () => {
    const pairs = ['A-B', 'B-C', 'C-D', 'D-A', 'A-C', 'B-D'];
    const a = adjust({ dimension: 2, points: named(boxIds), readings: tapes(box, pairs) });
    expect(a.state).toBe('solved');
    if (a.state !== 'solved') return;
    expect(a.solution.freedom).toBe(1);
    expect(a.solution.readings.every((r) => r.control === 'checked')).toBe(true);
    expect(a.solution.doubted).toBe(false);
  });
  it('in space the same six tapes have nothing to spare', () => {
    const twisted = { ...box, C: [3000, 2000, 300] as const };
    const pairs = ['A-B', 'B-C', 'C-D', 'D-A', 'A-C', 'B-D'];
    const a = adjust({ dimension: 3, points: named(boxIds), readings: tapes(twisted, pairs) });
    expect(a.state).toBe('solved');
    if (a.state !== 'solved') return;
    expect(a.solution.freedom).toBe(0);
    expect(a.solution.globalTest.verdict).toBe('cannot tell');
    expect(a.solution.handedness).toBe('open');
  });
  it('a hanging point is named, and the rest is judged without it', () => {
    const truth = { ...box, E: [1500, 3000, 0] as const };
    const pairs = ['A-B', 'B-C', 'C-D', 'D-A', 'A-C', 'B-D', 'A-E'];
    const a = adjust({ dimension: 2, points: named([...boxIds, 'E']), readings: tapes(truth, pairs) });
    expect(a.state).toBe('not-enough-readings');
    if (a.state !== 'not-enough-readings') return;
    expect(a.floating).toEqual([{ point: 'E', ways: 1 }]);
    expect(a.solution.points.find((p) => p.id === 'E')?.relative95).toBeNull();
    expect(a.solution.points.filter((p) => p.state === 'fixed').map((p) => p.id)).toEqual(boxIds);
    expect(a.solution.readings.find((r) => r.id === 'A-B')?.control).toBe('checked');
    expect(a.solution.readings.find((r) => r.id === 'A-E')?.control).toBe('unchecked');
  });
  it('points nobody measured float in every way', () => {
    const a = adjust({ dimension: 3, points: named(['A', 'B', 'C']), readings: [] });
    expect(a.state).toBe('not-enough-readings');
  });
  it('a network of known points only is solved', () => {
    const points = named(['A']).map((p) => ({ ...p, known: [1, 2, 3] as const }));
    expect(adjust({ dimension: 3, points, readings: [] }).state).toBe('solved');
  });
});

describe('singular', () => {
  it('a point in line with the two marks it was taped from moves sideways unfelt', () => {
    const a = adjust({
      dimension: 2,
      points: [
        { id: 'A', label: 'A', known: [0, 0, 0] },
        { id: 'B', label: 'B', known: [1000, 0, 0] },
        { id: 'P', label: 'P', nominal: [1700, 0, 0] },
      ],
      readings: [
        { id: 'a', kind: 'straight', points: ['A', 'P'], value: 1700, sigma: 1 },
        { id: 'b', kind: 'straight', points: ['B', 'P'], value: 700, sigma: 1 },
      ],
    });
    expect(a.state).toBe('singular');
    if (a.state !== 'singular') return;
    expect(a.floating).toEqual([{ point: 'P', ways: 1 }]);
  });
});

describe('mirror images', () => {
  const truth: Record<string, Xyz> = {
    W: [0, 700, 0],
    V: [0, -700, 0],
    P: [900, 1000, 0],
    Q: [1100, -900, 0],
    T: [2000, 100, 0],
  };
  const pairs = ['W-V', 'P-W', 'P-V', 'Q-W', 'Q-V', 'T-W', 'T-V'];
  const ids = ['W', 'V', 'P', 'Q', 'T'];
  const marks = ['W', 'V'];
  it('points from two marks only may each lie on either side: says so and names the tape', () => {
    const a = adjust({ dimension: 2, points: named(ids, {}, marks), readings: tapes(truth, pairs) });
    expect(a.state).toBe('two-shapes');
    if (a.state !== 'two-shapes') return;
    expect(a.shapes.length).toBeGreaterThan(1);
    expect(a.tellsApart.length).toBeGreaterThan(0);
    const [tape] = a.tellsApart;
    expect(pairs).not.toContain(`${tape?.from}-${tape?.to}`);
  });
  it('declared sides settle them', () => {
    const sides: Record<string, Side[]> = {
      W: ['port'],
      V: ['starboard'],
      P: ['forward'],
      Q: ['forward'],
      T: ['forward'],
    };
    const a = adjust({ dimension: 2, points: named(ids, sides, marks), readings: tapes(truth, pairs) });
    expect(a.state).toBe('solved');
    if (a.state !== 'solved') return;
    expect(a.solution.handedness).toBe('sides');
    expect(a.solution.wrongSides).toEqual([]);
    const place = (id: string) => a.solution.points.find((p) => p.id === id)?.position ?? [0, 0, 0];
    for (const id of ['P', 'Q', 'T']) expect(place(id)[0]).toBeGreaterThan(place('W')[0]);
    expect(place('P')[1]).toBeGreaterThan(place('Q')[1]);
  });
  it('a gap between neighbours tells one point apart from its image', () => {
    const a = adjust({
      dimension: 2,
      points: named(['W', 'V', 'P', 'T'], {}, marks),
      readings: tapes(truth, ['W-V', 'P-W', 'P-V', 'T-W', 'T-V', 'P-T']),
    });
    expect(a.state).toBe('solved');
    if (a.state !== 'solved') return;
    expect(a.solution.handedness).toBe('open');
  });
  it('a group that hangs on two points is folded as one', () => {
    const two: Record<string, Xyz> = { ...truth, X: [-900, 900, 0], Y: [-1000, -800, 0] };
    const all = ['W-V', 'P-W', 'P-V', 'T-W', 'T-V', 'P-T', 'X-W', 'X-V', 'Y-W', 'Y-V', 'X-Y'];
    const a = adjust({
      dimension: 2,
      points: named(['W', 'V', 'P', 'T', 'X', 'Y'], {}, marks),
      readings: tapes(two, all),
    });
    expect(a.state).toBe('two-shapes');
    if (a.state !== 'two-shapes') return;
    expect(a.shapes).toHaveLength(2);
  });
  it('a point above three marks in space, settled by its side', () => {
    const t: Record<string, Xyz> = {
      A: [0, 900, 0],
      B: [0, -900, 0],
      C: [2000, 0, 0],
      P: [700, 100, 800],
      Q: [900, -200, 500],
    };
    const net = (side: Side): Network => ({
      dimension: 3,
      points: named(
        ['A', 'B', 'C', 'P', 'Q'],
        { A: ['port', 'aft'], B: ['starboard', 'aft'], C: ['forward'], P: [side], Q: [side] },
        ['A', 'B', 'C'],
      ),
      readings: tapes(t, ['A-B', 'B-C', 'A-C', 'P-A', 'P-B', 'P-C', 'Q-A', 'Q-B', 'Q-C']),
    });
    for (const side of ['above', 'below'] as const) {
      const a = adjust(net(side));
      expect(a.state).toBe('solved');
      if (a.state !== 'solved') continue;
      const p = a.solution.points.find((q) => q.id === 'P');
      expect(p?.position[2]).toBeCloseTo(side === 'above' ? 800 : -800, 6);
      expect(a.solution.wrongSides).toEqual([]);
    }
  });
});

describe('girth is a one-sided check', () => {
  const pairs = ['A-B', 'B-C', 'C-D', 'D-A', 'A-C', 'B-D'];
  const withGirth = (value: number) =>
    adjust({
      dimension: 2,
      points: named(boxIds),
      readings: [...tapes(box, pairs), { id: 'g', kind: 'girth', points: ['A', 'B', 'C'], value, sigma: 5 }],
    });
  it('longer than its chords is always possible', () => {
    const a = withGirth(5600);
    expect(a.state === 'solved' && a.solution.oneSided[0]?.impossible).toBe(false);
    expect(a.state === 'solved' && a.solution.doubted).toBe(false);
    expect(a.state === 'solved' && a.solution.readings.some((r) => r.id === 'g')).toBe(false);
  });
  it('a little shorter is within its tolerance, much shorter cannot be', () => {
    const near = withGirth(4990);
    expect(near.state === 'solved' && near.solution.oneSided[0]?.impossible).toBe(false);
    const far = withGirth(4900);
    expect(far.state === 'solved' && far.solution.oneSided[0]?.impossible).toBe(true);
    expect(far.state === 'solved' && far.solution.doubted).toBe(true);
  });
});
