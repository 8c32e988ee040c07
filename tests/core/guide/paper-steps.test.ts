import { describe, expect, it } from 'vitest';
import { paperSteps } from '../../../src/core/guide/again/index.ts';
import { declarePiece, stepsOf } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { fold, type When } from '../../../src/core/job/index.ts';
import { begunPhone, id, Phone, PIECE } from '../job/support.ts';

const counter = () => {
  let n = 0;
  return () => {
    n += 1;
    return id(n, 70);
  };
};

describe.each(guides)('the paper of $kind', (guide) => {
  it('has every step of the guide once, in its order, numbered as the walk is', () => {
    const phone = new Phone();
    phone.does('job.open', { name: '', system: 'metric', fraction: 16 });
    const piece = declarePiece(guide, 'Piece', counter());
    phone.does('piece.add', piece);
    const steps = paperSteps(phone.entries, piece.id);
    expect(steps.map(({ step }) => step.key)).toEqual(piece.walk);
    const walk = stepsOf(fold(phone.entries), piece.id).map(({ key }) => key);
    const plain = steps.filter(({ when }) => when === null);
    expect(plain.map(({ number, step }) => [number, step.key])).toEqual(
      walk.map((key, index) => [String(index + 1), key]),
    );
    for (const { number, when } of steps) if (when) expect(number).toMatch(/^\d+[a-z]$/);
    expect(steps.flatMap(({ step }) => step.cautions)).toEqual((piece.cautions ?? []).flatMap(({ keys }) => keys));
  });
});

describe('the paper of a piece', () => {
  const when: When = { question: 'berth', is: ['lift'] };
  const begun = () => {
    const phone = begunPhone();
    for (const [n, after] of [
      [34, 'A-B'],
      [35, undefined],
    ] as const)
      phone.does('reading.add', {
        piece: PIECE,
        reading: { id: id(n, 3), slot: `r${n}`, kind: 'height', points: [id(10, 3)], needed: true, when },
        ...(after ? { after } : {}),
      });
    return phone;
  };
  const numbered = (phone: Phone) =>
    paperSteps(phone.entries, PIECE).map(({ number, step, when: under }) => [number, step.key, under !== null]);

  it('has what may still be asked under the letter of the step before', () => {
    expect(numbered(begun())).toEqual([
      ['1', 'A-B', false],
      ['1a', 'r34', true],
      ['2', 'edge', false],
      ['3', 'photo', false],
      ['4', 'berth', false],
      ['4a', 'r35', true],
    ]);
  });

  it('counts it once its condition holds, as the walk does', () => {
    const phone = begun();
    phone.does('question.answer', { piece: PIECE, slot: 'berth', choice: 'lift', text: '' });
    expect(numbered(phone).map(([number, key]) => [number, key])).toEqual(
      stepsOf(fold(phone.entries), PIECE).map(({ key }, index) => [String(index + 1), key]),
    );
  });

  it('is empty where there is no such piece', () => {
    expect(paperSteps(begunPhone().entries, id(9, 9))).toEqual([]);
  });
});
