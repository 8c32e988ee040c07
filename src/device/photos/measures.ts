/** Pixels as a canvas gives them: four bytes each (red, green, blue, alpha), row by row. */
export interface Pixels {
  data: Uint8ClampedArray;
  width: number;
  height: number;
}

/** How bright each pixel is, 0 (black) to 255 (white), row by row. */
export interface Grey {
  values: Float64Array;
  width: number;
  height: number;
}

/** Luma by the weights of ITU-R BT.601. */
export function greyOf({ data, width, height }: Pixels): Grey {
  const values = new Float64Array(width * height);
  for (let i = 0; i < values.length; i += 1)
    values[i] = 0.299 * (data[i * 4] ?? 0) + 0.587 * (data[i * 4 + 1] ?? 0) + 0.114 * (data[i * 4 + 2] ?? 0);
  return { values, width, height };
}

/** Half as wide and half as high, each pixel the mean of four; an odd last row or column is left out. */
export function halved({ values, width, height }: Grey): Grey {
  const [w, h] = [width >> 1, height >> 1];
  const half = new Float64Array(w * h);
  for (let y = 0; y < h; y += 1) {
    for (let x = 0; x < w; x += 1) {
      const at = 2 * y * width + 2 * x;
      half[y * w + x] =
        ((values[at] ?? 0) + (values[at + 1] ?? 0) + (values[at + width] ?? 0) + (values[at + width + 1] ?? 0)) / 4;
    }
  }
  return { values: half, width: w, height: h };
}

/** The brightness that this share (0..1) of the pixels does not exceed, to a whole step; 0 without pixels. */
export function brightnessAt({ values }: Grey, share: number): number {
  const counts = new Uint32Array(256);
  for (const value of values) {
    const level = Math.min(255, Math.max(0, Math.round(value)));
    counts[level] = (counts[level] ?? 0) + 1;
  }
  let seen = 0;
  for (const [level, count] of counts.entries()) {
    seen += count;
    if (seen >= share * values.length) return level;
  }
  return 255;
}

/** Of a picture as a whole, of its rows (what stands upright in it), of its columns; null where there is too little to tell by. */
export interface Sharpness {
  whole: number | null;
  across: number | null;
  down: number | null;
}

/** Variance of a pixel that sensor, compression and rounding put on a small copy; square steps of brightness. A guess, no source. */
const NOISE = 0.15;
/** Squared difference between neighbours, on average over the picture, below which nothing is said of its sharpness. */
const LEAST = 4;

/**
 * How steep edges are, whatever their contrast: squared second differences over squared first differences, 0 to 5. A step from one
 * pixel to the next gives 2, a step smeared by a Gaussian of s pixels 1 / (2 s²). Blur never raises it: blurring that treats all
 * directions alike weakens what changes from pixel to pixel more than what changes slowly, so the mean of a rising quantity falls
 * (Chebyshev's sum inequality). Edge pixels are continued outward, for which this holds exactly.
 */
export function sharpness({ values, width, height }: Grey): Sharpness {
  const at = (x: number, y: number): number => values[y * width + x] ?? 0;
  let [acrossFirst, acrossSecond, downFirst, downSecond, second] = [0, 0, 0, 0, 0];
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const here = at(x, y);
      const right = x + 1 < width ? at(x + 1, y) - here : 0;
      const left = x > 0 ? at(x - 1, y) - here : 0;
      const below = y + 1 < height ? at(x, y + 1) - here : 0;
      const above = y > 0 ? at(x, y - 1) - here : 0;
      acrossFirst += right * right;
      downFirst += below * below;
      acrossSecond += (left + right) ** 2;
      downSecond += (above + below) ** 2;
      second += (left + right + above + below) ** 2;
    }
  }
  const n = Math.max(1, width * height);
  // Noise alone gives 2 and 6 times its variance along one direction, 4 and 20 times over both.
  return {
    whole: ratio(second / n, (acrossFirst + downFirst) / n, { first: 4, times: 5 }, LEAST),
    across: ratio(acrossSecond / n, acrossFirst / n, { first: 2, times: 3 }, LEAST / 2),
    down: ratio(downSecond / n, downFirst / n, { first: 2, times: 3 }, LEAST / 2),
  };
}

/** second over first, once what noise gives is taken off both; never above what noise alone would give. */
function ratio(second: number, first: number, noise: { first: number; times: number }, least: number): number | null {
  if (first < least) return null;
  const floor = noise.first * NOISE;
  return Math.max(0, Math.min(noise.times, (second - noise.times * floor) / (first - floor)));
}

/** Whole pixels that keep the proportions with the longest side at most `longest`; never larger than it was. */
export function fitWithin(width: number, height: number, longest: number): { width: number; height: number } {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}
