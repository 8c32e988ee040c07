import { describe, expect, it } from 'vitest';
import { judge, solutionOf } from '../../../src/core/check/index.ts';
import { measuredAsDrawn } from '../../../src/core/cloth/as-drawn.ts';
import { declarePiece } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { sisterOf } from '../../../src/core/job/again/index.ts';
import { fold, type PointRole } from '../../../src/core/job/index.ts';
import { findings as texts } from '../../../src/text/en/findings.ts';
import { Job, owner, type PieceSpec, pieceId, readingId, uuid } from './build.ts';

const key = 'unlike-sister';
const role = (points: string[], of: PointRole) => Object.fromEntries(points.map((point) => [point, of]));

const spec: PieceSpec = {
  points: { A: null, B: null, C: null, D: null, W: null, P: null, Q: null },
  roles: { ...role(['A', 'B', 'C', 'D'], 'mount'), W: 'mark', P: 'edge', Q: 'edge' },
  readings: ['A-B', 'B-C', 'C-D', 'A-D', 'W-A', 'P-Q', { name: 'lean', kind: 'lean', points: ['A'] }],
};

function job(expected: Record<string, number>, taken: Record<string, number>, options = {}): Job {
  const made = new Job(options).piece(spec);
  for (const [reading, value] of Object.entries(expected))
    made.add('reading.expect', { reading: readingId(reading), value, text: String(value), from: 'Perla' });
  return made.takes(taken);
}

describe(key, () => {
  it('says nothing where no sister boat was measured', () => {
    expect(job({}, { 'A-B': 1000 }).of(key)).toEqual([]);
  });
  it('says nothing before anything was read', () => {
    expect(job({ 'A-B': 1000 }, {}).of(key)).toEqual([]);
  });
  it('says nothing of a boat that is the same', () => {
    expect(job({ 'A-B': 1000 }, { 'A-B': 1000 }).of(key)).toEqual([]);
  });
  it('says nothing inside the tolerance of a corner, 12 mm', () => {
    expect(job({ 'A-B': 1000 }, { 'A-B': 1012 }).of(key)).toEqual([]);
    expect(job({ 'A-B': 1000 }, { 'A-B': 988 }).of(key)).toEqual([]);
  });
  // 3.3 · √2 · (1 + 0.3 · 8) = 15.9 mm.
  it('says nothing of what two tapes over a long span explain', () => {
    expect(job({ 'A-B': 8000 }, { 'A-B': 8015 }).of(key)).toEqual([]);
    expect(job({ 'A-B': 8000 }, { 'A-B': 8017 }).of(key)).toHaveLength(1);
  });
  it('says nothing of a tape from a mark: marks lie where somebody stuck them', () => {
    expect(job({ 'W-A': 1000 }, { 'W-A': 1400 }).of(key)).toEqual([]);
  });
  it('gives points that people choose along an edge the room of two sides that are alike', () => {
    expect(job({ 'P-Q': 1000 }, { 'P-Q': 1025 }).of(key)).toEqual([]);
    expect(job({ 'P-Q': 1000 }, { 'P-Q': 1030 }).of(key)).toHaveLength(1);
  });
  it('gives an owner twice the room', () => {
    expect(job({ 'A-B': 1000 }, { 'A-B': 1023 }, { who: owner }).of(key)).toEqual([]);
    expect(job({ 'A-B': 1000 }, { 'A-B': 1025 }, { who: owner }).of(key)).toHaveLength(1);
  });
  it('says nothing while two looks differ: that is settled first', () => {
    expect(job({ 'A-B': 1000 }, { 'A-B': 1100 }).of(key)).toHaveLength(1);
    const twice = job({ 'A-B': 1000 }, { 'A-B': 1100 });
    twice.take('A-B', 1000);
    expect(twice.of(key)).toEqual([]);
  });
  it('says nothing of a take that was struck out', () => {
    const made = job({ 'A-B': 1000 }, {});
    made.add('take.strike', { take: made.take('A-B', 1300), reason: 'misread' });
    expect(made.of(key)).toEqual([]);
  });
  it('doubts a reading that differs by more, and rests on its takes', () => {
    const made = job({ 'A-B': 1000, 'B-C': 900 }, { 'A-B': 1040, 'B-C': 900 });
    expect(made.of(key)).toMatchObject([
      {
        severity: 'doubt',
        slot: 'A-B',
        subjects: [{ on: 'reading', id: readingId('A-B') }],
        numbers: { about: 'reading', expected: 1000, measured: 1040, difference: 40, allowed: 12, from: 'Perla' },
      },
    ]);
    const before = made.of(key)[0]?.basis;
    made.take('A-B', 1041);
    expect(made.of(key)).toMatchObject([{ numbers: { takes: 2 } }]);
    expect(made.of(key)[0]?.basis).not.toBe(before);
  });
  it('goes by what the shop tolerates', () => {
    const made = job({ 'A-B': 1000 }, { 'A-B': 1040 });
    made.add('job.shop', { tolerance: { line: 20, corner: 45 } });
    expect(made.of(key)).toEqual([]);
  });
  it('compares angles by what the angle gauge can tell', () => {
    const made = job({ lean: (15 * Math.PI) / 180 }, {});
    const degrees = (text: string) =>
      made.add('take.add', {
        reading: readingId('lean'),
        text,
        unit: 'deg',
        value: (Number(text) * Math.PI) / 180,
      });
    const first = degrees('18');
    expect(made.of(key)).toEqual([]);
    made.add('take.strike', { take: first, reason: 'misread' });
    degrees('30');
    expect(made.of(key)).toMatchObject([{ numbers: { quantity: 'angle' } }]);
  });
  it('says once of the piece that it is no sister, where most of it differs', () => {
    const expected = { 'A-B': 1000, 'B-C': 1000, 'C-D': 1000, 'A-D': 1000 };
    const made = job(expected, { 'A-B': 1100, 'B-C': 1100, 'C-D': 1100, 'A-D': 1000 });
    expect(made.of(key)).toMatchObject([
      { subjects: [{ on: 'piece', id: pieceId() }], numbers: { about: 'piece', differ: 3, compared: 4 } },
    ]);
  });
  it('says it of each, where more than half is the same', () => {
    const expected = { 'A-B': 1000, 'B-C': 1000, 'C-D': 1000, 'A-D': 1000 };
    expect(job(expected, { 'A-B': 1100, 'B-C': 1100, 'C-D': 1000, 'A-D': 1000 }).of(key)).toHaveLength(2);
  });
  it('finds the same in inches as in millimetres', () => {
    const found = (['metric', 'imperial'] as const).map((system) =>
      job({ 'A-B': 1000, 'B-C': 900 }, { 'A-B': 1040, 'B-C': 900 }, { system })
        .of(key)
        .map(({ id }) => id),
    );
    expect(found[0]).toEqual(found[1]);
    expect(found[0]).toHaveLength(1);
  });
  it('does not tell whoever reads the tape again what the sister had, nor which way it differs', () => {
    for (const [taken, again] of [
      [1040, null],
      [960, null],
      [1040, 1041],
    ] as const) {
      const made = job({ 'A-B': 1000 }, { 'A-B': taken });
      if (again !== null) made.take('A-B', again);
      const [finding] = made.of(key);
      if (!finding) throw new Error('nothing was found');
      const show = (shown: string) => `<${shown}>`;
      const text = texts[key]({ names: ['A–B'], show, numbers: finding.numbers });
      expect(text).toContain('A–B');
      expect(text).not.toMatch(/[<\d]|longer|shorter|more|less/);
    }
  });
});

