import { describe, expect, it } from 'vitest';
import { addPointAfter, moveMark } from '../../../src/core/guide/amend/index.ts';
import { nextInTable, type Table, tableOf, tablesOf, wayOf } from '../../../src/core/guide/tables.ts';
import type { ReadingDeclaration } from '../../../src/core/job/index.ts';
import { Dock, WHY } from './amend/dock.ts';

function atBow(): { dock: Dock; piece: string } {
  const dock = new Dock();
  return { dock, piece: dock.bow() };
}
const labels = (dock: Dock, points: readonly string[]): string =>
  points.map((id) => dock.sheet.points.find((point) => point.id === id)?.label ?? '?').join(' ');
const heads = (dock: Dock, { columns }: Table): string[] =>
  columns.map((column) =>
    column.of === 'mark' ? labels(dock, [column.point]) : column.of === 'kind' ? column.kind : column.of,
  );
const isOpen = ({ state }: { state: string }): boolean => state === 'open';
/** All of a table in the order in which Next goes through it. */
const walked = (dock: Dock, table: Table): string[] => table.cells.map(({ reading }) => dock.name(reading));

describe('tables of a piece', () => {
  it('are, for the bow cover, every edge point from three marks, and the gaps between', () => {
    const { dock, piece } = atBow();
    const [marks, gaps, ...more] = tablesOf(dock.sheet, piece);
    if (!marks || !gaps) throw new Error('no tables');
    expect(more).toEqual([]);
    expect([marks.key, labels(dock, marks.rows), heads(dock, marks)]).toEqual([
      'marks',
      'P1 P2 P3 T S3 S2 S1',
      ['W1', 'W2', 'F'],
    ]);
    expect([gaps.key, labels(dock, gaps.rows), heads(dock, gaps)]).toEqual(['gaps-edge', 'P2 P3 T S3 S2 S1', ['gap']]);
    expect(marks.cells).toHaveLength(21);
  });

  it('are walked column by column as the guide walks: down from W1, up from W2', () => {
    const { dock, piece } = atBow();
    const [marks] = tablesOf(dock.sheet, piece);
    if (!marks) throw new Error('no table');
    expect([0, 1, 2].map((column) => wayOf(marks, column))).toEqual(['down', 'up', 'down']);
    expect(walked(dock, marks).slice(5, 9)).toEqual(['W1-S2', 'W1-S1', 'W2-S1', 'W2-S2']);
  });

  it('go on to the next open cell of the column, then of the next, then from the start', () => {
    const { dock, piece } = atBow();
    dock.readNamed('W1-P2', 'F-S1', 'F-S2');
    const [marks] = tablesOf(dock.sheet, piece);
    if (!marks) throw new Error('no table');
    const next = (name: string): string => {
      const id = nextInTable(marks, dock.reading(name).id, isOpen);
      const reading = dock.sheet.readings.find((one) => one.id === id);
      return reading ? dock.name(reading) : 'none';
    };
    expect([next('W1-P1'), next('W1-S1'), next('F-S3')]).toEqual(['W1-P3', 'W2-S1', 'W1-P1']);
    expect(nextInTable(marks, null, isOpen)).toBe(dock.reading('W1-P1').id);
    expect(nextInTable(marks, null, () => false)).toBeNull();
    expect(nextInTable(marks, dock.reading('W1-P1').id, ({ id }) => id === dock.reading('W1-P1').id)).toBeNull();
  });

  it('hold each reading once, and know which table it is in', () => {
    const { dock, piece } = atBow();
    const tables = tablesOf(dock.sheet, piece);
    const all = tables.flatMap(({ cells }) => cells.map(({ reading }) => reading.id));
    expect(new Set(all).size).toBe(all.length);
    expect(tableOf(tables, dock.reading('F-T').id)?.key).toBe('marks');
    expect(tableOf(tables, dock.reading('W1-W2').id)).toBeUndefined();
  });

  it('have a row for a point that was added, where it lies', () => {
    const { dock, piece } = atBow();
    dock.does(addPointAfter(dock.sheet, { run: dock.run(), after: dock.point('P2').id }, WHY, dock.newId));
    const [marks, gaps] = tablesOf(dock.sheet, piece);
    expect(labels(dock, marks?.rows ?? [])).toBe('P1 P2 P3 P4 T S3 S2 S1');
    expect(labels(dock, gaps?.rows ?? [])).toBe('P2 P3 P4 T S3 S2 S1');
    expect(marks?.cells).toHaveLength(24);
    expect(marks && [0, 1, 2].map((column) => wayOf(marks, column))).toEqual(['down', 'up', 'down']);
  });

  it('have a column for a mark that was moved, and one for where it was before', () => {
    const { dock, piece } = atBow();
    dock.readNamed('W1-P1', 'W1-P2');
    dock.does(moveMark(dock.sheet, dock.point('W1').id, WHY, dock.newId));
    const [marks] = tablesOf(dock.sheet, piece);
    if (!marks) throw new Error('no table');
    expect(heads(dock, marks)).toEqual(['W1', 'W3', 'W2', 'F']);
    expect(walked(dock, marks).slice(0, 7)).toEqual(['W1-P1', 'W1-P2', 'W3-P3', 'W3-T', 'W3-S3', 'W3-S2', 'W3-S1']);
  });

  it('are none for a piece with a few tapes each way', () => {
    const dock = new Dock();
    const piece = dock.piece({ ...plain(dock, ['A', 'B', 'C', 'D'], []), name: 'Box' });
    const [a, b, c, d] = dock.sheet.points.map(({ id }) => id);
    for (const points of [
      [a, b],
      [a, c],
      [a, d],
      [b, c],
      [b, d],
      [c, d],
    ])
      dock.phone.does('reading.add', { piece, reading: { ...straight(dock), points: points as string[] } });
    expect(tablesOf(dock.sheet, piece)).toEqual([]);
  });
});

