import { distanceToChain, type Point2 } from '../../../core/geometry/index.ts';
import type { Obstruction, ObstructionKind, Sheet, SheetPoint, SheetReading, SizeOf } from '../../../core/job/index.ts';

/** What is measured of each kind of thing, the most telling first; free room round it goes for all. */
const SIZES: Record<ObstructionKind, readonly SizeOf[]> = {
  cleat: ['length', 'width', 'height'],
  rail: ['length', 'diameter', 'height'],
  light: ['diameter', 'length', 'width', 'height'],
  'rod-holder': ['diameter', 'length', 'width'],
  antenna: ['diameter', 'height'],
  wiper: ['length', 'width'],
  vent: ['diameter', 'length', 'width', 'height'],
  'cord-exit': ['diameter', 'length', 'width'],
  hatch: ['length', 'width', 'height'],
  other: ['length', 'width', 'diameter', 'height'],
};
export const sizesOf = (kind: ObstructionKind): SizeOf[] => [...SIZES[kind], 'clearance'];

export const sizeReading = (sheet: Sheet, thing: string, of: SizeOf): SheetReading | undefined =>
  sheet.readings.find((reading) => reading.kind === 'size' && reading.obstruction === thing && reading.of === of);

/** What places a thing: straight tapes to its middle, or a station and an offset. */
export const placeReadings = (sheet: Sheet, { point }: Obstruction): SheetReading[] =>
  point === null ? [] : sheet.readings.filter(({ kind, points }) => kind !== 'size' && points.includes(point));

/** The picture that was asked for of this thing alone. */
export const photoSlot = (sheet: Sheet, { point, piece }: Obstruction): string | null =>
  sheet.shots.find((shot) => shot.piece === piece && shot.points.length === 1 && shot.points[0] === point)?.slot ??
  null;

export type Asked = 'near' | 'treatment' | 'needed' | 'place';

/** Asked only of what may have to be free. */
export const asksNeed = (kind: ObstructionKind): kind is 'cleat' | 'light' => kind === 'cleat' || kind === 'light';

/** What is asked next: a thing that lies under the cloth needs no place. */
export function askedNext(sheet: Sheet, thing: Obstruction): Asked | null {
  if (nearOf(sheet, thing) === null) return 'near';
  if (thing.treatment === null) return 'treatment';
  if (asksNeed(thing.kind) && thing.needed === null) return 'needed';
  if (thing.treatment === 'covered') return null;
  return placeReadings(sheet, thing).length === 0 && photoSlot(sheet, thing) === null ? 'place' : null;
}

export const nearOf = (sheet: Sheet, { point }: Obstruction): SheetPoint['nominal'] =>
  sheet.points.find(({ id }) => id === point)?.nominal ?? null;

/** The points of the piece a tape may be hooked to: its marks, or all of them where it has fewer than two. */
export function hooks(sheet: Sheet, piece: string): SheetPoint[] {
  const own = sheet.points.filter(
    ({ pieces, role, replacedBy }) => pieces.includes(piece) && role !== 'obstruction' && replacedBy === null,
  );
  const marks = own.filter(({ role }) => role === 'mark');
  return marks.length >= 2 ? marks : own;
}

type Places = ReadonlyMap<string, readonly [number, number, number]>;

/** The two hooks whose tapes cross best at a place: nearest to square, the shorter ones where that is alike. */
export function bestHooks(candidates: readonly SheetPoint[], places: Places, near: readonly [number, number, number]) {
  let best: { ids: [string, string]; worth: number } | null = null;
  for (const [i, a] of candidates.entries())
    for (const b of candidates.slice(i + 1)) {
      const [p, q] = [places.get(a.id), places.get(b.id)];
      if (!p || !q) continue;
      const [u, v] = [away(near, p), away(near, q)];
      const lengths = Math.hypot(...u) * Math.hypot(...v);
      const cosine = lengths === 0 ? 1 : (u[0] * v[0] + u[1] * v[1] + u[2] * v[2]) / lengths;
      const worth = Math.sqrt(Math.max(0, 1 - cosine * cosine)) - (Math.hypot(...u) + Math.hypot(...v)) / 50_000;
      if (!best || worth > best.worth) best = { ids: [a.id, b.id], worth };
    }
  return best?.ids ?? candidates.slice(0, 2).map(({ id }) => id);
}

const away = (from: readonly [number, number, number], to: readonly [number, number, number]) =>
  [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;

/** The straight parts of the piece's edges, the nearest to a place first. */
export function nearestEdges(sheet: Sheet, piece: string, places: Places, near: readonly [number, number, number]) {
  const parts = sheet.runs
    .filter((run) => run.piece === piece)
    .flatMap(({ points }) => points.slice(1).map((to, i) => [points[i] ?? '', to] as const));
  const far = ([from, to]: readonly [string, string]): number => {
    const line = [from, to].flatMap((id): Point2[] => {
      const place = places.get(id);
      return place ? [[place[0], place[1]]] : [];
    });
    return distanceToChain([near[0], near[1]], line);
  };
  return parts.toSorted((a, b) => far(a) - far(b));
}

/** The first label of a kind that nothing in the job has yet. */
export function freeLabel(sheet: Sheet, letter: string): string {
  const taken = new Set([...sheet.points.map(({ label }) => label), ...sheet.obstructions.map(({ label }) => label)]);
  let number = 1;
  while (taken.has(`${letter}${number}`)) number += 1;
  return `${letter}${number}`;
}
