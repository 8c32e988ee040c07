import { describe, expect, it } from 'vitest';
import { judge, solutionOf } from '../../../src/core/check/index.ts';
import { type Place, sketchPiece } from '../../../src/core/cloth/index.ts';
import { distances, Job, type PieceSpec, pieceId, pointId } from '../check/build.ts';

/** A curtain across the stern: port top, starboard top, starboard bottom, port bottom, middle of the bottom. */
const across: Record<string, [number, number, number]> = {
  A: [-300, 1000, 1900],
  B: [-300, -1000, 1900],
  C: [-300, -1080, 700],
  D: [-300, 1080, 700],
  T: [-300, 20, 640],
};
/** The same along the port side, the bow where starboard was. */
const alongside = Object.fromEntries(
  Object.entries(across).map(([label, [x, y, z]]) => [label, [-y, 1200 - x, z] as [number, number, number]]),
);

const measured = (points: typeof across, toward: string) => {
  const lengths = distances(points);
  const straights = Object.keys(lengths).filter((name) => name !== 'B-T');
  const spec: PieceSpec = { flat: true, points, readings: [...straights] };
  const job = new Job();
  job.piece(spec);
  for (const name of straights) job.take(name, lengths[name] ?? 0);
  const reading = { id: pointId('off'), slot: null, kind: 'out', points: [pointId('T')], needed: true, toward };
  job.add('reading.add', { piece: pieceId(), reading: { ...reading, baseline: [pointId('D'), pointId('C')] } });
  job.add('take.add', { reading: reading.id, text: '60', unit: 'mm', value: 60 });
  return job;
};

describe.each([
  ['across the boat', across],
  ['along it', alongside],
])('a flat piece that hangs %s', (_, points) => {
  it('is solved in its own plane and drawn where it hangs', () => {
    const job = measured(points, 'below');
    const sheet = job.sheet();
    const judgement = judge(sheet).pieces.get(pieceId());
    expect(judgement).toMatchObject({ adjustment: { state: 'solved', solution: { dimension: 2, doubted: false } } });
    const solution = judgement && solutionOf(judgement.adjustment);
    const adjusted = new Map(solution?.points.map(({ id, position }) => [id, position]));
    for (const places of [sketchPiece(sheet, pieceId(), adjusted).places, sketchPiece(sheet, pieceId()).places])
      for (const [label, at] of Object.entries(points)) {
        const place: Place = places.get(pointId(label)) ?? [0, 0, 0];
        for (const axis of [0, 1, 2] as const) expect(Math.abs(place[axis] - (at[axis] ?? 0)), label).toBeLessThan(4);
      }
  });

  it('is doubted where the offset counts the other way', () => {
    const job = measured(points, 'above');
    expect(judge(job.sheet()).findings.map(({ rule }) => rule)).toContain('reading-doubted');
  });
});

it('a height over a string is no height over the frame', () => {
  const job = new Job();
  const points: PieceSpec['points'] = { A: [0, 0, 500], B: [2000, 0, 500], G: [1000, 0, 700] };
  job.piece({ points, readings: [{ name: 'h', kind: 'height', points: ['G'], baseline: ['A', 'B'] }] });
  job.take('h', 180);
  expect(sketchPiece(job.sheet(), pieceId()).places.get(pointId('G'))).toEqual([1000, 0, 700]);
});
