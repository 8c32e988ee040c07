import { FACT_KINDS, type PointRole } from '../../job/index.ts';
import { aboutReading, type Context, isMeasured, liveTakes, type Measured, takeIds } from '../context.ts';
import { takesAgree } from '../network.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * A reading that differs from what a sister boat measured there by more than tape and tolerance explain: doubt. Two points of
 * the boat itself are held to the shop's tolerance; a point that people choose along an edge to what the shop grants two
 * sides that are alike; marks lie where somebody stuck them and are not compared. Where most of what can be compared
 * differs, the boat is no sister: one doubt about the piece.
 * Subjects: the reading, or the piece. numbers: about ('reading', 'piece'), expected and measured (the bench only is told
 * them), difference (measured less expected), allowed, from (the sister boat), takes, quantity; for a piece: differ and
 * compared (how many readings).
 */
export const unlikeSister: Rule = {
  key: 'unlike-sister',
  find: (context) =>
    context.sheet.pieces.flatMap(({ id }): Draft[] => {
      const compared = context.sheet.readings.flatMap((reading) =>
        reading.piece === id ? (compare(context, reading) ?? []) : [],
      );
      const differ = compared.filter(({ difference, allowed }) => Math.abs(difference) > allowed);
      if (differ.length > MANY && differ.length * 2 > compared.length) return [aboutPiece(id, differ, compared.length)];
      return differ.map((one) => aboutOne(context, one));
    }),
};

/** Up to this many can be looked at one by one. */
const MANY = 2;

interface Compared {
  readonly reading: Measured;
  readonly expected: NonNullable<Measured['expected']>;
  readonly difference: number;
  readonly allowed: number;
}

function compare(context: Context, reading: Context['sheet']['readings'][number]): Compared | null {
  const { expected } = reading;
  if (!expected || !isMeasured(reading) || reading.supposed || FACT_KINDS.has(reading.kind)) return null;
  const takes = liveTakes(reading);
  const tolerance = toleranceOf(context, reading);
  if (tolerance === null || !takesAgree(context, reading, takes)) return null;
  const byOwner = takes.some(({ who }) => who.role === 'owner');
  // The sister was read with a tape too.
  const tape = context.limits.takeSigmas * Math.SQRT2 * context.sigma(reading);
  const allowed = Math.max(tape, byOwner ? tolerance * context.limits.ownerFactor : tolerance);
  return { reading, expected, difference: reading.value - expected.value, allowed };
}

/** How far a reading may lie from the sister's, mm (nothing beside the tape for an angle); null where it is not comparable. */
function toleranceOf({ points, limits, runs }: Context, reading: Measured): number | null {
  if (reading.kind === 'lean') return 0;
  const along = reading.kind === 'running' ? (runs.get(reading.run ?? '')?.points ?? []) : [];
  const { via = [], baseline = [] } = reading;
  const roles = new Set<PointRole | undefined>(
    [...reading.points, ...via, ...baseline, ...along].map((id) => points.get(id)?.role),
  );
  if (roles.has('mark')) return null;
  if (roles.has('edge')) return limits.portStarboard;
  return limits.tolerance[roles.has('corner') || roles.has('mount') ? 'corner' : 'line'];
}

function aboutOne(context: Context, { reading, expected, difference, allowed }: Compared): Draft {
  return {
    severity: 'doubt',
    piece: reading.piece,
    slot: context.slotOf(reading),
    subjects: [aboutReading(reading)],
    numbers: {
      about: 'reading',
      expected: expected.value,
      measured: reading.value,
      difference,
      allowed,
      from: expected.from,
      takes: liveTakes(reading).length,
      quantity: reading.kind === 'lean' ? 'angle' : 'length',
    },
    basis: takeIds(reading),
  };
}

function aboutPiece(piece: string, differ: readonly Compared[], compared: number): Draft {
  return {
    severity: 'doubt',
    piece,
    slot: null,
    subjects: [{ on: 'piece', id: piece }],
    numbers: { about: 'piece', differ: differ.length, compared, from: differ[0]?.expected.from ?? '' },
    basis: takeIds(...differ.map(({ reading }) => reading)),
  };
}
