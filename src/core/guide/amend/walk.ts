import {
  type Deed,
  deed,
  FACT_KINDS,
  type ReadingDeclaration,
  type Sheet,
  type SheetReading,
  type SheetRun,
} from '../../job/index.ts';

/** The step of the walk at which a reading is taken. */
export const keyOf = ({ slot, id }: Pick<SheetReading, 'slot' | 'id'>): string => slot ?? id;

/** Where readings stand in the walk of their piece; those outside it come last. */
export function walkOrder(sheet: Sheet, piece: string): (reading: SheetReading) => number {
  const walk = sheet.pieces.find(({ id }) => id === piece)?.walk ?? [];
  const places = new Map(walk.map((key, place) => [key, place]));
  return (reading) => places.get(keyOf(reading)) ?? walk.length;
}

/** Nobody has read it or answered for it. */
export const isOpen = ({ kind, state }: SheetReading): boolean => state === 'open' && !FACT_KINDS.has(kind);

/** Every point a reading speaks of. */
export const pointsOf = ({ points, via = [], baseline = [] }: ReadingDeclaration): readonly string[] => [
  ...points,
  ...via,
  ...baseline,
];

/** The mark that stands for a point today: itself, unless it was moved. */
export function currentOf(sheet: Sheet, point: string): string {
  const seen = new Set<string>();
  let now = point;
  for (;;) {
    const next = sheet.points.find(({ id }) => id === now)?.replacedBy ?? null;
    if (next === null || seen.has(next)) return now;
    seen.add(now);
    now = next;
  }
}

/** The straight reading between two points of a piece, whichever end it is hooked to. */
export const straightBetween = (sheet: Sheet, piece: string, a: string, b: string): SheetReading | undefined =>
  sheet.readings.find(
    ({ kind, points, piece: own }) =>
      own === piece && kind === 'straight' && points.length === 2 && points.includes(a) && points.includes(b),
  );

/** Points next to each other along an edge. */
export const neighbours = (order: readonly string[]): (readonly [string, string])[] =>
  order.slice(1).map((point, i) => [order[i] ?? '', point]);

/** A step of the walk that the first of the gaps of an edge stand at; where it has none, undefined. */
export function keyOfGaps(sheet: Sheet, run: SheetRun, near: readonly string[] = []): string | undefined {
  const rank = walkOrder(sheet, run.piece);
  const gaps = neighbours(run.points)
    .flatMap(([a, b]) => straightBetween(sheet, run.piece, a, b) ?? [])
    .sort((a, b) => rank(a) - rank(b));
  const nearest = gaps.find(({ points }) => points.some((point) => near.includes(point)));
  const chosen = nearest ?? gaps.at(-1);
  return chosen && keyOf(chosen);
}

/** Asks for a reading, after a step of the walk where one is named. */
export const ask = (piece: string, reading: ReadingDeclaration, after: string | undefined): Deed =>
  deed('reading.add', { piece, reading, ...(after === undefined ? {} : { after }) });

/** What a reading is, without what became of it; slots belong to the guide and are not given twice. */
export function declarationOf(reading: SheetReading, id: string): ReadingDeclaration {
  const { piece: _, takes: __, answer: ___, value: ____, state: _____, expected: ______, ...declared } = reading;
  return { ...declared, id, slot: null };
}
