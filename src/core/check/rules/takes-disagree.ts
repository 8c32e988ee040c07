import type { SheetReading, Take } from '../../job/index.ts';
import { aboutReading, type Context, liveTakes, takeIds } from '../context.ts';
import type { Rule } from '../rule.ts';

/**
 * Takes of one reading that differ by more than the tape explains: doubt, about the two that differ most for their size.
 * numbers: difference, tolerance, low, high (radians for a lean), takes (how many count), quantity ('length', 'angle').
 */
export const takesDisagree: Rule = {
  key: 'takes-disagree',
  find: (context) =>
    context.sheet.readings.flatMap((reading) => {
      const worst = worstPair(context, reading);
      if (!worst || worst.difference <= worst.tolerance) return [];
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
            takes: liveTakes(reading).length,
            quantity: reading.kind === 'lean' ? 'angle' : 'length',
          },
          basis: takeIds(reading),
        },
      ];
    }),
};

interface Pair {
  readonly low: Take;
  readonly high: Take;
  readonly difference: number;
  readonly tolerance: number;
}

function worstPair(context: Context, reading: SheetReading): Pair | null {
  const takes = liveTakes(reading)
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
