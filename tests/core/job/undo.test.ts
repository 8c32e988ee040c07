import { describe, expect, it } from 'vitest';
import { type Entry, fold, heads, nextToTakeBack, takenBackWith } from '../../../src/core/job/index.ts';
import { AB, begunPhone, id, type Phone } from './support.ts';

const take = (phone: Phone, value: number, more: Partial<Entry> = {}): Entry =>
  phone.does('take.add', { reading: AB, text: String(value), unit: 'mm', value }, more);
const values = (phone: Phone) => fold(phone.entries).readings[0]?.takes.map(({ value }) => value);

/** One tap on Undo, as a screen does it. */
function undo(phone: Phone): void {
  const entry = nextToTakeBack(phone.entries, 'installer');
  if (!entry) throw new Error('nothing to take back');
  const batch = id(900 + phone.entries.length, 5);
  for (const of of takenBackWith(phone.entries, entry)) phone.does('undo', { entry: of }, { batch });
}

describe('undo', () => {
  it('takes back one reading of two that were typed within the same second', () => {
    const phone = begunPhone();
    take(phone, 1000);
    take(phone, 2000);
    expect(new Set(phone.entries.map(({ at }) => at)).size).toBe(1);
    undo(phone);
    expect(values(phone)).toEqual([1000]);
    undo(phone);
    expect(values(phone)).toEqual([]);
  });

  it('stops at what a shop asked and at the practice on paper: neither is on the screen where undo is pressed', () => {
    const phone = begunPhone();
    const readings = [{ of: 'long' as const, text: '11', unit: 'in' as const, value: 279.4 }];
    phone.does('practice.done', { paper: 'letter', readings });
    expect(nextToTakeBack(phone.entries, 'installer')).toBeNull();
    take(phone, 1000);
    undo(phone);
    expect(values(phone)).toEqual([]);
    expect(fold(phone.entries).practice).toHaveLength(1);
  });

  it('takes back everything that one act did', () => {
    const phone = begunPhone();
    const batch = id(800, 5);
    take(phone, 1000);
    take(phone, 2000, { batch });
    take(phone, 3000, { batch });
    undo(phone);
    expect(values(phone)).toEqual([1000]);
  });

  it('brings back what the same act had taken back: something moved is where it was', () => {
    const phone = begunPhone();
    const old = take(phone, 1000);
    const batch = id(801, 5);
    phone.does('undo', { entry: old.id }, { batch });
    take(phone, 2000, { batch });
    expect(values(phone)).toEqual([2000]);
    undo(phone);
    expect(values(phone)).toEqual([1000]);
  });

  it('leaves the other person’s hand alone, and stops at what a piece begins with', () => {
    const phone = begunPhone();
    take(phone, 1000, { who: { name: 'Kim', role: 'bench' } });
    expect(nextToTakeBack(phone.entries, 'installer')).toBeNull();
    expect(nextToTakeBack(phone.entries, 'bench')?.kind).toBe('take.add');
    expect(heads(phone.entries)).toHaveLength(1);
  });
});
