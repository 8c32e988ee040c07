import type { Finding } from '../check/index.ts';
import type { Sheet, SheetReading, Take } from '../job/index.ts';
import { walkOrder } from './amend/walk.ts';

/** A reading to be read once more without showing what was read. fromOtherEnd: the tape is hooked at its last point. */
export interface SecondLook {
  readonly piece: string;
  readonly reading: string;
  readonly look: 2 | 3;
  readonly fromOtherEnd: boolean;
}

/** Rules that want a reading read a second time. */
const WANT_SECOND: ReadonlySet<string> = new Set(['missing-second-look', 'reading-unchecked', 'slip-unseen']);

/** The finding doubts nothing that was read; a second look, whenever it comes, is all it wants. */
export const wantsSecondLook = ({ rule }: Finding): boolean => WANT_SECOND.has(rule);

/**
 * What an owner reads again after the round, piece by piece: every second look in walking order, then thirds in walking order,
 * so that nothing is read twice in a row where there is anything else to read. Made from what the check says of the
 * sheet, so what no longer stands (a choice that changed, a point that was dropped) is asked for no more; what was added is.
 * A third look that agrees with neither of the others leaves the doubt to the shop: it is in no list. look 3 is any look after
 * the second, to settle what differs.
 */
export function secondLooks(sheet: Sheet, findings: readonly Finding[]): SecondLook[] {
  const open = findings.filter(({ accepted, severity }) => accepted === null && severity !== 'note');
  const namedBy = (wanted: (rule: string) => boolean): ReadonlySet<string> =>
    new Set(
      open
        .filter(({ rule }) => wanted(rule))
        .flatMap(({ subjects }) => subjects.flatMap(({ on, id }) => (on === 'reading' ? [id] : []))),
    );
  const twice = namedBy((rule) => WANT_SECOND.has(rule));
  const differing = new Map(
    open
      .filter(({ rule }) => rule === 'takes-disagree')
      .map(({ subjects, numbers }) => [subjects[0]?.id, numbers.before]),
  );
  const thrice = new Set(
    open.flatMap(({ rule, numbers, subjects }) =>
      rule === 'missing-second-look' && numbers.looks === 3 ? subjects.map(({ id }) => id) : [],
    ),
  );
  return sheet.pieces.flatMap(({ id: piece }) => {
    const rank = walkOrder(sheet, piece);
    const own = sheet.readings.filter((reading) => reading.piece === piece && byOwner(reading));
    const inOrder = own.sort((a, b) => rank(a) - rank(b));
    const seconds = inOrder.filter((reading) => twice.has(reading.id) && looksOf(reading).length === 1);
    const thirds = inOrder.filter(
      (reading) => settles(reading, differing.get(reading.id)) || (thrice.has(reading.id) && mayGoOn(reading)),
    );
    return [
      ...seconds.map((reading) => lookAt(piece, reading, 2)),
      ...thirds.map((reading) => lookAt(piece, reading, 3)),
    ];
  });
}

/** More looks than these settle nothing any more: the shop asks in its own words. */
const MOST_LOOKS = 6;

/** Two looks that differ want a third; so does one that stands alone against others that agreed before it. */
function settles(reading: SheetReading, before: Finding['numbers'][string] | undefined): boolean {
  const taken = looksOf(reading).length;
  if (before === undefined) return false;
  return taken === 2 || (mayGoOn(reading) && Number(before) > 1);
}

const mayGoOn = (reading: SheetReading): boolean => looksOf(reading).length < MOST_LOOKS;

/** The looks at a reading that stand, the first first; what was struck out is none. */
export const looksOf = (reading: SheetReading): Take[] => reading.takes.filter(({ struck }) => struck === null);

const byOwner = (reading: SheetReading): boolean => looksOf(reading).at(-1)?.who.role === 'owner';

const lookAt = (piece: string, reading: SheetReading, look: 2 | 3): SecondLook => ({
  piece,
  reading: reading.id,
  look,
  fromOtherEnd: look === 2 && hasTwoEnds(reading),
});

/** A tape between two points can be hooked at either; a height, a station or an offset begins where it begins. */
const hasTwoEnds = ({ kind, points }: SheetReading): boolean =>
  (kind === 'straight' || kind === 'girth') && points.length > 1;
