import { describe, expect, it } from 'vitest';
import { gates, judge, solutionOf } from '../../../src/core/check/index.ts';
import type { Guide } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import type { PieceKind } from '../../../src/core/job/index.ts';
import { installer, owner } from './build.ts';
import { Measured } from './measured.ts';

/** How often the tape is read: by the walk, along edges, and again where nothing else would show a slip that matters. */
interface Effort {
  /** What is answered where it is not the first choice. */
  readonly answers: Readonly<Record<string, string>>;
  readonly walk: number;
  readonly fasteners: number;
  readonly again: readonly string[];
  /** Points that have no place in the engine's shape, only a height over it. */
  readonly placeless: readonly string[];
}

const effort = (
  answers: Effort['answers'],
  walk: number,
  again: readonly string[] = [],
  more: Partial<Effort> = {},
): Effort => ({ answers, walk, again, fasteners: 0, placeless: [], ...more });

/** Each guide as it opens, and with every answer that makes it ask for something else. */
const EFFORTS: Partial<Record<PieceKind, readonly Effort[]>> = {
  'tension-shade': [effort({}, 10, ['h-A', 'h-B', 'h-C', 'h-D'])],
  'open-bow': [effort({ cleats: 'outside' }, 33, ['h-G'], { fasteners: 32, placeless: ['G'] })],
  'folding-top': [
    effort({}, 39),
    effort({ bows: 'two', straps: 'none', folds: 'stays-up' }, 20, ['h-P1', 'h-S1', 'h-P2', 'h-S2']),
    effort({ bows: 'four', straps: 'forward-pair' }, 53),
  ],
  'box-cover': [effort({}, 24), effort({ corners: 'rounded' }, 25, ['radius'])],
  cushion: [
    effort({}, 19, ['thickness']),
    effort({ outline: 'station-offset', what: 'carpet' }, 20),
    effort({ front: 'hollow', hinge: 'one', what: 'bolster' }, 28, ['thickness']),
    effort({ front: 'belly', hinge: 'one', outline: 'station-offset', what: 'carpet' }, 29),
    effort(
      { bevel: 'undercut', corners: 'rounded', fastening: 'snaps' },
      23,
      ['thickness', 'radius', 'bevel-left', 'bevel-right'],
      {
        fasteners: 13,
      },
    ),
  ],
};

const cases = guides.flatMap((guide) =>
  (EFFORTS[guide.kind] ?? []).flatMap((one) =>
    [installer, owner].map((who) => ({ name: `${guide.kind} ${JSON.stringify(one.answers)}`, guide, who, ...one })),
  ),
);
type Case = (typeof cases)[number];

/** A piece measured on the guide's layout, and once more what the rules want read again; gives what that was. */
function measuredAsAsked({ guide, who, answers }: Case): { measured: Measured; again: string[] } {
  const measured = new Measured(guide, { who, answers });
  const again = measured.job
    .all()
    .filter(({ rule }) => rule === 'reading-unchecked' || rule === 'slip-unseen')
    .flatMap(({ subjects }) => measured.names(subjects.filter(({ on }) => on === 'reading')));
  for (const slot of new Set(again)) measured.read(slot);
  return { measured, again: [...new Set(again)] };
}

describe('a guide measured as it asks passes its own gate', () => {
  it.each(cases)('$name, by an $who.role', (one) => {
    const { measured, again } = measuredAsAsked(one);
    const sheet = measured.job.sheet();
    const { findings, pieces } = judge(sheet);
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(gates(sheet, findings).leave).toEqual({ clear: true, standing: [] });

    const judgement = pieces.get(measured.piece.id);
    const solution = judgement ? solutionOf(judgement.adjustment) : null;
    expect(judgement).toMatchObject({ adjustment: { state: 'solved' }, slips: null, complete: true });
    const fixed = new Set(solution?.points.filter(({ state }) => state === 'fixed').map(({ id }) => id));
    const asked = sheet.points.filter(({ pieces: of, role }) => of.includes(measured.piece.id) && role !== 'mark');
    expect(asked.filter(({ id }) => !fixed.has(id)).map(({ label }) => label)).toEqual(one.placeless);
    expect(solution?.points.every(({ relative95 }) => relative95 !== null)).toBe(true);

    // The exact effort, so that a change of a guide shows.
    const walk = sheet.readings.filter(({ slot }) => slot !== null).length;
    expect({ again: [...again].sort(), walk, fasteners: sheet.fasteners.length }).toEqual({
      again: [...one.again].sort(),
      walk: one.walk,
      fasteners: one.fasteners,
    });
    expect(measured.takes).toBe(one.walk + one.fasteners + one.again.length);
  });

  it.each(cases)('$name, by an $who.role: not with the last reading of the walk missing', ({ guide, who, answers }) => {
    const walked = new Measured(guide, { who, answers }).job.sheet().readings;
    const last = walked.filter(({ kind, needed }) => kind === 'straight' && needed).at(-1);
    const measured = new Measured(guide, { who, answers, open: [last?.slot ?? ''] });
    expect(gates(measured.job.sheet(), measured.job.all()).leave.clear).toBe(false);
  });

  it('knows the effort of every guide', () => {
    expect(Object.keys(EFFORTS).sort()).toEqual(guides.map(({ kind }) => kind).sort());
  });

  it.each(guides)('$kind: every condition is met by one of the ways it is measured here', (guide) => {
    const met = new Set((EFFORTS[guide.kind] ?? []).flatMap(({ answers }) => metBy(guide, answers)));
    const measures = guide.walk.filter((step) => step.on !== 'question' && step.when !== undefined);
    expect(measures.map(({ slot }) => slot).filter((slot) => !met.has(slot))).toEqual([]);
  });
});

/** Slots asked for under a condition that these answers meet. */
function metBy({ walk }: Guide, answers: Effort['answers']): string[] {
  const choices = new Map(
    walk.flatMap((step) => (step.on === 'question' ? [[step.slot, answers[step.slot] ?? step.choices[0]]] : [])),
  );
  return walk.flatMap(({ slot, when }) => (when?.is.includes(choices.get(when.question) ?? '') ? [slot] : []));
}
