import { misreadings, type SlipKind } from '../../adjust/index.ts';
import { agreement, type SheetReading, type Take } from '../../job/index.ts';
import { aboutReading, type Context, countingTakes, takeIds } from '../context.ts';
import { takesAgree } from '../network.ts';
import type { Rule } from '../rule.ts';

/**
 * Takes of one reading that differ by more than the tape explains: doubt, about the two that differ most for their size. A
 * take that two others outvote does not count, so once two of three agree nothing is said; where all three differ, it stands.
 * Where the latest look fits all the other readings, it can be settled in one tap: keep and strike name the takes, slip the
 * kind of slip that turns the older into the latest, where there is one.
 * numbers: difference, tolerance, low, high (radians for a lean), takes (how many count), before (how many agree of those
 * before the last), quantity ('length', 'angle'), keep
 * and strike (ids of takes, or null), slip (kind, or null).
 */
export const takesDisagree: Rule = {
  key: 'takes-disagree',
  find: (context) =>
    context.sheet.readings.flatMap((reading) => {
      const worst = worstPair(context, reading);
      if (!worst || worst.difference <= worst.tolerance) return [];
      if (takesAgree(context, reading, countingTakes(reading))) return [];
      const { low, high, difference, tolerance } = worst;
      return [
        {
          severity: 'doubt',
          piece: reading.piece,
          slot: context.slotOf(reading),
          subjects: [aboutReading(reading), { on: 'take', id: low.id }, { on: 'take', id: high.id }],
          numbers: {
            difference,
            tolerance,
            low: low.value,
            high: high.value,
            takes: countingTakes(reading).length,
            before: agreeingBefore(context, reading),
            quantity: reading.kind === 'lean' ? 'angle' : 'length',
            ...settlement(context, reading),
          },
          basis: takeIds(reading),
        },
      ];
    }),
};

/** Of the takes before the last: how many agree with each other, at best. */
function agreeingBefore(context: Context, reading: SheetReading): number {
  const looks = countingTakes(reading).map((take) => ({ value: take.value, sigma: context.takeSigma(reading, take) }));
  const ending = looks.slice(0, -1).map((_, i) => agreement(looks.slice(0, i + 1), context.limits.takeSigmas));
  return Math.max(0, ...ending.map((group) => group?.length ?? 0));
}

interface Settlement {
  readonly keep: string | null;
  readonly strike: string | null;
  readonly slip: SlipKind | null;
}

/** The engine goes by the latest take; where it then doubts nothing, the take before was the slip. */
function settlement(context: Context, reading: SheetReading): Settlement {
  const [older, latest] = countingTakes(reading).slice(-2);
  const judgement = context.judgement(reading.piece);
  const fits = judgement?.adjustment.state === 'solved' && !judgement.adjustment.solution.doubted;
  const checked =
    fits && judgement.adjustment.solution.readings.some((r) => r.id === reading.id && r.control !== 'unchecked');
  if (!older || !latest || !checked || countingTakes(reading).length > 2)
    return { keep: null, strike: null, slip: null };
  const meant = older.unit === 'deg' ? [] : misreadings(older.text, older.unit);
  const near = context.limits.takeSigmas * Math.SQRT2 * context.takeSigma(reading, latest);
  const [slip] = meant
    .filter(({ mm, spread }) => Math.abs(mm - latest.value) <= near + 2 * spread)
    .sort((a, b) => b.logChance - a.logChance);
  return { keep: latest.id, strike: older.id, slip: slip?.kind ?? null };
}

interface Pair {
  readonly low: Take;
  readonly high: Take;
  readonly difference: number;
  readonly tolerance: number;
}

function worstPair(context: Context, reading: SheetReading): Pair | null {
  const takes = countingTakes(reading)
    .map((take) => ({ take, sigma: context.takeSigma(reading, take) }))
    .sort((a, b) => a.take.value - b.take.value || (a.take.id < b.take.id ? -1 : 1));
  let worst: Pair | null = null;
  for (const [index, low] of takes.entries()) {
    for (const high of takes.slice(index + 1)) {
      const difference = high.take.value - low.take.value;
      const tolerance = context.limits.takeSigmas * Math.hypot(low.sigma, high.sigma);
      if (!worst || difference / tolerance > worst.difference / worst.tolerance)
        worst = { low: low.take, high: high.take, difference, tolerance };
    }
  }
  return worst;
}
