import { describe, expect, it } from 'vitest';
import { type Entry, fold, type Payload } from '../../../src/core/job/index.ts';
import { AB, begunPhone, C, id, type Phone, PIECE, RUN } from './support.ts';

const A = id(10, 3);
const B = id(11, 3);
const point = (of: string, label: string, more: Partial<Payload<'point.add'>['point']> = {}) => ({
  piece: PIECE,
  point: { id: of, label, slot: null, role: 'edge' as const, sides: [], nominal: null, ...more },
});
const asked = (of: string, points: string[], more: Partial<Payload<'reading.add'>['reading']> = {}) => ({
  id: of,
  slot: null,
  kind: 'straight' as const,
  points,
  needed: true,
  ...more,
});
const sheetOf = (phone: Phone) => fold(phone.entries);
const take = (phone: Phone, reading: string, value = 1000): Entry =>
  phone.does('take.add', { reading, text: String(value), unit: 'mm', value });
const run = (phone: Phone) => sheetOf(phone).runs.find(({ id: of }) => of === RUN);

describe('points of a piece', () => {
  it('can be added and leave again; what was read at them is set aside with the reason, not lost', () => {
    const phone = begunPhone();
    phone.does('point.add', point(C, 'P3'));
    phone.does('reading.add', { piece: PIECE, reading: asked(id(30, 3), [A, C]) });
    take(phone, id(30, 3), 700);
    const drop = phone.does('point.drop', { piece: PIECE, point: C, reason: 'no such corner' });
    const sheet = sheetOf(phone);
    expect(sheet.points.find(({ id: of }) => of === C)?.pieces).toEqual([]);
    expect(sheet.readings.map(({ id: of }) => of)).toEqual([AB]);
    expect(sheet.setAside).toMatchObject([{ reason: 'no such corner', reading: { value: 700 } }]);
    expect(sheet.carried).toEqual([]);
    phone.does('undo', { entry: drop.id });
    expect(sheetOf(phone).readings).toHaveLength(2);
    expect(sheetOf(phone).setAside).toEqual([]);
  });

  it('that left come back when somebody who knew adds them again, and not by an addition from before', () => {
    const phone = begunPhone();
    phone.does('point.add', point(C, 'P3'));
    phone.does('point.drop', { piece: PIECE, point: C, reason: 'mistake' });
    expect(sheetOf(phone).points.find(({ id: of }) => of === C)?.pieces).toEqual([]);
    phone.does('point.add', point(C, 'P3'));
    expect(sheetOf(phone).points.find(({ id: of }) => of === C)?.pieces).toEqual([PIECE]);
  });

  it('take their boxes, pairs, photos and edges with them when they leave', () => {
    const phone = begunPhone();
    phone.does('point.add', point(C, 'P3'));
    phone.does('run.points', { run: RUN, points: [A, C, B] });
    phone.does('point.drop', { piece: PIECE, point: A, reason: 'not there' });
    const sheet = sheetOf(phone);
    expect(sheet.pieces[0]?.pairs).toEqual([]);
    expect(sheet.shots[0]?.points).toEqual([]);
    expect(run(phone)?.points).toEqual([C, B]);
  });

  it('keep their label once measured or marked on a photo', () => {
    const phone = begunPhone();
    const label = () => sheetOf(phone).points.find(({ id: of }) => of === A)?.label;
    phone.does('point.label', { point: A, label: 'P1' });
    expect(label()).toBe('P1');
    take(phone, AB);
    phone.does('point.label', { point: A, label: 'P9' });
    expect(label()).toBe('P1');
  });

  it('that stand for a moved mark are named by it', () => {
    const phone = begunPhone();
    phone.does('point.add', point(C, 'W1a', { replaces: A }));
    expect(sheetOf(phone).points.map(({ replacedBy }) => replacedBy)).toEqual([C, null, null]);
  });
});

