import { describe, expect, it } from 'vitest';
import { gates, judge, solutionOf } from '../../../src/core/check/index.ts';
import type { Guide } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { installer, owner } from './build.ts';
import { EFFORTS, type Effort } from './efforts.ts';
import { Measured } from './measured.ts';

const cases = guides.flatMap((guide) =>
  (EFFORTS[guide.kind] ?? []).flatMap((one) =>
    [installer, owner].map((who) => ({ name: `${guide.kind} ${JSON.stringify(one.answers)}`, guide, who, ...one })),
  ),
);
type Case = (typeof cases)[number];

const TWICE: ReadonlySet<string> = new Set(['missing-second-look', 'reading-unchecked', 'slip-unseen']);

/** A piece measured on the guide's layout, and once more what the rules want read again; gives what that was. */
function measuredAsAsked({ guide, who, answers, takesOn }: Case): { measured: Measured; again: string[] } {
  const measured = new Measured(guide, { who, answers });
  const again = measured.job
    .all()
    .filter(({ rule }) => TWICE.has(rule))
    .flatMap(({ subjects }) => measured.names(subjects.filter(({ on }) => on === 'reading')));
  for (const slot of new Set(again)) measured.read(slot);
  if (takesOn)
    for (const { id, basis } of measured.job.of('choice-conflict'))
      measured.job.add('finding.accept', { finding: id, basis, reason: 'The shop knows' });
  return { measured, again: [...new Set(again)] };
}

describe('a guide measured as it asks passes its own gate', () => {
  it.each(cases)('$name, by an $who.role', (one) => {
    const { measured, again } = measuredAsAsked(one);
    const sheet = measured.job.sheet();
    const { findings, pieces } = judge(sheet);
    expect(findings.filter(({ severity, accepted }) => severity !== 'note' && accepted === null)).toEqual([]);
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
    // An owner reads everything twice that the cloth depends on.
    const needed = sheet.readings.filter((reading) => reading.needed && reading.slot !== null);
    const twice = one.who === owner ? needed.map(({ slot }) => slot ?? '') : one.again;
    expect({ again: [...again].sort(), walk, fasteners: sheet.fasteners.length }).toEqual({
      again: [...twice].sort(),
      walk: one.walk,
      fasteners: one.fasteners,
    });
    expect(measured.takes).toBe(one.walk + one.fasteners + twice.length);
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
