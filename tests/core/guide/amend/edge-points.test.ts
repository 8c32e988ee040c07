import { describe, expect, it } from 'vitest';
import {
  addPointAfter,
  goesWith,
  mayRemove,
  removePoint,
  reorderPoints,
} from '../../../../src/core/guide/amend/index.ts';
import { Dock, WHY } from './dock.ts';

function atBow(): { dock: Dock; piece: string } {
  const dock = new Dock();
  return { dock, piece: dock.bow() };
}
const addAfter = (dock: Dock, label: string): void => {
  dock.does(addPointAfter(dock.sheet, { run: dock.run(), after: dock.point(label).id }, WHY, dock.newId));
};
const swap = (dock: Dock, from: number): void => {
  const points = [...(dock.sheet.runs[0]?.points ?? [])];
  points.splice(from, 2, ...points.slice(from, from + 2).reverse());
  dock.does(reorderPoints(dock.sheet, { run: dock.run(), points }, WHY, dock.newId));
};

describe('a point between two neighbours', () => {
  it('is asked for from each mark in its place of the walk, and to both neighbours instead of the gap', () => {
    const { dock } = atBow();
    const before = dock.open();
    addAfter(dock, 'P2');
    const open = dock.open();
    // The new one is P3 now, and the old P3 is P4.
    const expected = [...before.slice(0, before.indexOf('W1-P2') + 1), 'W1-P3', 'W1-P4', 'W1-T'];
    expect(open.slice(0, expected.length)).toEqual(expected);
    expect(open.slice(open.indexOf('W2-S1'), open.indexOf('W2-P1') + 1)).toEqual(
      ['S1', 'S2', 'S3', 'T', 'P4', 'P3', 'P2', 'P1'].map((label) => `W2-${label}`),
    );
    expect(open.slice(open.indexOf('P1-P2'), open.indexOf('P4-T') + 1)).toEqual(['P1-P2', 'P2-P3', 'P3-P4', 'P4-T']);
    expect(open).not.toContain('P2-P4');
    expect(open).toHaveLength(before.length + 4);
    expect(dock.sheet.setAside.map(({ reason }) => reason)).toEqual([WHY.reason]);
  });

  it('stands half way in the drawing, on the side both neighbours are on', () => {
    const { dock } = atBow();
    addAfter(dock, 'P2');
    expect(dock.point('P3')).toMatchObject({ role: 'edge', sides: ['port'], nominal: [1250, 840, 0] });
    addAfter(dock, 'T');
    expect(dock.point('S4').sides).toEqual([]);
  });

  it('keeps the gap it divides when that was read', () => {
    const { dock } = atBow();
    dock.readNamed('P2-P3');
    addAfter(dock, 'P2');
    expect(dock.sheet.setAside).toEqual([]);
    expect(dock.reading('P2-P3').value).toBe(dock.sheet.readings.find(({ slot }) => slot === 'P2-P3')?.value);
  });

  it('labels follow the walk on either side, whichever way the numbers run', () => {
    const { dock } = atBow();
    addAfter(dock, 'P2');
    expect(dock.edge()).toBe('P1 P2 P3 P4 T S3 S2 S1');
    addAfter(dock, 'S3');
    expect(dock.edge()).toBe('P1 P2 P3 P4 T S4 S3 S2 S1');
    addAfter(dock, 'P4');
    expect(dock.edge()).toBe('P1 P2 P3 P4 P5 T S4 S3 S2 S1');
    addAfter(dock, 'T');
    expect(dock.edge()).toBe('P1 P2 P3 P4 P5 T S5 S4 S3 S2 S1');
  });

  it('is P2a where a point after it is measured or on a picture already, and its neighbours keep their names', () => {
    const { dock } = atBow();
    dock.readNamed('W1-P3');
    addAfter(dock, 'P2');
    expect(dock.edge()).toBe('P1 P2 P2a P3 T S3 S2 S1');
    addAfter(dock, 'P2a');
    expect(dock.edge()).toBe('P1 P2 P2a P2b P3 T S3 S2 S1');
    addAfter(dock, 'S3');
    expect(dock.edge()).toContain('S4 S3 S2 S1');
  });

  it('leaves the names of points alone that nothing pushes', () => {
    const { dock } = atBow();
    dock.readNamed('W1-P1');
    addAfter(dock, 'P2');
    expect(dock.edge()).toBe('P1 P2 P3 P4 T S3 S2 S1');
  });

  it('is nothing after the last point or on an edge that is not there', () => {
    const { dock } = atBow();
    expect(addPointAfter(dock.sheet, { run: dock.run(), after: dock.point('S1').id }, WHY, dock.newId)).toEqual([]);
    expect(addPointAfter(dock.sheet, { run: 'no edge', after: dock.point('P1').id }, WHY, dock.newId)).toEqual([]);
  });

  it('is fixed and checked by what is asked for, and the piece clear', () => {
    const { dock } = atBow();
    addAfter(dock, 'P2');
    addAfter(dock, 'T');
    dock.readAll();
    expect(dock.stops()).toEqual([]);
    expect(dock.findings().filter(({ rule }) => rule === 'reading-doubted')).toEqual([]);
  });
});

