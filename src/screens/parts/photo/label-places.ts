/** Something to be labelled, and how wide its label is. */
export interface Spot {
  x: number;
  y: number;
  wide: number;
}

/** Where a label stands: its left end on the base line, and the box it fills. */
export interface LabelPlace {
  x: number;
  y: number;
  box: Box;
}

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** Of the size: how far a letter rises over the base line, and hangs below it. */
const [RISE, FALL] = [0.95, 0.3];
const LONGEST = 22;

/** A label as short as a picture has room for; in full it stands in the list beside. */
export const shortLabel = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text);

/**
 * Puts a label beside each spot: right of it, or left, below, above, wherever it stays inside the frame and off other labels and
 * spots; where nothing is free it stays inside the frame at least. size: of the letters; ring: radius; all in the frame's unit.
 */
export function placeLabels(
  spots: readonly Spot[],
  frame: { width: number; height: number },
  { size, ring }: { size: number; ring: number },
): LabelPlace[] {
  const rings = spots.map(({ x, y }) => around(x, y, ring));
  const taken: Box[] = [];
  return spots.map((spot, i) => {
    const { wide } = spot;
    const beside = Math.max(0, Math.min(spot.x - wide / 2, frame.width - wide));
    const gap = ring * 1.3;
    const middle = spot.y + (size * (RISE - FALL)) / 2;
    const candidates: [number, number][] = [
      [spot.x + gap, middle],
      [spot.x - gap - wide, middle],
      [beside, spot.y + gap + size * RISE],
      [beside, spot.y - gap - size * FALL],
    ];
    const others = rings.filter((_, k) => k !== i);
    const places = candidates.map(([x, y]) => placed(x, y, wide, size));
    const free =
      places.find(({ box }) => inside(box, frame) && ![...taken, ...others].some((other) => overlap(box, other))) ??
      places.find(({ box }) => inside(box, frame)) ??
      pushedIn(places[0] as LabelPlace, frame, wide, size);
    taken.push(free.box);
    return free;
  });
}

const placed = (x: number, y: number, wide: number, size: number): LabelPlace => ({
  x,
  y,
  box: { left: x, top: y - size * RISE, right: x + wide, bottom: y + size * FALL },
});

/** Into the frame; a label longer than the frame begins at its left edge. */
function pushedIn(
  { x, y }: LabelPlace,
  frame: { width: number; height: number },
  wide: number,
  size: number,
): LabelPlace {
  const left = Math.max(0, Math.min(x, frame.width - wide));
  const base = Math.max(size * RISE, Math.min(y, frame.height - size * FALL));
  return placed(left, base, wide, size);
}

const around = (x: number, y: number, r: number): Box => ({ left: x - r, top: y - r, right: x + r, bottom: y + r });

const inside = (box: Box, frame: { width: number; height: number }): boolean =>
  box.left >= 0 && box.top >= 0 && box.right <= frame.width && box.bottom <= frame.height;

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