const straight = (dock: Dock): ReadingDeclaration => ({
  id: dock.newId(),
  slot: null,
  kind: 'straight',
  points: [],
  needed: true,
});

/** A piece with points in a row and readings of one's own. */
function plain(dock: Dock, names: readonly string[], readings: readonly ReadingDeclaration[]) {
  const points = names.map((label, i) => ({
    id: dock.newId(),
    label,
    slot: null,
    role: 'edge' as const,
    sides: [],
    nominal: [i * 500, 0, 0] as [number, number, number],
  }));
  const empty = { runs: [], shots: [], questions: [], boxes: [], pairs: [] };
  return {
    id: dock.newId(),
    kind: 'free' as const,
    name: '',
    flat: false,
    points,
    readings: [...readings],
    walk: [],
    ...empty,
  };
}

describe('tables over a string', () => {
  /** Stations 1 to 4 with place, offset both ways, height and girth, over a string from F to A. */
  function cover(): { dock: Dock; piece: string } {
    const dock = new Dock();
    const declared = plain(dock, ['F', 'A', '1', '2', '3', '4', 'K'], []);
    const [from = '', to = '', ...stations] = declared.points.map(({ id }) => id);
    const keel = stations.pop() ?? '';
    const piece = dock.piece(declared);
    const ask = (more: Partial<ReadingDeclaration>): void => {
      dock.phone.does('reading.add', { piece, reading: { ...straight(dock), ...more } });
    };
    for (const point of stations) {
      ask({ kind: 'along', points: [point], baseline: [from, to] });
      ask({ kind: 'out', points: [point], baseline: [from, to], toward: 'port' });
      ask({ kind: 'height', points: [point], baseline: [from, to] });
      ask({ kind: 'girth', points: [keel, point] });
    }
    return { dock, piece };
  }

  it('have a row a station, and station, offset, height and girth beside it', () => {
    const { dock, piece } = cover();
    const [table, ...more] = tablesOf(dock.sheet, piece);
    if (!table) throw new Error('no table');
    expect(more).toEqual([]);
    expect([labels(dock, table.rows), heads(dock, table)]).toEqual(['1 2 3 4', ['along', 'out', 'height', 'girth']]);
    expect(labels(dock, table.baseline)).toBe('F A');
    expect(walked(dock, table).slice(0, 5)).toEqual([
      'along 1 over F-A',
      'along 2 over F-A',
      'along 3 over F-A',
      'along 4 over F-A',
      'out 1 over F-A',
    ]);
    expect(table.cells).toHaveLength(16);
  });

  it('have an offset to port and one to starboard apart', () => {
    const { dock, piece } = cover();
    const [, , ...stations] = dock.sheet.points.map(({ id }) => id);
    const baseline = dock.sheet.readings[0]?.baseline ?? [];
    for (const point of stations.slice(0, 2))
      dock.phone.does('reading.add', {
        piece,
        reading: { ...straight(dock), kind: 'out', points: [point], baseline, toward: 'starboard' },
      });
    const [table] = tablesOf(dock.sheet, piece);
    expect(table?.columns.filter((column) => column.of === 'kind' && column.kind === 'out')).toHaveLength(2);
  });
});

describe('running dimensions along an edge', () => {
  it('are a table of one column, as long as each has a step of its own', () => {
    const dock = new Dock();
    const declared = plain(dock, ['1', '2', '3', '4'], []);
    const points = declared.points.map(({ id }) => id);
    const run = dock.newId();
    const runs = [{ id: run, slot: 'edge', points, whole: null, needed: true }];
    const [start = ''] = points;
    const readings = points.slice(1).map((point, sequence) => ({
      ...straight(dock),
      slot: `r-${sequence}`,
      kind: 'running' as const,
      points: [start, point],
      run,
      sequence,
    }));
    const piece = dock.piece({ ...declared, runs, readings, walk: readings.map(({ slot }) => slot) });
    const [table, ...more] = tablesOf(dock.sheet, piece);
    expect(more).toEqual([]);
    expect(table).toMatchObject({ key: 'running-edge', of: 'running', columns: [{ of: 'running', from: start }] });
    expect(labels(dock, table?.rows ?? [])).toBe('2 3 4');
  });
});