describe('a point that is taken off an edge', () => {
  it('leaves with what was asked at it, and the gap across it is asked for', () => {
    const { dock, piece } = atBow();
    dock.readNamed('W1-P2');
    expect(goesWith(dock.sheet, piece, dock.point('P2').id).map((one) => dock.name(one))).toEqual(['W1-P2']);
    dock.does(removePoint(dock.sheet, { piece, point: dock.point('P2').id }, { reason: 'no such point' }, dock.newId));
    // P2 was measured, so its name is not given to another.
    expect(dock.edge()).toBe('P1 P3 T S3 S2 S1');
    expect(dock.open()).toContain('P1-P3');
    expect(dock.open().filter((name) => name.includes('P2'))).toEqual([]);
    expect(dock.sheet.setAside.some(({ reading }) => reading.takes.length > 0)).toBe(true);
    dock.readAll();
    expect(dock.stops()).toEqual([]);
  });

  it('lets those after it move up where nothing is measured', () => {
    const { dock, piece } = atBow();
    dock.does(removePoint(dock.sheet, { piece, point: dock.point('P1').id }, { reason: 'no such point' }, dock.newId));
    expect(dock.edge()).toBe('P1 P2 T S3 S2 S1');
  });

  it('takes the whole length with it at an end, and it is asked for anew', () => {
    const { dock, piece } = atBow();
    dock.readNamed('girth P1-S1');
    dock.does(removePoint(dock.sheet, { piece, point: dock.point('P1').id }, { reason: 'no such point' }, dock.newId));
    const run = dock.sheet.runs[0];
    expect(dock.open()).toContain('girth P2-S1');
    expect(run?.whole).toBe(dock.reading('girth P2-S1').id);
    dock.readAll();
    expect(dock.stops()).toEqual([]);
  });

  it('stays where the edge would have one point left', () => {
    const { dock, piece } = atBow();
    for (const label of ['T', 'S3', 'S2', 'P3', 'P2'])
      dock.does(removePoint(dock.sheet, { piece, point: dock.point(label).id }, { reason: 'gone' }, dock.newId));
    expect(dock.edge()).toBe('P1 S1');
    const point = dock.point('P1').id;
    expect(mayRemove(dock.sheet, piece, point)).toBe(false);
    expect(removePoint(dock.sheet, { piece, point }, { reason: 'gone' }, dock.newId)).toEqual([]);
  });
});

describe('points in another order', () => {
  it('have the gaps of that order, without those that nobody read and that are none any more', () => {
    const { dock } = atBow();
    dock.readNamed('P1-P2');
    swap(dock, 1);
    expect(dock.edge()).toBe('P1 P3 P2 T S3 S2 S1');
    expect(dock.open()).toEqual(expect.arrayContaining(['P1-P3', 'P2-T']));
    expect(dock.open()).not.toContain('P3-T');
    expect(dock.reading('P1-P2').state).toBe('measured');
    expect(dock.reading('P2-P3').state).toBe('open');
  });

  it('are renamed in walking order while nothing is measured', () => {
    const { dock } = atBow();
    const [, second, third] = dock.sheet.runs[0]?.points ?? [];
    swap(dock, 1);
    expect(dock.edge()).toBe('P1 P2 P3 T S3 S2 S1');
    expect(dock.point('P2').id).toBe(third);
    expect(dock.point('P3').id).toBe(second);
  });

  it('ask for the whole length between the new ends', () => {
    const { dock } = atBow();
    swap(dock, 0);
    const [first] = dock.sheet.runs[0]?.points ?? [];
    expect(dock.sheet.readings.find(({ id }) => id === dock.sheet.runs[0]?.whole)?.points[0]).toBe(first);
    expect(dock.open().filter((name) => name.startsWith('girth'))).toEqual(['girth P1-S1']);
  });

  it('are left as they are where they are not the points of the edge', () => {
    const { dock } = atBow();
    const points = dock.sheet.runs[0]?.points ?? [];
    expect(reorderPoints(dock.sheet, { run: dock.run(), points }, WHY, dock.newId)).toEqual([]);
    expect(reorderPoints(dock.sheet, { run: dock.run(), points: points.slice(1) }, WHY, dock.newId)).toEqual([]);
  });
});
