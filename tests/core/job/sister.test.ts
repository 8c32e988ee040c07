import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { sisterOf } from '../../../src/core/job/again/index.ts';
import { type Entry, fold, payloads } from '../../../src/core/job/index.ts';
import { AB, begunPhone, C, id, logbooks, Phone, PIECE } from './support.ts';

// Counted in logbooks, not in seconds.
vi.setConfig({ testTimeout: 60_000 });

const A = id(10, 3);
const B = id(11, 3);
const counter = () => {
  let n = 0;
  return () => {
    n += 1;
    return id(n, 88);
  };
};
const sister = (entries: readonly Entry[]) => sisterOf(entries, { newId: counter(), from: 'Perla' });

/** The job a start amounts to. */
function begun(entries: readonly Entry[]): Phone {
  const { pieces, obstructions, expected } = sister(entries);
  const phone = new Phone();
  phone.does('job.open', { name: 'Sister', system: 'imperial', fraction: 16 });
  for (const piece of pieces) phone.does('piece.add', piece);
  for (const thing of obstructions) phone.does('obstruction.add', thing);
  for (const known of expected) phone.does('reading.expect', known);
  return phone;
}

const UUID = /[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-8[0-9a-f]{3}-[0-9a-f]{12}/g;

describe('a job for a sister boat', () => {
  it('never has an id of the first, a take, a picture, an answer or a person of it', () => {
    fc.assert(
      fc.property(logbooks, (phones) => {
        for (const { entries } of phones) {
          const start = sister(entries);
          const old = new Set(JSON.stringify(entries).match(UUID));
          expect((JSON.stringify(start).match(UUID) ?? []).filter((one) => old.has(one))).toEqual([]);
          const sheet = fold(begun(entries).entries);
          expect(sheet.readings.flatMap(({ takes }) => takes)).toEqual([]);
          expect([sheet.photos, sheet.asks, sheet.notes, sheet.clearances, sheet.carried]).toEqual([
            [],
            [],
            [],
            [],
            [],
          ]);
          expect(sheet.questions.map(({ choice }) => choice).filter((choice) => choice !== null)).toEqual([]);
          expect(JSON.stringify(start)).not.toContain('Sam');
        }
      }),
      { numRuns: 40 },
    );
  });

  it('asks what the first one asks, point by point and step by step', () => {
    fc.assert(
      fc.property(logbooks, ([phone]) => {
        if (!phone) return;
        const [before, after] = [fold(phone.entries), fold(begun(phone.entries).entries)];
        const names = (sheet: typeof before) => ({
          pieces: sheet.pieces.map(({ name, flat }) => [name, flat]),
          questions: sheet.questions.map(({ slot }) => slot),
          obstructions: sheet.obstructions.map(({ label }) => label).sort(),
        });
        expect(names(after)).toEqual(names(before));
        // Not points that have left the piece, or are not here yet.
        const { pieces } = sister(phone.entries);
        expect(pieces.flatMap(({ shots }) => shots.map((one) => [one.slot, one.points.length]))).toEqual(
          before.shots.map(({ slot, points }) => [slot, points.filter((one) => isHere(before, one)).length]),
        );
        const asked = before.readings
          .filter(({ run, slot }) => run === undefined || slot !== null)
          .map(({ kind, points }) => [kind, points.map((one) => labelIn(before.points, one))] as const);
        // What was taped from a mark that has moved is asked from the mark; a point that is not here yet cannot be asked at.
        const plain = asked.filter(([, labels]) => labels.every((label) => label && !hasMoved(before, label)));
        // What is asked under a condition is declared; the sister's questions are open, so it is not asked there yet.
        const declared = pieces.flatMap(({ points, readings }) =>
          readings.map((one) => [one.kind, one.points.map((of) => labelIn(points, of))] as const),
        );
        expect(declared).toEqual(expect.arrayContaining(plain));
      }),
    );
  });

  it('asks nothing between a mark and where it was moved, which is one place on the sister', () => {
    const phone = begunPhone();
    const point = { id: C, label: 'C', slot: null, role: 'mark' as const, sides: [], nominal: null, replaces: A };
    phone.does('point.add', { piece: PIECE, point });
    const reading = { id: id(90, 3), slot: null, kind: 'straight' as const, points: [A, C], needed: false };
    phone.does('reading.add', { piece: PIECE, reading, after: 'A-B' });
    const points = sister(phone.entries).pieces.flatMap(({ readings }) =>
      readings.map((one) => new Set(one.points).size),
    );
    expect(points).toEqual([2]);
  });

  const labelIn = (points: readonly { id: string; label: string }[], of: string): string | undefined =>
    points.find(({ id: one }) => one === of)?.label;
  const isHere = (sheet: ReturnType<typeof fold>, of: string): boolean =>
    sheet.points.some(({ id, pieces }) => id === of && pieces.length > 0);
  const hasMoved = (sheet: ReturnType<typeof fold>, of: string): boolean =>
    sheet.points.some(({ label, replaces, replacedBy }) => label === of && (replaces ?? replacedBy) != null);

  it('compares with the value that was read, as it was typed', () => {
    const phone = begunPhone();
    phone.does('take.add', { reading: AB, text: '47 5/8', unit: 'in', value: 1209.675 });
    expect(sister(phone.entries).expected).toMatchObject([{ value: 1209.675, text: '47 5/8', from: 'Perla' }]);
    expect(fold(begun(phone.entries).entries).readings[0]).toMatchObject({
      value: null,
      state: 'open',
      expected: { value: 1209.675, text: '47 5/8', from: 'Perla' },
    });
  });

  it('writes a value that was read twice in the unit of the job', () => {
    const phone = begunPhone();
    for (const value of [1209.675, 1211.2625]) phone.does('take.add', { reading: AB, text: 'x', unit: 'in', value });
    expect(sister(phone.entries).expected[0]?.text).toBe('47 5/8"');
  });

  it('compares with nothing that was struck out, could not be measured or was declared', () => {
    const phone = begunPhone();
    const take = phone.does('take.add', { reading: AB, text: '1', unit: 'in', value: 25.4 });
    phone.does('take.strike', { take: take.id, reason: 'misread' });
    const level = { id: id(30, 3), slot: null, kind: 'level' as const, points: [A, B], needed: false };
    phone.does('reading.add', { piece: PIECE, reading: level });
    phone.does('take.add', { reading: level.id, text: '0', unit: 'mm', value: 0 });
    expect(sister(phone.entries).expected).toEqual([]);
  });

  it('compares with no reading that something speaks against', () => {
    const phone = begunPhone();
    phone.does('take.add', { reading: AB, text: '47 5/8', unit: 'in', value: 1209.675 });
    const options = { newId: counter(), from: 'Perla', doubted: new Set([AB]) };
    expect(sisterOf(phone.entries, options).expected).toEqual([]);
  });

  it('takes the things in the way along, not what was decided about them', () => {
    const phone = begunPhone();
    const cleat = { id: C, label: 'C', slot: null, role: 'obstruction' as const, sides: [], nominal: null };
    phone.does('point.add', { piece: PIECE, point: cleat });
    phone.does('obstruction.add', { obstruction: id(40, 3), piece: PIECE, kind: 'cleat', label: 'Cleat', point: C });
    phone.does('obstruction.set', { obstruction: id(40, 3), field: 'treatment', value: 'cut-out' });
    const sheet = fold(begun(phone.entries).entries);
    expect(sheet.obstructions).toMatchObject([{ kind: 'cleat', label: 'Cleat', treatment: null, needed: null }]);
    expect(sheet.points.find(({ id: of }) => of === sheet.obstructions[0]?.point)?.label).toBe('C');
  });

  it('is drawn by the shape that was found, where it was', () => {
    const { entries } = begunPhone();
    const places = new Map([[A, [1, 2, 3] as [number, number, number]]]);
    const [piece] = sisterOf(entries, { newId: counter(), from: '', places }).pieces;
    expect(piece?.points.map(({ nominal }) => nominal)).toEqual([
      [1, 2, 3],
      [0, -500, 0],
    ]);
  });

  it('is made of payloads their kinds accept', () => {
    const phone = begunPhone();
    phone.does('take.add', { reading: AB, text: '47 5/8', unit: 'in', value: 1209.675 });
    const { pieces, expected } = sister(phone.entries);
    for (const piece of pieces) expect(payloads['piece.add'].safeParse(piece).success).toBe(true);
    for (const known of expected) expect(payloads['reading.expect'].safeParse(known).success).toBe(true);
    expect(expected).toHaveLength(1);
  });
});
