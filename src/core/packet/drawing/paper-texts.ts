import type { Entity, Flat } from './drawing.ts';

/** Letters on a drawing, by their middle, mm of paper. */
export interface Written {
  readonly said: string;
  readonly at: Flat;
  readonly height: number;
  readonly wide: number;
  readonly bold: boolean;
}

interface Patch {
  readonly x: number;
  readonly y: number;
  readonly halfWide: number;
  readonly halfHigh: number;
}

/** A letter of sans-serif type on the average, of its height. */
const WIDTH = 0.6;
const VALUE = 2.6;
/** Where along its line a value is tried, the best place first. */
const TRIES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];
/** Where round its point a label is tried. */
const ROUND: readonly Flat[] = [
  [1, 1],
  [-1, 1],
  [1, -1],
  [-1, -1],
  [0, 1.3],
  [0, -1.3],
  [1.4, 0],
  [-1.4, 0],
];

/**
 * Every name of a drawing, and those values of its lines that cover neither another text nor a fastener. Expects a value
 * right after its line, as the plan has them.
 */
export function placeTexts(entities: readonly Entity[]): { written: Written[]; leftOut: number } {
  const taken: Patch[] = entities.flatMap((one) =>
    one.type === 'circle' && (one.layer === 'FASTENER' || one.layer === 'POINT' || one.layer === 'MARK')
      ? [{ x: one.at[0], y: one.at[1], halfWide: one.radius, halfHigh: one.radius }]
      : [],
  );
  const written: Written[] = [];
  let leftOut = 0;
  const put = (wish: Wish): boolean => {
    const at = wish.places.find((place) => isFree(patchOf(wish, place), taken)) ?? (wish.must ? wish.places[0] : null);
    if (!at) return false;
    taken.push(patchOf(wish, at));
    written.push({ ...wish, at });
    return true;
  };
  for (const one of entities) if (one.type === 'text' && one.layer !== 'DIMENSION') put(nameWish(one));
  for (const [index, one] of entities.entries()) {
    if (one.type !== 'text' || one.layer !== 'DIMENSION') continue;
    const before = entities[index - 1];
    if (before?.type !== 'line' || !put(valueWish(one.text, before.points))) leftOut += 1;
  }
  return { written, leftOut };
}

interface Wish extends Omit<Written, 'at'> {
  readonly places: readonly Flat[];
  readonly must: boolean;
}

const wideOf = (said: string, height: number): number => [...said].length * height * WIDTH;

function nameWish({ text, at: [x, y], height, anchor }: Extract<Entity, { type: 'text' }>): Wish {
  const wide = wideOf(text, height);
  const own = { said: text, height, wide, bold: true, must: true };
  if (anchor === 'middle') return { ...own, places: [[x, y + height / 2]] };
  // The point it names lies half a letter down and to the left of where it was written.
  const [px, py] = [x - height / 2, y - height / 2];
  return { ...own, places: ROUND.map(([dx, dy]) => [px + dx * (wide / 2 + 1.2), py + dy * (height / 2 + 1)]) };
}

function valueWish(said: string, points: readonly Flat[]): Wish {
  const [a = [0, 0], b = a] = [points[0], points.at(-1)];
  const wide = wideOf(said, VALUE);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const places = TRIES.map((t): Flat => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]);
  return { said, height: VALUE, wide, bold: false, must: false, places: length < wide ? [] : places };
}

const patchOf = ({ wide, height }: Pick<Wish, 'wide' | 'height'>, [x, y]: Flat): Patch => ({
  x,
  y,
  halfWide: wide / 2,
  halfHigh: height / 2,
});

const isFree = (patch: Patch, taken: readonly Patch[]): boolean =>
  taken.every(
    (other) =>
      Math.abs(patch.x - other.x) >= patch.halfWide + other.halfWide ||
      Math.abs(patch.y - other.y) >= patch.halfHigh + other.halfHigh,
  );