describe('what is asked for', () => {
  it('later stands in the walk after the step it names, in the order it was added, or at the end', () => {
    const phone = begunPhone();
    const [first, second, last] = [id(31, 3), id(32, 3), id(33, 3)];
    phone.does('reading.add', { piece: PIECE, reading: asked(first, [A, B]), after: 'A-B' });
    phone.does('reading.add', { piece: PIECE, reading: asked(second, [A, B]), after: 'A-B' });
    phone.does('reading.add', { piece: PIECE, reading: asked(last, [A, B]), after: 'no-such-step' });
    expect(sheetOf(phone).pieces[0]?.walk).toEqual(['A-B', first, second, 'edge', 'photo', 'berth', last]);
  });

  it('under a condition is asked for while the answer stands, and what was read all the same stays, not needed', () => {
    const phone = begunPhone();
    const reading = id(34, 3);
    const when = { question: 'berth', is: ['lift'] };
    phone.does('reading.add', { piece: PIECE, reading: asked(reading, [A, B], { when }) });
    const found = () => sheetOf(phone).readings.find(({ id: of }) => of === reading);
    const answer = (choice: string) => phone.does('question.answer', { piece: PIECE, slot: 'berth', choice, text: '' });
    expect(found()).toBeUndefined();
    answer('lift');
    expect(found()?.needed).toBe(true);
    answer('water');
    expect(found()).toBeUndefined();
    take(phone, reading, 500);
    expect(found()).toMatchObject({ needed: false, value: 500 });
  });

  it('under a condition brings its own points, and takes them along when it goes', () => {
    const phone = begunPhone();
    const reading = id(35, 3);
    phone.does('point.add', point(C, 'P3'));
    phone.does('run.points', { run: RUN, points: [A, C, B] });
    expect(run(phone)?.points).toEqual([A, C, B]);
    const when = { question: 'berth', is: ['lift'] };
    phone.does('reading.add', { piece: PIECE, reading: asked(reading, [A, C], { when }) });
    const there = () => sheetOf(phone).points.find(({ id: of }) => of === C)?.pieces;
    const answer = (choice: string) => phone.does('question.answer', { piece: PIECE, slot: 'berth', choice, text: '' });
    expect([there(), run(phone)?.points]).toEqual([[], [A, B]]);
    answer('lift');
    expect([there(), run(phone)?.points]).toEqual([[PIECE], [A, C, B]]);
    take(phone, reading, 500);
    answer('water');
    expect([there(), run(phone)?.points]).toEqual([[PIECE], [A, C, B]]);
  });

  it('no more is set aside, and is back when that is undone', () => {
    const phone = begunPhone();
    take(phone, AB);
    const drop = phone.does('reading.drop', { reading: AB, reason: 'not part of it' });
    expect(sheetOf(phone)).toMatchObject({ readings: [], setAside: [{ reason: 'not part of it' }] });
    expect(run(phone)?.whole).toBeNull();
    phone.does('undo', { entry: drop.id });
    expect(sheetOf(phone)).toMatchObject({ readings: [{ value: 1000 }], setAside: [] });
  });

  it('may have a value a sister boat had, which is never a take', () => {
    const phone = begunPhone();
    phone.does('reading.expect', { reading: AB, value: 990, text: '990', from: 'sister' });
    expect(sheetOf(phone).readings[0]).toMatchObject({ value: null, takes: [], expected: { value: 990 } });
  });
});

