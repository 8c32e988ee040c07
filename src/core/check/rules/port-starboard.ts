import { aboutReading, type Context, isMeasured, type Measured, takeIds } from '../context.ts';
import type { Draft, Rule } from '../rule.ts';

/** An angle has no millimetres to compare; stations of a run have no points. */
const COMPARED = new Set(['straight', 'girth', 'height', 'along', 'out']);

/**
 * The same reading on both sides of the boat, further apart than the shop's limit: note, never more. Boats are mirror images
 * on paper and rarely afloat, so both sides are measured and both are right.
 * Subjects: the port reading, the starboard reading.
 * numbers: port, starboard, difference (port less starboard), limit.
 */
export const portStarboard: Rule = {
  key: 'port-starboard',
  find: (context) =>
    context.sheet.pieces.flatMap((piece): Draft[] => {
      const mirror = new Map(
        piece.pairs.flatMap(([port, starboard]) => [
          [port, starboard],
          [starboard, port],
        ]),
      );
      const ports = new Set(piece.pairs.map(([port]) => port));
      const own = context.sheet.readings.filter(
        (reading): reading is Measured =>
          reading.piece === piece.id && isMeasured(reading) && COMPARED.has(reading.kind),
      );
      const byPlace = new Map(own.map((reading) => [placeOf(reading, (point) => point), reading]));
      return own.flatMap((reading) => {
        const other = byPlace.get(placeOf(reading, (point) => mirror.get(point) ?? point));
        return other && leads(reading, other, ports) ? compared(context, reading, other) : [];
      });
    }),
};

/** Where a reading was taken, with every point replaced; the way it was read does not matter, the order of a girth does. */
function placeOf(reading: Measured, replace: (point: string) => string): string {
  const path = [reading.points[0] ?? '', ...(reading.via ?? []), ...reading.points.slice(1)].map(replace);
  const back = [...path].reverse();
  const way = path.join() < back.join() ? path : back;
  const baseline = (reading.baseline ?? []).map(replace).sort();
  return [reading.kind, ...way, '|', ...baseline].join();
}

/** Of the two readings, the one that is on the port side: it speaks for both, so that each couple is named once. */
function leads(reading: Measured, other: Measured, ports: ReadonlySet<string>): boolean {
  const count = ({ points }: Measured): number => points.filter((point) => ports.has(point)).length;
  const difference = count(reading) - count(other);
  return difference === 0 ? reading.id < other.id : difference > 0;
}

function compared(context: Context, port: Measured, starboard: Measured): Draft[] {
  // A half-breadth may be written with opposite signs on the two sides.
  const signed = port.kind === 'out' && port.value * starboard.value < 0;
  const difference = port.value - (signed ? -starboard.value : starboard.value);
  const limit = context.limits.portStarboard;
  if (port.id === starboard.id || Math.abs(difference) <= limit) return [];
  return [
    {
      severity: 'note',
      piece: port.piece,
      slot: context.slotOf(port),
      subjects: [port, starboard].map(aboutReading),
      numbers: { port: port.value, starboard: starboard.value, difference, limit },
      basis: takeIds(port, starboard),
    },
  ];
}
