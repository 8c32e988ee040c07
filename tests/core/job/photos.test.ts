import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entriesOfPhoto, fold, merge, type Payload, payloads, removedPhotos } from '../../../src/core/job/index.ts';
import { AB, begunPhone, id, type Phone, PIECE, RUN } from './support.ts';

const A = id(10, 3);
const PHOTO = id(40, 3);
const SAME = id(41, 3);
const picture = (photo = PHOTO, more: Partial<Payload<'photo.add'>> = {}): Payload<'photo.add'> => ({
  photo,
  sha256: 'a'.repeat(64),
  mime: 'image/jpeg',
  size: 10,
  width: 40,
  height: 30,
  piece: PIECE,
  slot: 'photo',
  placeKept: false,
  ...more,
});
const mark = (phone: Phone, photo = PHOTO) => phone.does('photo.mark', { photo, x: 0.2, y: 0.3, point: A, text: '' });
const line = (phone: Phone, photo = PHOTO) =>
  phone.does('photo.line', {
    photo,
    path: [
      { x: 0.1, y: 0.1 },
      { x: 0.4, y: 0.1 },
    ],
    of: 'edge',
    run: RUN,
    reference: null,
    length: null,
    text: '',
  });
const erase = (phone: Phone, photo: string) => {
  const erasure = phone.does('erase', { entries: entriesOfPhoto(phone.entries, photo), reason: 'asked' });
  return { erasure, entries: merge(phone.entries, []).entries };
};

describe('a picture taken at a reading', () => {
  it('says so, and is asked for by no shot', () => {
    const phone = begunPhone();
    phone.does('photo.add', picture(PHOTO, { slot: null, reading: AB }));
    const sheet = fold(phone.entries);
    expect(sheet.photos).toMatchObject([{ id: PHOTO, slot: null, reading: AB }]);
    expect(sheet.shots[0]?.photos).toEqual([]);
  });

  it('is a picture besides to a reader that does not know where it was taken', () => {
    const { reading: _, ...known } = picture(PHOTO, { slot: null, reading: AB });
    const phone = begunPhone();
    phone.does('photo.add', known);
    expect(fold(phone.entries).photos).toMatchObject([{ slot: null }]);
    expect(payloads['photo.add'].parse({ ...known, tides: 1 })).toEqual(known);
  });
});

describe('a picture that is taken back', () => {
  it('is gone with its marks and lines, and nothing waits for it', () => {
    const phone = begunPhone();
    const added = phone.does('photo.add', picture());
    mark(phone);
    line(phone);
    phone.does('undo', { entry: added.id });
    const sheet = fold(phone.entries);
    expect(sheet.photos).toEqual([]);
    expect(sheet.carried).toEqual([]);
    expect(removedPhotos(phone.entries)).toMatchObject([{ entry: { id: added.id }, payload: { photo: PHOTO } }]);
  });

  it('comes back with all of it, however often it was taken back', () => {
    const phone = begunPhone();
    const added = phone.does('photo.add', picture());
    mark(phone);
    line(phone);
    const before = fold(phone.entries).photos;
    phone.does('undo', { entry: added.id });
    phone.does('undo', { entry: added.id });
    const [removed] = removedPhotos(phone.entries);
    for (const entry of removed?.undos ?? []) phone.does('undo', { entry });
    expect(fold(phone.entries).photos).toEqual(before);
    expect(removedPhotos(phone.entries)).toEqual([]);
  });

  it('still leaves marks waiting for a picture that never was here', () => {
    const phone = begunPhone();
    const added = phone.does('photo.add', picture());
    phone.does('undo', { entry: added.id });
    const other = mark(phone, SAME);
    expect(fold(phone.entries).carried).toMatchObject([{ entry: other.id, why: 'loose' }]);
  });
});

describe('a picture that is withdrawn', () => {
  it('takes its marks, lines and notes along, and every entry with the same bytes', () => {
    const phone = begunPhone();
    const added = phone.does('photo.add', picture());
    const again = phone.does('photo.add', picture(SAME));
    const taken = phone.does('undo', { entry: again.id });
    const upon = [
      mark(phone),
      line(phone),
      mark(phone, SAME),
      phone.does('note.add', { on: PHOTO, text: 'her child' }),
    ];
    const free = phone.does('note.add', { on: null, text: 'rain' });
    const other = phone.does('photo.add', picture(id(42, 3), { sha256: 'b'.repeat(64) }));
    const named = entriesOfPhoto(phone.entries, PHOTO);
    expect(named.sort()).toEqual([added.id, again.id, ...upon.map((entry) => entry.id)].sort());
    for (const spared of [taken, free, other]) expect(named).not.toContain(spared.id);
    const { entries } = erase(phone, PHOTO);
    expect(JSON.stringify(entries)).not.toContain('a'.repeat(64));
    expect(JSON.stringify(entries)).not.toContain('her child');
    const sheet = fold(entries);
    expect(sheet.photos.map((photo) => photo.id)).toEqual([id(42, 3)]);
    expect(sheet.carried.every(({ why }) => why === 'erased')).toBe(true);
    expect(removedPhotos(entries)).toEqual([]);
  });

  it('silences a mark that somebody made meanwhile on another phone', () => {
    const phone = begunPhone();
    phone.does('photo.add', picture());
    const other = phone.copy();
    const late = mark(other);
    const { entries } = erase(phone, PHOTO);
    const sheet = fold(merge(entries, other.entries).entries);
    expect(sheet.carried.filter(({ entry }) => entry === late.id)).toEqual([]);
    expect(sheet.photos).toEqual([]);
  });

  it('stays withdrawn in whatever order three phones meet', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2], { minLength: 3 }), fc.boolean(), (order, marked) => {
        const phone = begunPhone();
        phone.does('photo.add', picture());
        const holds = phone.copy();
        if (marked) mark(holds);
        const third = phone.copy();
        const { entries } = erase(phone, PHOTO);
        const logbooks = [entries, holds.entries, third.entries];
        const met = order.reduce<typeof entries>((all, i) => merge(all, logbooks[i] ?? []).entries, []);
        expect(fold(met).photos).toEqual([]);
        expect(JSON.stringify(met)).not.toContain('a'.repeat(64));
      }),
    );
  });
});
