/**
 * How much longer the longest side is than the other two together, mm (or whatever the sides are in). Above zero no
 * such triangle exists; at zero it is flat; below, the amount by which it closes.
 */
export function triangleExcess(a: number, b: number, c: number): number {
  const [longest, middle, shortest] = descending(a, b, c);
  return longest - middle - shortest;
}

function descending(a: number, b: number, c: number): readonly [number, number, number] {
  const longest = Math.max(a, b, c);
  const shortest = Math.min(a, b, c);
  return [longest, Math.max(Math.min(a, b), Math.min(Math.max(a, b), c)), shortest];
}

/**
 * Area from three sides, mm²; null when the sides do not close. Heron's formula in the order of W. Kahan,
 * "Miscalculating Area and Angles of a Needle-like Triangle", which keeps its digits for needles.
 */
export function triangleArea(a: number, b: number, c: number): number | null {
  const [x, y, z] = descending(a, b, c);
  const closing = z - (x - y);
  if (!(closing >= 0)) return null;
  // The brackets are the method: sums of like size first, differences of like size exact.
  return Math.sqrt((x + (y + z)) * closing * (z + (x - y)) * (x + (y - z))) / 4;
}

/** Square distance of the far corner from the side `base`, mm; null when the sides do not close or `base` is 0. */
export function triangleAltitude(base: number, b: number, c: number): number | null {
  const area = triangleArea(base, b, c);
  return area === null || base === 0 ? null : (2 * area) / base;
}

/**
 * Angle across from the side `opposite`, between the other two, in radians from 0 to π; null when the sides do not
 * close or one beside the angle is 0. Kahan's formula, from the same paper as the area.
 */
export function triangleAngle(opposite: number, b: number, c: number): number | null {
  if (!(triangleExcess(opposite, b, c) <= 0) || b === 0 || c === 0) return null;
  const long = Math.max(b, c);
  const short = Math.min(b, c);
  const closing = short >= opposite ? opposite - (long - short) : short - (long - opposite);
  const above = (long - short + opposite) * closing;
  const below = (long + (short + opposite)) * (long - opposite + short);
  return 2 * Math.atan2(Math.sqrt(Math.max(above, 0)), Math.sqrt(Math.max(below, 0)));
}
