import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/core/check/index.ts';
import { Job, type PieceSpec, pieceId, pointId, readingId } from './build.ts';

type Place = [number, number, number];
const POINTS: Record<string, Place> = { A: [0, 0, 0], B: [1000, 0, 0], C: [2000, 0, 0], D: [1000, 900, 400] };

/** A reading as the engine is given it. */
function given(spec: PieceSpec, values: Record<string, number>, name: string) {
  const { pieces } = judge(
    new Job()
      .piece({ points: POINTS, ...spec })
      .takes(values)
      .sheet(),
  );
  return pieces.get(pieceId())?.network.readings.find(({ id }) => id === readingId(name));
}

describe('what the engine is given', () => {
  // The frame's tolerances of facts: 5 mm, 10 mm, 5 mm, 5 mm, 3 mm; common practice, no source.
  it.each([
    ['centre', ['A'], 5],
    ['mirror', ['A', 'B'], 10],
    ['level', ['A', 'B'], 5],
    ['plumb', ['A', 'D'], 5],
    ['flat', ['A', 'B', 'C', 'D'], 3],
  ] as const)("a declared fact has its own tolerance, not the tape's: %s", (kind, points, sigma) => {
    const spec = { readings: [{ name: 'fact', kind, points: [...points] }] };
    expect(given(spec, { fact: 0 }, 'fact')?.sigma).toBe(sigma);
  });
  it('a tolerance that was stated counts', () => {
    const job = new Job().piece({ points: POINTS, readings: [{ name: 'fact', kind: 'level', points: ['A', 'B'] }] });
    job.take('fact', 0, { sigma: 2 });
    const [one] = judge(job.sheet()).pieces.get(pieceId())?.network.readings ?? [];
    expect(one?.sigma).toBe(2);
  });

  const along = (whole: 'straight' | 'girth'): PieceSpec => ({
    readings: [
      { name: 'whole', kind: whole, points: ['A', 'C'], run: 'edge' },
      { name: 'first', kind: 'running', points: ['A', 'B'], run: 'edge' },
      { name: 'second', kind: 'running', points: ['A', 'C'], run: 'edge' },
    ],
    runs: [{ name: 'edge', points: ['A', 'B', 'C'], whole: 'whole' }],
  });
  const values = { whole: 2000, first: 1000, second: 2000 };
  it('stations along a straight run are straight distances', () => {
    expect(given(along('straight'), values, 'second')).toMatchObject({ kind: 'running' });
    expect(given(along('straight'), values, 'second')).not.toHaveProperty('shape');
  });
  it('stations along a run that bends are only never shorter than straight across, by way of the points before', () => {
    expect(given(along('girth'), values, 'second')).toMatchObject({
      shape: 'unknown',
      points: ['A', 'B', 'C'].map(pointId),
    });
  });
  it('a bend is no contradiction', () => {
    const bent: Record<string, Place> = { A: [0, 0, 0], B: [1000, 700, 0], C: [2000, 0, 0] };
    const spec: PieceSpec = along('girth');
    const job = new Job().piece({
      ...spec,
      points: bent,
      flat: true,
      readings: [...(spec.readings ?? []), 'A-B', 'B-C', 'A-C'],
    });
    const half = Math.hypot(1000, 700);
    job.takes({ 'A-B': half, 'B-C': half, 'A-C': 2000, whole: 2500, first: half + 20, second: 2480 });
    expect(job.all().filter(({ severity }) => severity === 'doubt')).toEqual([]);
  });
});
