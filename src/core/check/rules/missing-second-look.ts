import { FACT_KINDS, type SheetReading } from '../../job/index.ts';
import { agreeingLooks, uncheckedByOthers } from '../alone.ts';
import { aboutReading, type Context, isMeasured, liveTakes, takeIds } from '../context.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * A reading that an owner took once only, of a piece of which everything needed has been read or answered: doubt. Somebody
 * who has never measured for cloth reads everything the cloth depends on a second time, later and without seeing the first.
 * Never found where an installer or the shop took the reading. Stations along an edge are left out: its whole is read twice.
 * Whoever was found to slip often may slip twice alike: what nothing but the repetition checks is then read a third time.
 * numbers: looks (how many are wanted: 2 or 3).
 */
export const missingSecondLook: Rule = {
  key: 'missing-second-look',
  find: (context) => [
    ...context.sheet.pieces.flatMap(({ id }) => {
      const own = context.sheet.readings.filter(({ piece, needed, kind }) => piece === id && needed && isTaped(kind));
      if (own.some((reading) => reading.state === 'open' && !isStation(reading))) return [];
      return own
        .filter((reading) => !isStation(reading) && onceByOwner(reading))
        .map((reading) => once(context, reading, 2));
    }),
    ...uncheckedByOthers(context)
      .filter(({ reading }) => byOwner(reading) && agreeingLooks(context, reading) === 2)
      .filter(({ reading }) => slipsFound(context, reading.piece) >= OFTEN)
      .map(({ reading }) => once(context, reading, 3)),
  ],
};

/** So many slips of one person found in a piece, and another may have been made twice. Tried on simulated owners. */
const OFTEN = 2;

const once = (context: Context, reading: SheetReading, looks: 2 | 3): Draft => ({
  severity: 'doubt',
  piece: reading.piece,
  slot: context.slotOf(reading),
  subjects: [aboutReading(reading)],
  numbers: { looks },
  basis: takeIds(reading),
});

/** Readings of which a look was struck out, or stands against two that agree. */
const slipsFound = ({ sheet }: Context, piece: string): number =>
  sheet.readings.filter(
    (reading) =>
      reading.piece === piece && reading.takes.some(({ struck, outvoted }) => struck !== null || outvoted === true),
  ).length;

const byOwner = (reading: SheetReading): boolean => liveTakes(reading).every(({ who }) => who.role === 'owner');

const isTaped = (kind: SheetReading['kind']): boolean => !FACT_KINDS.has(kind);

/** Places along an edge that have no step of their own. */
const isStation = ({ kind, slot }: SheetReading): boolean => kind === 'running' && slot === null;

function onceByOwner(reading: SheetReading): boolean {
  const [take, ...more] = liveTakes(reading);
  return isMeasured(reading) && more.length === 0 && take?.who.role === 'owner' && reading.supposed === null;
}