describe('a sister boat', () => {
  const options = (space: string) => {
    let n = 0;
    return {
      system: 'metric',
      fraction: 16,
      at: '2026-05-04T09:00:00Z',
      newId: () => uuid(`${space} ${n++}`),
    } as const;
  };
  const [guide] = guides.filter(({ kind }) => kind === 'tension-shade');
  if (!guide) throw new Error('there is no guide of a shade');
  const piece = declarePiece(guide, 'Shade', options('piece').newId);
  // A boat whose starboard side stands a little higher and further forward than the guide's.
  for (const point of piece.points) if (point.nominal && point.sides.includes('starboard')) point.nominal[2] += 14;
  const first = fold(measuredAsDrawn(piece, options('first')));
  const places = new Map(
    (solutionOf(judge(first).pieces.get(piece.id)?.adjustment ?? never())?.points ?? []).map(({ id, position }) => [
      id,
      [...position] as [number, number, number],
    ]),
  );
  const start = sisterOf(measuredAsDrawn(piece, options('first')), {
    newId: options('again').newId,
    from: 'Perla',
    places,
  });
  const [again] = start.pieces;
  if (!again) throw new Error('the sister has no piece');
  /** The sister measured on the shape the first boat was found to have, with some readings longer by mm. */
  const measured = (longer: Record<string, number>) => {
    const entries = measuredAsDrawn(again, options('second'));
    const made = new Job();
    for (const { kind, payload } of entries.slice(1)) {
      const slot = again.readings.find(({ id }) => id === payload.reading)?.slot ?? '';
      made.add(
        kind,
        kind === 'take.add' ? { ...payload, value: Number(payload.value) + (longer[slot] ?? 0) } : payload,
      );
    }
    for (const known of start.expected) made.add('reading.expect', known);
    return judge(made.sheet());
  };

  it('that is built alike is solved on the shape of the first, and nothing is doubted', () => {
    const { findings, pieces } = measured({});
    expect(start.expected.length).toBeGreaterThanOrEqual(10);
    expect(pieces.get(again.id)).toMatchObject({ complete: true, slips: null, adjustment: { state: 'solved' } });
    expect(findings.filter(({ rule }) => rule === key)).toEqual([]);
  });

  it('shows a slip in the very reading, before anything else could', () => {
    const { findings } = measured({ 'A-B': 50 });
    expect(findings.filter(({ rule }) => rule === key)).toMatchObject([{ slot: 'A-B', numbers: { difference: 50 } }]);
  });
});

function never(): never {
  throw new Error('the first boat has no shape');
}