describe('an edge', () => {
  it('is one stretch until another is said to begin', () => {
    const phone = begunPhone();
    phone.does('point.add', point(C, 'P3'));
    phone.does('run.points', { run: RUN, points: [A, C, B] });
    expect(run(phone)?.stretches.map(({ from, to }) => [from, to])).toEqual([[A, B]]);
    phone.does('stretch.set', { run: RUN, from: C, field: 'begins', value: 'yes' });
    phone.does('stretch.set', { run: RUN, from: C, field: 'closes', value: 'zip' });
    phone.does('stretch.set', { run: RUN, from: C, field: 'pulls', value: 'aft' });
    phone.does('stretch.set', { run: RUN, from: A, field: 'closes', value: 'snap' });
    phone.does('stretch.set', { run: RUN, from: A, field: 'presence', value: 'planned' });
    phone.does('stretch.set', { run: RUN, from: A, field: 'count', value: '12' });
    expect(run(phone)).toMatchObject({
      type: 'snap',
      presence: 'planned',
      plannedCount: 12,
      stretches: [
        { from: A, to: C, closes: 'snap', count: 12, pulls: null },
        { from: C, to: B, closes: 'zip', pulls: 'aft', count: null },
      ],
    });
  });

  it('told as a whole, as jobs were before, is told so of every stretch that says nothing of its own', () => {
    const phone = begunPhone();
    phone.does('point.add', point(C, 'P3'));
    phone.does('run.points', { run: RUN, points: [A, C, B] });
    phone.does('run.detail', { run: RUN, field: 'type', value: 'snap' });
    phone.does('run.detail', { run: RUN, field: 'presence', value: 'planned' });
    phone.does('run.detail', { run: RUN, field: 'planned-count', value: '9' });
    expect(run(phone)?.stretches).toMatchObject([{ closes: 'snap', presence: 'planned', count: 9 }]);
    phone.does('stretch.set', { run: RUN, from: C, field: 'begins', value: 'yes' });
    phone.does('stretch.set', { run: RUN, from: C, field: 'closes', value: 'nothing' });
    expect(run(phone)).toMatchObject({
      type: 'snap',
      plannedCount: 9,
      stretches: [
        { closes: 'snap', presence: 'planned', count: null },
        { closes: 'nothing', presence: null, count: null },
      ],
    });
  });

  it('that could not be measured is so until somebody who knew of it tells more', () => {
    const phone = begunPhone();
    const other = phone.copy();
    phone.does('run.answer', { run: RUN, answer: 'could-not', reason: 'weather' });
    expect(run(phone)?.answer).toMatchObject({ answer: 'could-not', reason: 'weather' });
    const elsewhere = other.does('run.detail', { run: RUN, field: 'line', value: 'boat-edge' });
    phone.entries.push(elsewhere);
    expect(run(phone)?.answer).not.toBeNull();
    phone.does('stretch.set', { run: RUN, from: A, field: 'closes', value: 'zip' });
    expect(run(phone)?.answer).toBeNull();
  });

  it('answered in two ways at once is a dispute about that stretch', () => {
    const phone = begunPhone();
    const other = phone.copy();
    phone.does('stretch.set', { run: RUN, from: A, field: 'closes', value: 'zip' });
    other.does('stretch.set', { run: RUN, from: A, field: 'closes', value: 'snap' });
    const sheet = fold([...phone.entries, ...other.entries.slice(-1)]);
    expect(sheet.disputes).toMatchObject([{ on: 'stretch.closes', piece: PIECE, subject: `${RUN} ${A}` }]);
  });
});

describe('things in the way', () => {
  it('are listed with what is done about them until they are taken off', () => {
    const phone = begunPhone();
    const obstruction = id(40, 3);
    phone.does('obstruction.add', { obstruction, piece: PIECE, kind: 'cleat', label: 'C1', point: null });
    phone.does('obstruction.set', { obstruction, field: 'treatment', value: 'cut-out' });
    phone.does('obstruction.set', { obstruction, field: 'needed', value: 'yes' });
    expect(sheetOf(phone).obstructions).toMatchObject([{ label: 'C1', treatment: 'cut-out', needed: 'yes' }]);
    phone.does('obstruction.drop', { obstruction, reason: 'not there' });
    expect(sheetOf(phone).obstructions).toEqual([]);
  });
});

describe('the shop', () => {
  it('gives the job its own limits, the latest of them', () => {
    const phone = begunPhone();
    expect(sheetOf(phone).shop).toBeNull();
    phone.does('job.shop', { hem: 30 });
    phone.does('job.shop', { hem: 38, fastenerGap: { min: 80, max: 150 } });
    expect(sheetOf(phone).shop).toEqual({ hem: 38, fastenerGap: { min: 80, max: 150 } });
  });
});

describe('who asks for a job', () => {
  const asked = { shop: 'A shop', contact: '555-0100', note: 'Before May', language: 'en', measurer: 'owner' } as const;

  it('is told of the latest asking, and nobody where nobody asked', () => {
    const phone = begunPhone();
    expect(sheetOf(phone).request).toBeNull();
    phone.does('job.request', asked);
    const later = phone.does('job.request', { ...asked, note: '', language: 'es-MX' });
    expect(sheetOf(phone).request).toEqual({ ...asked, note: '', language: 'es-MX', at: later.at, who: later.who });
    phone.does('undo', { entry: later.id });
    expect(sheetOf(phone).request?.note).toBe('Before May');
  });

  it('is carried, not understood, where the language is none', () => {
    const phone = begunPhone();
    const bad = phone.does('job.request', { ...asked, language: 'javascript:' });
    expect(sheetOf(phone).request).toBeNull();
    expect(sheetOf(phone).carried).toEqual([{ entry: bad.id, kind: 'job.request', why: 'unreadable' }]);
  });
});
