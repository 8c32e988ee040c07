import { FACT_KINDS, type SheetReading } from '../../job/index.ts';
import { aboutReading, isMeasured, liveTakes, takeIds } from '../context.ts';
import type { Rule } from '../rule.ts';

/**
 * A reading that an owner took once only, of a piece of which everything needed has been read or answered: doubt. Somebody
 * who has never measured for cloth reads everything the cloth depends on a second time, later and without seeing the first.
 * Never found where an installer or the shop took the reading. Stations along an edge are left out: its whole is read twice.
 * numbers: none.
 */
export const missingSecondLook: Rule = {
  key: 'missing-second-look',
  find: (context) =>
    context.sheet.pieces.flatMap(({ id }) => {
      const own = context.sheet.readings.filter(({ piece, needed, kind }) => piece === id && needed && isTaped(kind));
      if (own.some((reading) => reading.state === 'open' && !isStation(reading))) return [];
      return own
        .filter((reading) => !isStation(reading) && onceByOwner(reading))
        .map((reading) => ({
          severity: 'doubt' as const,
          piece: id,
          slot: context.slotOf(reading),
          subjects: [aboutReading(reading)],
          numbers: {},
          basis: takeIds(reading),
        }));
    }),
};

const isTaped = (kind: SheetReading['kind']): boolean => !FACT_KINDS.has(kind);

/** Places along an edge that have no step of their own. */
const isStation = ({ kind, slot }: SheetReading): boolean => kind === 'running' && slot === null;

function onceByOwner(reading: SheetReading): boolean {
  const [take, ...more] = liveTakes(reading);
  return isMeasured(reading) && more.length === 0 && take?.who.role === 'owner' && reading.supposed === null;
}
