import { describe, expect, it, vi } from 'vitest';
import { adjust } from '../../../src/core/adjust/index.ts';
import { makeContext } from '../../../src/core/check/context.ts';
import { defaultLimits } from '../../../src/core/check/limits.ts';
import { networkOf } from '../../../src/core/check/network.ts';
import type { Guide } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { defaultInstruments } from '../../../src/core/job/index.ts';
import { EFFORTS, type Effort } from './efforts.ts';
import { deviates, Measured } from './measured.ts';

vi.setConfig({ testTimeout: 300_000 });

const INCH = 25.4;
/** A foot, and ten inches: the wrong digit where the tape is read. */
const SLIPS = [12 * INCH, -12 * INCH, 10 * INCH, -10 * INCH];

/** On a gunwale of 12 m the last ten inches of a whole that is too long look like an end without fasteners. */
const HIDDEN: ReadonlySet<string> = new Set([`edge-whole ${10 * INCH}`]);

/** Whether anything stands once what the rules want read again was; second looks are right. */
function standsAfterLooking(measured: Measured): boolean {
  const again = measured.job
    .all()
    .filter(({ rule }) => rule === 'reading-unchecked' || rule === 'slip-unseen')
    .flatMap(({ subjects }) => measured.names(subjects.filter(({ on }) => on === 'reading')));
  for (const slot of new Set(again)) measured.read(slot, { added: {} });
  return measured.job.all().some(({ severity }) => severity !== 'note');
}

/** Whether the engine doubts the readings; who is to blame is not asked, which is what takes its time. */
function doubted({ job, piece }: Measured): boolean {
  const context = makeContext(job.sheet(), defaultLimits, defaultInstruments, () => null);
  const adjustment = adjust(networkOf(context, piece.id), { seekShapes: false });
  return adjustment.state !== 'solved' || adjustment.solution.doubted;
}

/** Every needed reading with one slip in it, each in turn: those nobody would notice before leaving. */
function unnoticed(guide: Guide, { answers }: Effort): { missed: string[]; tried: number } {
  const plain = new Measured(guide, { answers });
  const slots = plain.job.sheet().readings.flatMap(({ slot, needed }) => (slot !== null && needed ? [slot] : []));
  const slips = slots.map((slot, i) => {
    const by = SLIPS[i % SLIPS.length] ?? 0;
    // A length below nothing is refused before anything is checked.
    return { slot, by: plain.length(slot) + by > 0 ? by : -by };
  });
  const missed = slips.filter(({ slot, by }, i) => {
    const manner = { answers, added: { [slot]: by }, noise: deviates(i + 1) };
    const measured = new Measured(guide, manner);
    return !doubted(measured) && !standsAfterLooking(measured);
  });
  return { missed: missed.map(({ slot, by }) => `${slot} ${by}`), tried: slips.length };
}

describe('a slip of a foot or of ten inches is noticed in every needed reading', () => {
  const all = guides.flatMap((guide) =>
    (EFFORTS[guide.kind] ?? []).map((effort) => ({
      name: `${guide.kind} ${JSON.stringify(effort.answers)}`,
      guide,
      effort,
    })),
  );

  it.each(all)('$name', ({ guide, effort }) => {
    const { missed, tried } = unnoticed(guide, effort);
    expect(missed.filter((slip) => !HIDDEN.has(slip))).toEqual([]);
    expect(tried).toBeGreaterThan(5);
  });
});
