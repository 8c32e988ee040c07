import { describe, expect, it } from 'vitest';
import { sisterOf } from '../../../src/core/job/again/index.ts';
import { fold, heads } from '../../../src/core/job/index.ts';
import { AB, begunPhone, id, PIECE, RUN } from './support.ts';

const bench = { who: { name: 'Lin', role: 'bench' } } as const;

function cleared() {
  const phone = begunPhone();
  phone.does('piece.clear', { piece: PIECE, judged: heads(phone.entries), basis: 'rules' }, bench);
  return phone;
}
const note = { piece: PIECE, where: { on: 'reading', id: AB }, change: -9.525, text: '-3/8', why: 'Slack' } as const;
const voids = (phone: ReturnType<typeof cleared>) => fold(phone.entries).clearances.map(({ voidedBy }) => voidedBy);

describe('what was found at the fitting', () => {
  it('is on the sheet, signed, and leaves the clearance standing, taken back or not', () => {
    const phone = cleared();
    const made = phone.does('fitting.note', note, bench);
    expect(fold(phone.entries).fittings).toEqual([{ id: made.id, ...note, from: null, at: made.at, who: made.who }]);
    expect(voids(phone)).toEqual([[]]);
    phone.does('undo', { entry: made.id }, bench);
    expect(fold(phone.entries).fittings).toEqual([]);
    expect(voids(phone)).toEqual([[]]);
  });

  it('does not make anything else silent', () => {
    const phone = cleared();
    const take = phone.does('take.add', { reading: AB, text: '1 m', unit: 'm', value: 1000 });
    const back = phone.does('undo', { entry: take.id });
    const lost = phone.does('undo', { entry: id(77, 77) });
    expect(voids(phone)).toEqual([[take.id, back.id, lost.id].sort()]);
  });

  it('goes along to a sister boat, at the same place under its new name, and on to the next one', () => {
    const phone = cleared();
    phone.does('fitting.note', note, bench);
    phone.does('fitting.note', { ...note, where: { on: 'run', id: RUN }, from: 'Perla' }, bench);
    phone.does('fitting.note', { ...note, where: { on: 'point', id: id(99, 99) } }, bench);
    let made = 0;
    const newId = () => {
      made += 1;
      return id(made, 88);
    };
    const { pieces, fittings } = sisterOf(phone.entries, { newId, from: 'Tilda' });
    const [piece] = pieces;
    const { piece: _, where: __, ...same } = note;
    expect(fittings).toEqual([
      { ...same, piece: piece?.id, where: { on: 'reading', id: piece?.readings[0]?.id }, from: 'Tilda' },
      { ...same, piece: piece?.id, where: { on: 'run', id: piece?.runs[0]?.id }, from: 'Perla' },
      { ...same, piece: piece?.id, where: null, from: 'Tilda' },
    ]);
  });
});
