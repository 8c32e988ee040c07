import { describe, expect, it } from 'vitest';
import { mayHaveMoved, moveMark } from '../../../../src/core/guide/amend/index.ts';
import { declarePiece } from '../../../../src/core/guide/index.ts';
import { guideOf } from '../../../../src/core/guide/pieces/index.ts';
import { Dock } from './dock.ts';

const REASON = { reason: 'the mark was moved' };
const FROM_W1 = ['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1'];

function moved(read: readonly string[], label = 'W1'): Dock {
  const dock = new Dock();
  dock.bow();
  dock.readNamed(...read);
  dock.does(moveMark(dock.sheet, dock.point(label).id, REASON, dock.newId));
  return dock;
}

describe('a mark that was moved', () => {
  it('is a new mark with the next number, and knows what it stands for', () => {
    const dock = moved(['W1-W2']);
    expect(dock.point('W3').replaces).toBe(dock.point('W1').id);
    expect(dock.point('W1').replacedBy).toBe(dock.point('W3').id);
    expect(mayHaveMoved(dock.point('W1'))).toBe(false);
    expect(moveMark(dock.sheet, dock.point('W1').id, REASON, dock.newId)).toEqual([]);
    expect(moved([], 'F').point('F2').role).toBe('mark');
  });

  it('keeps what was read; what is open is asked from the new one in the same place, after the tapes that fix it', () => {
    const dock = moved(['W1-W2', 'W1-F', 'W1-P1', 'W1-P2']);
    expect(dock.reading('W1-P2').state).toBe('measured');
    const open = dock.open();
    expect(open.filter((name) => name.includes('W1'))).toEqual([]);
    expect(open.slice(0, 8)).toEqual(['W2-F', 'W3-W2', 'W3-F', 'W3-P3', 'W3-T', 'W3-S3', 'W3-S2', 'W3-S1']);
    expect(open).toContain('height G over W3-W2');
    expect(dock.sheet.setAside.every(({ reason }) => reason === REASON.reason)).toBe(true);
  });

  it('asks for no tape twice when the tapes between the marks are still open', () => {
    const dock = moved([]);
    const open = dock.open();
    expect(open.slice(0, 3)).toEqual(['W3-W2', 'W3-F', 'W2-F']);
    expect(new Set(open).size).toBe(open.length);
    dock.readAll();
    expect(dock.stops()).toEqual([]);
  });

  it.each([1, 2, 3, 5, 7])(
    'after %i edge points were read leaves a piece that everything asked for clears',
    (count) => {
      const dock = moved(['W1-W2', 'W1-F', ...FROM_W1.slice(0, count).map((label) => `W1-${label}`)]);
      dock.readAll();
      expect(dock.stops()).toEqual([]);
      expect(dock.findings().filter(({ rule }) => rule === 'reading-doubted')).toEqual([]);
    },
  );

  it('after one tape only leaves nothing to read again at a mark that is gone', () => {
    const dock = moved(['W1-W2']);
    dock.readAll();
    expect(dock.stops()).toEqual([]);
  });

  it('with nothing left to ask at it costs no further work', () => {
    const height = 'height G over W1-W2';
    const all = ['W1-W2', 'W1-F', ...FROM_W1.map((label) => `W1-${label}`), height];
    const dock = moved([...all, height]);
    expect(dock.reading('W3-W2').needed).toBe(false);
    dock.readAll();
    expect(dock.stops()).toEqual([]);
    // The string is gone with its mark: a height read once over it wants another, and not a second look.
    const once = moved(all);
    once.readAll();
    expect(once.stops()).toEqual(['reading-unchecked height G over W1-W2']);
  });

  it('may be moved again', () => {
    const dock = moved(['W1-W2', 'W1-P1']);
    dock.readNamed('W3-W2', 'W3-F', 'W3-P2');
    dock.does(moveMark(dock.sheet, dock.point('W3').id, REASON, dock.newId));
    expect(dock.open()).toContain('W4-P3');
    expect(dock.open().filter((name) => /W[13]\b/.test(name))).toEqual([]);
    dock.readAll();
    expect(dock.stops()).toEqual([]);
  });

  it('a reading that other points rest on is not silently lost: it wants a tape from the new mark', () => {
    const dock = moved(['W1-W2', 'W1-F', 'W2-F', ...FROM_W1.map((label) => `W1-${label}`)]);
    const cannot = ['F-T', 'P3-T', 'T-S3'];
    for (const name of cannot)
      dock.phone.does('reading.answer', { reading: dock.reading(name).id, answer: 'could-not', reason: 'wind' });
    dock.readAll();
    const found = dock.findings().find(({ rule, numbers }) => rule === 'reading-unchecked' && numbers.moved === 'W1');
    expect(found).toMatchObject({ severity: 'stop', numbers: { moved: 'W1', now: 'W3' } });
    expect(found?.subjects).toEqual([{ on: 'reading', id: dock.reading('W1-T').id }]);
  });

  it('is moved in every piece it belongs to, and what is taped between shared marks is asked for once', () => {
    const dock = new Dock();
    dock.bow();
    const guide = guideOf('open-bow');
    if (!guide) throw new Error('no guide');
    const shared = {
      points: new Map(['W1', 'W2', 'F'].map((label) => [label, dock.point(label)])),
      readings: dock.sheet.readings,
    };
    const second = dock.piece(declarePiece(guide, 'Second', dock.newId, shared));
    dock.readNamed('W1-W2');
    dock.does(moveMark(dock.sheet, dock.point('W1').id, REASON, dock.newId));
    expect(dock.point('W3').pieces).toHaveLength(2);
    expect(dock.open(second).filter((name) => name.startsWith('W3'))).toEqual(FROM_W1.map((label) => `W3-${label}`));
    expect(dock.open().slice(0, 3)).toEqual(['W3-W2', 'W3-F', 'W2-F']);
  });

  it('no tape from where it was is proposed', () => {
    const dock = moved(['W1-W2', 'W1-F', ...FROM_W1.slice(0, 5).map((label) => `W1-${label}`)]);
    const sets = dock.advice();
    expect(sets.flat()).not.toContain('W1');
  });
});
