import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addPointAfter,
  mayHaveMoved,
  moveMark,
  removePoint,
  reorderPoints,
} from '../../../../src/core/guide/amend/index.ts';
import { stepsOf } from '../../../../src/core/guide/index.ts';
import type { Deed, Sheet } from '../../../../src/core/job/index.ts';
import { Dock, WHY } from './dock.ts';

type What = 'add' | 'remove' | 'swap' | 'move' | 'read' | 'answer';
const doings = fc.array(
  fc.record({
    what: fc.constantFrom<What>('add', 'add', 'remove', 'swap', 'move', 'read', 'read', 'answer'),
    pick: fc.nat(60),
  }),
  { minLength: 1, maxLength: 12 },
);

const pick = <T>(list: readonly T[], n: number): T | undefined => list[n % Math.max(1, list.length)];

/** What a person who amends would write at this state of the job. */
function deedsFor(dock: Dock, piece: string, what: What, n: number): Deed[] {
  const { sheet } = dock;
  const [run] = sheet.runs;
  if (!run) return [];
  const point = pick(run.points, n) ?? '';
  if (what === 'add') return addPointAfter(sheet, { run: run.id, after: point }, WHY, dock.newId);
  if (what === 'remove') return removePoint(sheet, { piece, point }, WHY, dock.newId);
  if (what === 'move') {
    const mark = pick(sheet.points.filter(mayHaveMoved), n);
    return mark ? moveMark(sheet, mark.id, WHY, dock.newId) : [];
  }
  const points = [...run.points];
  const at = n % (points.length - 1);
  points.splice(at, 2, ...points.slice(at, at + 2).reverse());
  return reorderPoints(sheet, { run: run.id, points }, WHY, dock.newId);
}

function act(dock: Dock, piece: string, what: What, n: number): void {
  const open = dock.sheet.readings.filter(({ state, kind }) => state === 'open' && kind !== 'height');
  const reading = pick(open, n);
  if (what === 'read' && reading) dock.read(reading);
  else if (what === 'answer' && reading)
    dock.phone.does('reading.answer', { reading: reading.id, answer: 'could-not', reason: 'wind' });
  else if (what !== 'read' && what !== 'answer') dock.does(deedsFor(dock, piece, what, n));
}

/** A job that was measured and amended in any mixture; after each thing done, what must hold is looked at. */
function amended(list: readonly { what: What; pick: number }[], look: (dock: Dock, piece: string) => void): Dock {
  const dock = new Dock();
  const piece = dock.bow();
  for (const { what, pick: n } of list) {
    act(dock, piece, what, n);
    look(dock, piece);
  }
  return dock;
}

const inPiece = (sheet: Sheet, piece: string) => sheet.points.filter(({ pieces }) => pieces.includes(piece));

type Law = (dock: Dock, piece: string) => void;
const laws: Record<string, Law> = {
  'every entry is understood, and every label is of one point': (dock, piece) => {
    const { sheet } = dock;
    expect(sheet.carried).toEqual([]);
    const labels = inPiece(sheet, piece).map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  },

  'everything asked for is between points that are there, once, and is a step of the walk': (dock, piece) => {
    const { sheet } = dock;
    const there = new Set(inPiece(sheet, piece).map(({ id }) => id));
    const moved = new Set(sheet.points.flatMap(({ id, replacedBy }) => (replacedBy ? [id] : [])));
    const steps = new Set(stepsOf(sheet, piece).map(({ key }) => key));
    const pairs: string[] = [];
    for (const reading of sheet.readings) {
      for (const point of [...reading.points, ...(reading.baseline ?? [])]) expect(there).toContain(point);
      expect(steps).toContain(reading.slot ?? reading.id);
      if (reading.state === 'open')
        for (const point of [...reading.points, ...(reading.baseline ?? [])]) expect(moved).not.toContain(point);
      if (reading.kind === 'straight') pairs.push([...reading.points].sort().join());
    }
    expect(new Set(pairs).size).toBe(pairs.length);
  },

  'neighbours on the edge have their gap, and the edge its whole length from end to end': (dock) => {
    const { sheet } = dock;
    const [run] = sheet.runs;
    const points = run?.points ?? [];
    for (const [i, point] of points.slice(1).entries()) {
      const gap = sheet.readings.some(
        ({ kind, points: ends }) => kind === 'straight' && ends.includes(point) && ends.includes(points[i] ?? ''),
      );
      expect(gap).toBe(true);
    }
    const whole = sheet.readings.find(({ id }) => id === run?.whole);
    expect([...(whole?.points ?? [])].sort()).toEqual([points[0], points.at(-1)].sort());
  },
};

