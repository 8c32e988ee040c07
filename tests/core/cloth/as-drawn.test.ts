import { describe, expect, it } from 'vitest';
import { gates, judge } from '../../../src/core/check/index.ts';
import { blankJob, measuredAsDrawn, waysToAsk } from '../../../src/core/cloth/as-drawn.ts';
import { declarePiece } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { fold, type PieceDeclaration } from '../../../src/core/job/index.ts';
import { uuid } from '../check/build.ts';

const options = (space: string) => {
  let n = 0;
  return { system: 'metric', fraction: 16, at: '2026-05-04T09:00:00Z', newId: () => uuid(`${space} ${n++}`) } as const;
};

describe.each(guides)('a $kind measured as it is drawn', (guide) => {
  const piece = declarePiece(guide, 'Piece', options('piece').newId);
  const ways = waysToAsk(piece, new Map());

  it.each(ways.map((way) => [[...way].join('; '), way] as const))(
    '%s: nothing speaks against any reading',
    (_, way) => {
      const sheet = fold(measuredAsDrawn(piece, options('job'), way));
      expect(sheet.carried).toEqual([]);
      expect(sheet.readings.filter(({ needed, value }) => needed && value === null)).toEqual([]);
      const judgement = judge(sheet);
      expect(judgement.pieces.get(piece.id)).toMatchObject({
        complete: true,
        slips: null,
        adjustment: { state: 'solved' },
      });
      const said = judgement.findings.filter(
        // Of what is answered here for the sake of asking nothing is claimed.
        ({ rule, severity, subjects }) =>
          severity !== 'note' &&
          subjects.some(({ on }) => on === 'reading' || on === 'point') &&
          !['missing-reading', 'missing-mark', 'reading-unchecked', 'slip-unseen'].includes(rule),
      );
      expect(said).toEqual([]);
    },
  );

  it('asks every reading in one of its ways', () => {
    const asked = ways.flatMap((way) => fold(measuredAsDrawn(piece, options('job'), way)).readings.map(({ id }) => id));
    expect(new Set(asked)).toEqual(new Set(piece.readings.map(({ id }) => id)));
  });

  it('is a job in which nothing was done, before', () => {
    const blank = fold(blankJob(piece, options('blank')));
    expect(blank.readings.flatMap(({ takes }) => takes)).toEqual([]);
    expect(gates(blank, judge(blank).findings).leave.clear).toBe(false);
  });
});

describe('ways to ask', () => {
  const [guide] = guides;
  if (!guide) throw new Error('there is no guide');
  const piece = declarePiece(guide, 'Piece', options('ways').newId);
  const question = (slot: string, choices: string[]) => ({ slot, choices, needed: true });
  const reading = (n: number, when: { question: string; is: string[] }) => ({
    id: uuid(`w${n}`),
    slot: `w${n}`,
    kind: 'size' as const,
    points: [],
    needed: true,
    when,
  });
  const asked = {
    ...piece,
    questions: [question('a', ['x', 'y', 'z']), question('b', ['u', 'v']), question('c', ['p', 'q'])],
    readings: [reading(0, { question: 'a', is: ['x'] }), reading(1, { question: 'b', is: ['u', 'v'] })],
  };
  const told = (answered: [string, string][]) =>
    waysToAsk(asked, new Map(answered)).map((way) => [...way].map(([, choice]) => choice).join(''));

  it('are one where nothing depends on an answer', () => {
    expect(waysToAsk({ ...asked, readings: [] }, new Map())).toEqual([new Map()]);
  });
  it('are the first choices, and then each other choice in turn', () => {
    expect(told([])).toEqual(['xu', 'yu', 'zu', 'xv']);
  });
  it('keep what is answered', () => {
    expect(told([['a', 'z']])).toEqual(['zu', 'zv']);
  });
});

describe('numbers of a drawing', () => {
  const [a, b, c, d] = ['A', 'B', 'C', 'D'].map((label) => uuid(label)) as [string, string, string, string];
  const at = (label: string, id: string, nominal: [number, number, number]): PieceDeclaration['points'][number] => ({
    id,
    label,
    slot: label,
    role: 'corner',
    sides: [],
    nominal,
  });
  type Asked = Pick<PieceDeclaration['readings'][number], 'kind' | 'points' | 'via' | 'baseline' | 'of'>;
  const asked: [Asked, number | null][] = [
    [{ kind: 'straight', points: [a, b] }, 5000],
    [{ kind: 'girth', points: [a, d], via: [b] }, 5000 + 500],
    [{ kind: 'height', points: [d] }, 500],
    [{ kind: 'height', points: [d], baseline: [a, b] }, 500],
    [{ kind: 'height', points: [d], baseline: [a, b, c] }, 500],
    [{ kind: 'along', points: [c], baseline: [a, b] }, 3200],
    [{ kind: 'out', points: [c], baseline: [a, b] }, 2400],
    [{ kind: 'out', points: [b] }, 4000],
    [{ kind: 'size', points: [], of: 'width' }, 100],
    [{ kind: 'lean', points: [a, d] }, null],
    [{ kind: 'level', points: [a, b] }, null],
  ];
  const readings = asked.map(([reading, value], n) => ({
    declared: { id: uuid(`r${n}`), slot: `r${n}`, needed: true, ...reading },
    value,
  }));
  const piece: PieceDeclaration = {
    id: uuid('piece'),
    kind: 'free',
    name: 'Piece',
    flat: false,
    points: [
      at('A', a, [0, 0, 0]),
      at('B', b, [3000, 4000, 0]),
      at('C', c, [0, 4000, 0]),
      at('D', d, [3000, 4000, 500]),
    ],
    readings: readings.map(({ declared }) => declared),
    runs: [],
    shots: [],
    questions: [],
    boxes: [],
    pairs: [],
    walk: [],
  };

  it.each(readings.map(({ declared, value }) => [declared.kind, declared.id, value] as const))(
    'of a %s are those of its places',
    (_, id, value) => {
      const found = fold(measuredAsDrawn(piece, options('numbers'))).readings.find((reading) => reading.id === id);
      if (value === null) expect(found?.value).toBeNull();
      else expect(found?.value).toBeCloseTo(value, 6);
    },
  );
});
