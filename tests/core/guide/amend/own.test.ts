import { describe, expect, it } from 'vitest';
import {
  freeLabel,
  freePiece,
  isLabelFree,
  type OwnPoint,
  ownEdge,
  ownPicture,
  ownPoint,
  ownReading,
} from '../../../../src/core/guide/amend/index.ts';
import { declarePiece, stepsOf } from '../../../../src/core/guide/index.ts';
import { guideOf } from '../../../../src/core/guide/pieces/index.ts';
import { PieceDeclaration } from '../../../../src/core/job/index.ts';
import { Dock, type Place } from './dock.ts';

const PLACES: Record<string, Place> = {
  C1: [0, 0, 0],
  C2: [1200, 0, 0],
  C3: [1150, 700, 0],
  C4: [30, 760, 0],
};

/** A free piece with corners at known places; readings by the labels of their ends. */
class Free extends Dock {
  readonly id: string;

  constructor(flat = true, labels = Object.keys(PLACES)) {
    super();
    this.id = this.piece(freePiece('Locker lid', flat, this.newId));
    for (const label of labels) this.add({ label, role: 'corner', sides: [], note: '' });
  }

  add(point: OwnPoint): void {
    this.does(ownPoint(this.id, point, this.newId));
    this.places.set(this.point(point.label).id, PLACES[point.label] ?? [0, 0, 0]);
  }

  ask(...pairs: string[]): void {
    for (const pair of pairs) {
      const points = pair.split('-').map((label) => this.point(label).id);
      this.does(ownReading(this.sheet, this.id, { kind: 'straight', points }, this.newId).deeds);
    }
  }
}

const SIDES = ['C1-C2', 'C2-C3', 'C3-C4', 'C4-C1'];

describe('a piece no guide knows', () => {
  it('begins with a name alone, which its schema accepts, and is not clear', () => {
    const dock = new Free(true, []);
    expect(PieceDeclaration.safeParse(freePiece('Lid', false, dock.newId)).success).toBe(true);
    expect(dock.stops()).toEqual([`shape-unknown ${dock.id}`]);
  });

  it('is not clear while a point of it is not measured at all', () => {
    const dock = new Free(true, ['C1', 'C2']);
    expect(dock.stops()).toEqual(['point-floats C1', 'point-floats C2']);
    dock.add({ label: 'M1', role: 'mark', sides: [], note: 'corner of the tape' });
    expect(dock.stops()).toEqual(['point-floats C1', 'point-floats C2']);
  });

  it('says which point floats with four sides and no diagonal, and is clear with both', () => {
    const dock = new Free();
    dock.ask(...SIDES);
    expect(stepsOf(dock.sheet, dock.id).map(({ state }) => state)).toEqual(['open', 'open', 'open', 'open']);
    dock.readAll();
    expect(dock.stops().filter((one) => one.startsWith('point-floats')).length).toBeGreaterThan(0);
    dock.ask('C1-C3', 'C2-C4');
    dock.readAll();
    expect(dock.stops()).toEqual([]);
  });

  it('asks for no second look while points of it are not come to yet', () => {
    const dock = new Free();
    dock.ask('C1-C2');
    dock.readAll();
    expect(dock.stops()).toEqual(['point-floats C3', 'point-floats C4']);
  });

  it('asks for a second look where nothing else would show a slip', () => {
    const dock = new Free(true, ['C1', 'C2', 'C3']);
    dock.ask('C1-C2', 'C2-C3', 'C1-C3');
    dock.readAll();
    expect(dock.stops()).toEqual(['C1-C2', 'C2-C3', 'C1-C3'].map((name) => `reading-unchecked ${name}`));
    dock.readNamed('C1-C2', 'C2-C3', 'C1-C3');
    expect(dock.stops()).toEqual([]);
  });

  it('of plain sizes alone wants each read twice', () => {
    const dock = new Free(true, []);
    const { deeds, reading } = ownReading(dock.sheet, dock.id, { kind: 'size', points: [], of: 'length' }, dock.newId);
    dock.does(deeds);
    const take = { reading, text: '400', unit: 'mm', value: 400 } as const;
    dock.phone.does('take.add', take);
    expect(dock.stops()).toHaveLength(1);
    dock.phone.does('take.add', take);
    expect(dock.stops()).toEqual([]);
  });

  it('has edges with their whole length, and pictures, each a step of the walk', () => {
    const dock = new Free();
    dock.ask(...SIDES);
    const points = ['C1', 'C2', 'C3'].map((label) => dock.point(label).id);
    dock.does(ownEdge(dock.id, { points, note: 'Aft edge' }, dock.newId));
    dock.does(ownPicture(dock.id, { points, note: 'From above' }, dock.newId).deeds);
    const steps = stepsOf(dock.sheet, dock.id);
    expect(steps.map(({ on }) => on)).toEqual(['reading', 'reading', 'reading', 'reading', 'reading', 'run', 'shot']);
    expect(dock.sheet.runs[0]).toMatchObject({ note: 'Aft edge', points, needed: true });
    expect(dock.sheet.runs[0]?.whole).toBe(dock.reading('girth C1-C3').id);
    expect(ownEdge(dock.id, { points: points.slice(1, 2), note: '' }, dock.newId)).toEqual([]);
  });
});

describe('what a person adds', () => {
  it('has a label of its own', () => {
    const dock = new Free();
    expect(freeLabel(dock.sheet, dock.id, 'corner')).toBe('C5');
    expect(freeLabel(dock.sheet, dock.id, 'mark')).toBe('M1');
    expect(isLabelFree(dock.sheet, dock.id, ' C4 ')).toBe(false);
    expect(isLabelFree(dock.sheet, dock.id, 'C9')).toBe(true);
  });

  it('is not asked twice: the straight that is there already is the one', () => {
    const dock = new Free();
    dock.ask('C1-C2');
    const points = ['C2', 'C1'].map((label) => dock.point(label).id);
    const again = ownReading(dock.sheet, dock.id, { kind: 'straight', points }, dock.newId);
    expect(again).toEqual({ deeds: [], reading: dock.reading('C1-C2').id });
  });

  it('between two points of a guide is one more check; at a point of its own the cloth depends on it', () => {
    const dock = new Dock();
    const piece = dock.bow();
    dock.does(ownPoint(piece, { label: 'Q', role: 'edge', sides: [], note: '' }, dock.newId));
    const asked = (a: string, b: string): unknown => {
      const points = [a, b].map((label) => dock.point(label).id);
      const { deeds } = ownReading(dock.sheet, piece, { kind: 'straight', points }, dock.newId);
      return deeds[0]?.payload.reading;
    };
    expect(asked('P1', 'P3')).toMatchObject({ needed: false });
    expect(asked('P1', 'Q')).toMatchObject({ needed: true });
  });
});

describe('a second piece on the same boat', () => {
  it('keeps the labels of what it shares, and gives its own points others', () => {
    const dock = new Dock();
    dock.bow();
    const guide = guideOf('open-bow');
    if (!guide) throw new Error('no guide');
    const shared = { points: new Map([['F', dock.point('W1')]]), readings: dock.sheet.readings };
    const second = declarePiece(guide, 'Second', dock.newId, shared);
    const labels = second.points.map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
    expect(labels.slice(0, 3)).toEqual(['W3', 'W2', 'W1']);
    expect(second.points.find(({ slot }) => slot === 'W1' && labels.includes('W3'))).toBeDefined();
  });
});
