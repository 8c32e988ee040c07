import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../../src/core/geometry/index.ts';
import { Job, type PieceSpec, pieceId } from '../check/build.ts';

const labels = (spec: PieceSpec): { points: string[]; open: boolean } | null => {
  const job = new Job();
  job.piece(spec);
  const sheet = job.sheet();
  const found = outlineOf(sheet, pieceId());
  const name = new Map(sheet.points.map(({ id, label }) => [id, label]));
  return found && { points: found.points.map((id) => name.get(id) ?? ''), open: found.open };
};
const four = { A: null, B: null, C: null, D: null };

describe('the line round a piece', () => {
  it('is nothing for a piece with two points', () => {
    expect(labels({ points: { A: null, B: null } })).toBeNull();
  });

  it('is its box, or its corners in the order they were declared', () => {
    expect(labels({ points: four, boxes: [['A', 'B', 'D', 'C']] })).toEqual({
      points: ['A', 'B', 'D', 'C'],
      open: false,
    });
    expect(labels({ points: four })).toEqual({ points: ['A', 'B', 'C', 'D'], open: false });
  });

  it('leaves marks out', () => {
    const roles = { W: 'mark' } as const;
    expect(labels({ points: { W: null, ...four }, roles })?.points).toEqual(['A', 'B', 'C', 'D']);
  });

  it('is one edge, open from its end back to its start', () => {
    expect(labels({ points: four, runs: [{ name: 'edge', points: ['B', 'A', 'D'] }] })).toEqual({
      points: ['B', 'A', 'D'],
      open: true,
    });
  });

  it('joins edges that meet, whichever way and in whatever order they were declared', () => {
    const ring = ['A', 'B', 'C', 'D', 'E', 'F'];
    const points = Object.fromEntries(ring.map((label) => [label, null]));
    const sides = ring.map((label, i) => [label, ring[(i + 1) % ring.length] ?? '']);
    fc.assert(
      fc.property(
        fc.shuffledSubarray(sides, { minLength: 6 }),
        fc.array(fc.boolean(), { minLength: 6 }),
        (all, turn) => {
          const runs = all.map((side, i) => ({ name: `run${i}`, points: turn[i] ? [...side].reverse() : side }));
          const found = labels({ points, runs });
          expect(found?.open).toBe(false);
          const at = found?.points.indexOf('A') ?? -1;
          const turned = [...(found?.points.slice(at) ?? []), ...(found?.points.slice(0, at) ?? [])];
          const either = [turned, [turned[0] ?? '', ...turned.slice(1).reverse()]];
          expect(either).toContainEqual(ring);
        },
      ),
    );
  });
});
