import { beforeAll, describe, expect, it } from 'vitest';
import { type Entry, nextToTakeBack, type Role } from '../../src/core/job/index.ts';
import { takenBackText } from '../../src/screens/dock/step/taken-back.ts';
import { loadPieceWords } from '../../src/text/guides.ts';
import { installer, owner } from '../core/check/build.ts';
import { guideNamed } from '../core/check/demo-bow.ts';
import { Measured } from '../core/check/measured.ts';

const shade = guideNamed('tension-shade');
const SLOTS = shade.walk.flatMap(({ on, slot }) => (on === 'reading' ? [slot] : []));

function said(measured: Measured, role: Role, hidden: readonly string[] = []): string {
  const entries: readonly Entry[] = measured.job.entries;
  const last = nextToTakeBack(entries, role);
  if (!last) throw new Error('nothing to take back');
  return takenBackText(entries, last, measured.job.sheet(), { role, hidden: new Set(hidden) });
}
const fresh = (who = owner): Measured => new Measured(shade, { who, open: SLOTS });
const typed = (measured: Measured, text: string): Measured => measured.read('A-B', { typed: { 'A-B': text } });

describe('what undo took back', () => {
  beforeAll(() => loadPieceWords(['tension-shade']));
  it('is a reading with what was typed, the only one there is', () => {
    expect(said(typed(fresh(), '47 5/8'), 'owner')).toBe('Taken back: A–B, 47 5/8');
    expect(said(typed(fresh(installer), '47 5/8'), 'installer')).toBe('Taken back: A–B, 47 5/8');
  });
  it('shows an owner no value beside another look, nor of what is to be read afresh', () => {
    const twice = typed(typed(fresh(), '47 5/8'), '47 3/4');
    expect(said(twice, 'owner')).toBe('Taken back: A–B');
    const once = typed(fresh(), '47 5/8');
    expect(said(once, 'owner', [once.reading('A-B')])).toBe('Taken back: A–B');
    expect(said(typed(typed(fresh(installer), '47 5/8'), '47 3/4'), 'installer')).toBe('Taken back: A–B, 47 3/4');
  });
  it('is an answer with its question', () => {
    const measured = fresh();
    measured.job.add('question.answer', { piece: measured.piece.id, slot: 'over', choice: 'cockpit', text: '' });
    expect(said(measured, 'owner')).toBe('Taken back: What does the shade cover? Cockpit');
  });
  it('is that there was no value, and no photo', () => {
    const measured = fresh();
    measured.job.add('reading.answer', { reading: measured.reading('A-B'), answer: 'could-not', reason: 'Rain' });
    expect(said(measured, 'owner')).toBe('Taken back: A–B, no value');
    measured.job.add('photo.answer', {
      piece: measured.piece.id,
      slot: 'photo-mounts',
      answer: 'could-not',
      reason: 'Dark',
    });
    expect(said(measured, 'owner')).toBe('Taken back: Both mounts, no photo');
  });
  it('is the last thing done where it has no words of its own', () => {
    const measured = fresh();
    measured.job.add('note.add', { on: null, text: 'A note' });
    expect(said(measured, 'owner')).toBe('Taken back: what you did last');
  });
});
