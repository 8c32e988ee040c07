import type { Page } from 'playwright-core';
import { type Exif, withExif } from './exif.ts';

export interface PhotoOptions extends Exif {
  /** As stored, before any turning. */
  readonly width?: number;
  readonly height?: number;
  /** Different seeds give different pictures. */
  readonly seed?: number;
  /** Fills it with grain, which JPEG cannot squeeze: about a megabyte at 1600 x 1200. */
  readonly grain?: boolean;
  /** How bright it is: 1 as by day, less for a picture that came out dark. */
  readonly level?: number;
}

/** Somewhere at sea, and nobody's dock. */
const PLACE = { latitude: 48.5, longitude: -30.25 };

/**
 * A real JPEG, drawn and encoded by the browser, with the EXIF a phone writes (location and orientation too). Its corners
 * as stored are red, green, blue and yellow, clockwise from the top left, so that a test can see which way up it came out.
 */
export async function makePhoto(page: Page, options: PhotoOptions = {}): Promise<Buffer> {
  const { width = 1600, height = 1200, seed = 1, grain = false, level = 1, orientation = 1, place = PLACE } = options;
  const base64 = await page.evaluate(drawJpeg, { width, height, seed, grain, level });
  return withExif(Buffer.from(base64, 'base64'), { orientation, place });
}

/** Runs in the page, so it can name nothing outside itself. */
function drawJpeg({ width, height, seed, grain, level }: Required<Omit<PhotoOptions, keyof Exif>>): string {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('This browser cannot draw.');
  pen.fillStyle = `hsl(${(seed * 67) % 360} 35% 55%)`;
  pen.fillRect(0, 0, width, height);
  if (grain) {
    const picture = pen.getImageData(0, 0, width, height);
    let state = seed;
    for (let at = 0; at < picture.data.length; at += 4) {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
      for (let channel = 0; channel < 3; channel += 1)
        picture.data[at + channel] = 80 + ((state >>> (8 * channel)) & 63);
    }
    pen.putImageData(picture, 0, 0);
  }
  pen.fillStyle = '#f4f4f4';
  pen.fillRect(width * 0.2, height * 0.45, width * 0.6, height * 0.2);
  const w = width / 8;
  const h = height / 8;
  const corners = [
    ['#e00000', 0, 0],
    ['#00b000', width - w, 0],
    ['#0000e0', width - w, height - h],
    ['#e0e000', 0, height - h],
  ] as const;
  for (const [colour, x, y] of corners) {
    pen.fillStyle = colour;
    pen.fillRect(x, y, w, h);
  }
  pen.fillStyle = `rgb(0 0 0 / ${1 - level})`;
  pen.fillRect(0, 0, width, height);
  return canvas.toDataURL('image/jpeg', 0.9).replace(/^.*,/, '');
}
