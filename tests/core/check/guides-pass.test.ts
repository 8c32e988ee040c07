import { describe, expect, it } from 'vitest';
import { gates, judge, solutionOf } from '../../../src/core/check/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import type { PieceKind, Who } from '../../../src/core/job/index.ts';
import { installer, owner } from './build.ts';
import { Measured } from './measured.ts';

/** How often the tape is read: by the walk, along edges, and again where nothing else would show a slip. */
interface Effort {
  readonly walk: number;
  readonly fasteners: number;
  readonly again: readonly string[];
  /** Points that have no place in the engine's shape, only a height over it. */
  readonly placeless: readonly string[];
  /** Answers where the first choice would be a conflict. */
  readonly answers?: Readonly<Record<string, string>>;
}

const EFFORT: Partial<Record<PieceKind, Effort>> = {
  'tension-shade': { walk: 10, fasteners: 0, again: ['h-A', 'h-B', 'h-C', 'h-D'], placeless: [] },
  'open-bow': { walk: 33, fasteners: 32, again: ['h-G'], placeless: ['G'], answers: { cleats: 'outside' } },
};

/** A piece measured on the guide's layout, and once more where the rules want a second take; gives what was read again. */
function measuredAsAsked(guide: (typeof guides)[number], who: Who): { measured: Measured; again: string[] } {
  const measured = new Measured(guide, { who, answers: EFFORT[guide.kind]?.answers ?? {} });
  const again = measured.job
    .all()
    .filter(({ rule }) => rule === 'reading-unchecked')
    .flatMap(({ subjects }) => measured.names(subjects));
  for (const slot of again) measured.read(slot);
  return { measured, again };
}

describe('a guide measured as it asks passes its own gate', () => {
  const all = guides.flatMap((guide) => [installer, owner].map((who) => [guide.kind, who.role, guide, who] as const));

  it.each(all)('%s, by an %s', (kind, _, guide, who) => {
    const { measured, again } = measuredAsAsked(guide, who);
    const sheet = measured.job.sheet();
    const { findings, pieces } = judge(sheet);
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(gates(sheet, findings).leave).toEqual({ clear: true, standing: [] });

    const judgement = pieces.get(measured.piece.id);
    const solution = judgement ? solutionOf(judgement.adjustment) : null;
    expect(judgement).toMatchObject({ adjustment: { state: 'solved' }, slips: null, complete: true });
    const fixed = new Set(solution?.points.filter(({ state }) => state === 'fixed').map(({ id }) => id));
    const effort = EFFORT[kind];
    const lacking = measured.piece.points.filter(({ id, role }) => role !== 'mark' && !fixed.has(id));
    expect(lacking.map(({ label }) => label)).toEqual(effort?.placeless);
    expect(solution?.points.every(({ relative95 }) => relative95 !== null)).toBe(true);

    // The exact effort, so that a change of a guide shows.
    expect({ again, walk: measured.piece.readings.length, fasteners: sheet.fasteners.length }).toEqual({
      again: effort?.again,
      walk: effort?.walk,
      fasteners: effort?.fasteners,
    });
    expect(measured.takes).toBe((effort?.walk ?? 0) + (effort?.fasteners ?? 0) + (effort?.again.length ?? 0));
  });

  it.each(all)('%s, by an %s: not with the last reading of the walk missing', (_, __, guide, who) => {
    const last = guide.walk.filter((step) => step.on === 'reading' && step.reading.kind === 'straight').at(-1);
    const measured = new Measured(guide, { who, open: [last?.slot ?? ''] });
    expect(gates(measured.job.sheet(), measured.job.all()).leave.clear).toBe(false);
  });

  it('knows the effort of every guide', () => {
    expect(Object.keys(EFFORT).sort()).toEqual(guides.map(({ kind }) => kind).sort());
  });
});
