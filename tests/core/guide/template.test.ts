import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { redeclare, Template, templateOf } from '../../../src/core/guide/again/index.ts';
import { declarePiece } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { fold, PieceDeclaration } from '../../../src/core/job/index.ts';
import { AB, begunPhone, C, id, Phone, PIECE, RUN } from '../job/support.ts';

const A = id(10, 3);
const B = id(11, 3);

const counter = (space: number) => {
  let n = 0;
  return () => {
    n += 1;
    return id(n, space);
  };
};

const UUID = /[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-8[0-9a-f]{3}-[0-9a-f]{12}/g;

/** Pieces whose parts refer to each other at random; optional fields are sometimes there. */
const pieces: fc.Arbitrary<PieceDeclaration> = fc
  .record({ points: fc.integer({ min: 2, max: 6 }), seed: fc.array(fc.nat(1000), { minLength: 40, maxLength: 40 }) })
  .map(({ points: count, seed }) => {
    let at = 0;
    const pick = (of: number): number => (seed[at++ % seed.length] ?? 0) % of;
    const point = (): string => id(pick(count), 11);
    const reading = (n: number) => ({
      id: id(n, 12),
      slot: pick(2) ? `r${n}` : null,
      kind: pick(2) ? ('straight' as const) : ('height' as const),
      points: [point(), point()],
      needed: pick(2) === 1,
      ...(pick(2) ? { via: [point()] } : {}),
      ...(pick(2) ? { baseline: [point(), point()] } : {}),
      ...(pick(3) ? {} : { run: id(0, 13) }),
      ...(pick(3) ? {} : { obstruction: id(9, 14) }),
      ...(pick(3) ? {} : { when: { question: 'q', is: ['yes'] } }),
    });
    const readings = [0, 1, 2].map(reading);
    return {
      id: id(1, 10),
      kind: 'free',
      name: 'Piece',
      flat: pick(2) === 1,
      points: Array.from({ length: count }, (_, n) => ({
        id: id(n, 11),
        label: `P${n}`,
        slot: pick(2) ? `P${n}` : null,
        role: 'edge' as const,
        sides: [],
        nominal: pick(2) ? ([n, 2, 3] as [number, number, number]) : null,
        ...(pick(4) ? {} : { replaces: point() }),
      })),
      readings,
      runs: [{ id: id(0, 13), slot: null, points: [point(), point()], whole: id(pick(3), 12), needed: true }],
      shots: [{ slot: 's', points: [point()], needed: true }],
      questions: [{ slot: 'q', choices: ['yes', 'no'], needed: true }],
      boxes: [[point(), point(), point(), point()]],
      pairs: [[point(), point()]],
      walk: [...readings.map((one) => one.slot ?? one.id), id(0, 13), 's', 'q'],
      cautions: [{ slot: readings[0]?.slot ?? readings[0]?.id ?? 's', keys: ['footing'] }],
    };
  });

describe('a piece declared anew', () => {
  it('has no id of the old one, and is equal but for its ids: one new for each old', () => {
    fc.assert(
      fc.property(pieces, (piece) => {
        const made = redeclare(piece, counter(99));
        const before = JSON.stringify(piece);
        const after = JSON.stringify(made);
        const [old, fresh]: [string[], string[]] = [before.match(UUID) ?? [], after.match(UUID) ?? []];
        expect(fresh.filter((one) => old.includes(one))).toEqual([]);
        const back = new Map(fresh.map((one, index) => [one, old[index] ?? '']));
        expect(new Set(back.values()).size).toBe(new Set(fresh).size);
        expect(after.replace(UUID, (one) => back.get(one) ?? '')).toBe(before);
        expect(PieceDeclaration.safeParse(made).success).toBe(true);
      }),
    );
  });

  it('shares nothing with the old one that a later change could reach', () => {
    fc.assert(
      fc.property(pieces, (piece) => {
        const before = JSON.stringify(piece);
        const made = redeclare(piece, counter(99));
        for (const point of made.points) point.nominal?.splice(0, 1, 77);
        for (const reading of made.readings) reading.points.push('x');
        expect(JSON.stringify(piece)).toBe(before);
      }),
    );
  });
});

/** With every id under the name of its place in the text: two that are equal so far are the same piece. */
function unnamed(piece: PieceDeclaration): string {
  const names = new Map<string, string>();
  return JSON.stringify(PieceDeclaration.parse(piece)).replace(UUID, (one) => {
    if (!names.has(one)) names.set(one, `#${names.size}`);
    return names.get(one) ?? '';
  });
}

describe.each(guides)('a template of $kind', (guide) => {
  it('asks what the guide asked, whatever was measured', () => {
    const phone = new Phone();
    phone.does('job.open', { name: 'J. Sample', system: 'metric', fraction: 16 });
    phone.does('job.detail', { field: 'customer', value: 'J. Sample' });
    const piece = declarePiece(guide, 'Mine', counter(50));
    phone.does('piece.add', piece);
    for (const reading of piece.readings)
      phone.does('take.add', { reading: reading.id, text: '987654', unit: 'mm', value: 987654 });
    const made = templateOf(phone.entries, piece.id, { name: 'Mine', newId: counter(60) });
    expect(made && unnamed(made.piece)).toBe(unnamed(piece));
    const text = JSON.stringify(Template.parse(made));
    expect(text).not.toMatch(/987654|Sample|Sam/);
  });
});

describe('a template', () => {
  const kept = (phone: Phone) => {
    const made = templateOf(phone.entries, PIECE, { name: 'Kept', newId: counter(60) });
    if (!made) throw new Error('there is no such piece');
    return made.piece;
  };
  const labelled = (piece: PieceDeclaration, ids: readonly string[]): string[] =>
    ids.map((one) => piece.points.find((point) => point.id === one)?.label ?? '?');

  it('of a piece that is not there is none', () => {
    expect(templateOf(begunPhone().entries, id(77, 77), { name: 'x', newId: counter(60) })).toBeNull();
  });

  it('has what was added later, where it stands in the walk, and not what was dropped', () => {
    const phone = begunPhone();
    phone.does('point.add', {
      piece: PIECE,
      point: { id: C, label: 'P3', slot: null, role: 'edge', sides: [], nominal: null },
    });
    const reading = { id: id(30, 3), slot: null, kind: 'straight' as const, points: [A, C], needed: true };
    phone.does('reading.add', { piece: PIECE, reading, after: 'A-B' });
    phone.does('run.points', { run: RUN, points: [A, C, B] });
    phone.does('reading.drop', { reading: AB, reason: 'not needed' });
    phone.does('shot.add', { piece: PIECE, shot: { slot: 'more', points: [C], needed: false } });
    const piece = kept(phone);
    expect(piece.name).toBe('Kept');
    expect(piece.points.map(({ label }) => label)).toEqual(['A', 'B', 'P3']);
    expect(piece.readings.map(({ points }) => labelled(piece, points))).toEqual([['A', 'P3']]);
    expect(piece.runs).toMatchObject([{ slot: 'edge', whole: null }]);
    expect(labelled(piece, piece.runs[0]?.points ?? [])).toEqual(['A', 'P3', 'B']);
    expect(piece.walk).toEqual([piece.readings[0]?.id, 'edge', 'photo', 'berth', 'more']);
  });

  it('keeps what is asked under a condition, whatever was answered', () => {
    const phone = begunPhone();
    const when = { question: 'berth', is: ['lift'] };
    const reading = { id: id(34, 3), slot: 'lift-height', kind: 'straight' as const, points: [A, B], needed: true };
    phone.does('reading.add', { piece: PIECE, reading: { ...reading, when } });
    phone.does('question.answer', { piece: PIECE, slot: 'berth', choice: 'water', text: '' });
    expect(kept(phone).readings.map((one) => one.when)).toEqual([undefined, when]);
  });

  it('knows a mark that was moved as one mark, and asks each of its readings once', () => {
    const phone = begunPhone();
    const moved = { id: C, label: 'A moved', slot: null, role: 'corner' as const, sides: [], nominal: null };
    phone.does('point.add', { piece: PIECE, point: { ...moved, replaces: A } });
    const again = { id: id(30, 3), slot: null, kind: 'straight' as const, points: [C, B], needed: true };
    phone.does('reading.add', { piece: PIECE, reading: again });
    const piece = kept(phone);
    expect(piece.points.map(({ label }) => label)).toEqual(['A', 'B']);
    expect(piece.readings.map(({ slot }) => slot)).toEqual(['A-B']);
  });

  it('leaves the things in the way of this boat behind, with their places and sizes', () => {
    const phone = begunPhone();
    const cleat = { id: C, label: 'Cleat', slot: null, role: 'obstruction' as const, sides: [], nominal: null };
    phone.does('point.add', { piece: PIECE, point: cleat });
    phone.does('obstruction.add', { obstruction: id(40, 3), piece: PIECE, kind: 'cleat', label: 'Cleat', point: C });
    for (const [n, more] of [
      [41, { kind: 'straight' as const, points: [A, C] }],
      [42, { kind: 'size' as const, points: [], of: 'width' as const, obstruction: id(40, 3) }],
    ] as const)
      phone.does('reading.add', {
        piece: PIECE,
        reading: { id: id(n, 3), slot: null, needed: true, ...more, points: [...more.points] },
      });
    const piece = kept(phone);
    expect(piece.points.map(({ label }) => label)).toEqual(['A', 'B']);
    expect(piece.readings.map(({ slot }) => slot)).toEqual(['A-B']);
    expect(piece.walk).toEqual(['A-B', 'edge', 'photo', 'berth']);
  });

  it('asks what this piece shared with another one', () => {
    const phone = begunPhone();
    const [first] = fold(phone.entries).pieces;
    const shared = { ...declarePieceLike(phone), id: id(70, 3), readings: [], runs: [], walk: ['photo', 'berth'] };
    phone.does('piece.add', shared);
    const made = templateOf(phone.entries, shared.id, { name: 'Second', newId: counter(60) });
    expect(first?.id).toBe(PIECE);
    expect(made?.piece.readings.map(({ slot }) => slot)).toEqual(['A-B']);
    expect(made?.piece.walk).toEqual(['A-B', 'photo', 'berth']);
  });
});

/** The small piece as it was declared. */
const declarePieceLike = (phone: Phone): PieceDeclaration =>
  PieceDeclaration.parse(phone.entries.find(({ kind }) => kind === 'piece.add')?.payload);
