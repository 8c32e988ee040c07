import { expect, it } from 'vitest';
import { firstAsked, nextAsked, stepsOf } from '../../../src/core/guide/index.ts';
import { fold } from '../../../src/core/job/index.ts';
import { AB, begunPhone, id, PIECE } from '../job/support.ts';

it('leads to what is asked again in walking order, and to nothing besides', () => {
  const phone = begunPhone();
  expect(firstAsked(fold(phone.entries))).toBeNull();
  phone.does('take.add', { reading: AB, text: '40', unit: 'mm', value: 40 });
  phone.does('ask.again', {
    piece: PIECE,
    note: '',
    items: [
      { on: 'question', id: 'berth', note: '' },
      { on: 'reading', id: AB, note: 'Again?' },
    ],
  });
  const sheet = fold(phone.entries);
  const steps = stepsOf(sheet, PIECE);
  expect(steps.map(({ key, state }) => [key, state])).toEqual([
    ['A-B', 'asked-again'],
    ['edge', 'open'],
    ['photo', 'open'],
    ['berth', 'asked-again'],
  ]);
  expect(firstAsked(sheet)).toMatchObject({ piece: PIECE, step: { key: 'A-B' } });
  expect(firstAsked(sheet, PIECE)).toBeNull();
  expect(nextAsked(steps, 0)?.key).toBe('berth');
  expect(nextAsked(steps, 3)?.key).toBe('A-B');
  phone.does('take.add', { reading: AB, text: '40', unit: 'mm', value: 40 });
  phone.does('question.answer', { piece: PIECE, slot: 'berth', choice: 'lift', text: '' });
  expect(firstAsked(fold(phone.entries))).toBeNull();
  expect(stepsOf(fold(phone.entries), id(1, 9))).toEqual([]);
});
