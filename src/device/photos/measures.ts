/** Pixels as a canvas gives them: four bytes each (red, green, blue, alpha), row by row. */
export interface Pixels {
  data: Uint8ClampedArray;
  width: number;
  height: number;
}

/** Luma of one pixel, 0..255, by the weights of ITU-R BT.601. */
const lumaAt = (data: Uint8ClampedArray, at: number): number =>
  0.299 * (data[at] ?? 0) + 0.587 * (data[at + 1] ?? 0) + 0.114 * (data[at + 2] ?? 0);

/** Mean luma, 0 (black) to 255 (white). It tells a night picture from a day one and no more. */
export function meanLuma({ data }: Pixels): number {
  const count = Math.floor(data.length / 4);
  if (count === 0) return 0;
  let sum = 0;
  for (let at = 0; at < count * 4; at += 4) sum += lumaAt(data, at);
  return sum / count;
}

/**
 * Variance of the four-neighbour Laplacian of the luma, border left out; 0 for a picture without any edge. A known
 * measure of focus: low means smeared, or a plain wall. Comparable between pictures of the same size only.
 */
export function laplacianVariance({ data, width, height }: Pixels): number {
  const luma = new Float64Array(width * height);
  for (let i = 0; i < luma.length; i += 1) luma[i] = lumaAt(data, i * 4);
  const at = (x: number, y: number): number => luma[y * width + x] ?? 0;
  let count = 0;
  let sum = 0;
  let squares = 0;
  for (let y = 1; y < height - 1; y += 1) {
    for (let x = 1; x < width - 1; x += 1) {
      const value = at(x - 1, y) + at(x + 1, y) + at(x, y - 1) + at(x, y + 1) - 4 * at(x, y);
      count += 1;
      sum += value;
      squares += value * value;
    }
  }
  if (count === 0) return 0;
  const mean = sum / count;
  return Math.max(0, squares / count - mean * mean);
}

/** Whole pixels that keep the proportions with the longest side at most `longest`; never larger than it was. */
export function fitWithin(width: number, height: number, longest: number): { width: number; height: number } {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}
