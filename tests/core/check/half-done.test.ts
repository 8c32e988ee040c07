import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/core/check/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { EFFORTS } from './efforts.ts';
import { Measured } from './measured.ts';

/** What is said of readings that were taken right, while most are still open; answers about the use are not what is tried. */
const said = (measured: Measured): string[] =>
  judge(measured.job.sheet())
    .findings.filter(({ rule, severity }) => severity !== 'note' && !rule.startsWith('missing-'))
    .filter(({ rule }) => rule !== 'choice-conflict')
    .map(({ rule }) => rule);

describe.each(guides.map((guide) => [guide.kind, guide] as const))('%s, begun', (kind, guide) => {
  const answers = EFFORTS[kind]?.[0]?.answers ?? {};
  const walk = new Measured(guide, { answers }).job
    .sheet()
    .readings.flatMap(({ slot, needed }) => (needed && slot !== null ? [slot] : []));
  const only = (taken: readonly string[]): Measured =>
    new Measured(guide, { answers, bare: true, open: walk.filter((slot) => !taken.includes(slot)) });

  it('one tape alone is never doubted, whichever it is', () => {
    const doubted = walk.flatMap((slot) => said(only([slot])).map((rule) => `${slot}: ${rule}`));
    expect(doubted).toEqual([]);
  });

  it('nor are the first of the walk, however far it has come', () => {
    const doubted = walk
      .slice(1, -1)
      .flatMap((_, i) => said(only(walk.slice(0, i + 2))).map((rule) => `${i + 2}: ${rule}`));
    expect(doubted).toEqual([]);
  });
});