describe('whatever is amended', { timeout: 60_000 }, () => {
  it(Object.keys(laws).join('; '), () => {
    fc.assert(
      fc.property(doings, (list) => {
        amended(list, (dock, piece) => {
          for (const law of Object.values(laws)) law(dock, piece);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('nothing that was read is lost, and no point that was read changes its name', () => {
    fc.assert(
      fc.property(doings, (list) => {
        const names = new Map<string, string>();
        const dock = amended(list, ({ sheet }) => {
          const all = [...sheet.readings, ...sheet.setAside.map(({ reading }) => reading)];
          const used = new Set(all.flatMap(({ takes, points }) => (takes.length > 0 ? points : [])));
          for (const { id, label } of sheet.points) {
            expect(names.get(id) ?? label).toBe(label);
            if (used.has(id)) names.set(id, label);
          }
        });
        const { sheet } = dock;
        const kept = [...sheet.readings, ...sheet.setAside.map(({ reading }) => reading)].flatMap((r) => r.takes);
        const taken = dock.phone.entries.filter(({ kind }) => kind === 'take.add').map(({ id }) => id);
        expect(kept.map(({ id }) => id).sort()).toEqual(taken.sort());
      }),
      { numRuns: 60 },
    );
  });

  it('it is as before when every deed of it is taken back, the last first', () => {
    fc.assert(
      fc.property(doings, fc.constantFrom<What>('add', 'remove', 'swap', 'move'), fc.nat(60), (list, what, n) => {
        const dock = new Dock();
        const piece = dock.bow();
        for (const { what: before, pick: at } of list) act(dock, piece, before, at);
        const before = dock.sheet;
        const made = dock.does(deedsFor(dock, piece, what, n));
        for (const { id } of made.reverse()) dock.phone.does('undo', { entry: id });
        expect(dock.sheet).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });

  it('while nothing is measured, the points of either side are numbered in walking order', () => {
    const changes = fc.array(fc.record({ what: fc.constantFrom<What>('add', 'remove', 'swap'), pick: fc.nat(60) }), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(changes, (list) => {
        const dock = new Dock();
        const piece = dock.bow();
        const byLabel = new Map(dock.sheet.points.map(({ id, label }) => [id, label]));
        for (const { what, pick: n } of list) {
          // Across the tip a point of one side comes to lie on the other, and its row has no order any more.
          if (what === 'swap' && crossesTip(dock, n)) continue;
          act(dock, piece, what, n);
        }
        const edge = dock.edge().split(' ');
        const numbers = (side: string): number[] =>
          edge.filter((label) => label.startsWith(side)).map((label) => Number(label.slice(1)));
        expect(byLabel.size).toBeGreaterThan(0);
        expect(numbers('P')).toEqual(numbers('P').map((_, i) => i + 1));
        expect(numbers('S')).toEqual(numbers('S').map((_, i) => numbers('S').length - i));
      }),
      { numRuns: 60 },
    );
  });
});

function crossesTip(dock: Dock, n: number): boolean {
  const edge = dock.edge().split(' ');
  const at = n % (edge.length - 1);
  return edge[at]?.charAt(0) !== edge[at + 1]?.charAt(0);
}
