import { type Grey, halved, type Pixels } from '../../../src/device/photos/measures.ts';

/** As large as the copy the app looks at. */
export const WIDTH = 512;
export const HEIGHT = 384;
/** Scenes are drawn twice as large and made smaller, so that edges lie between pixels as they do in a camera's picture. */
const FINE = 2;

export function grey(width: number, height: number, value: (x: number, y: number) => number): Grey {
  const values = new Float64Array(width * height);
  for (let y = 0, at = 0; y < height; y += 1) for (let x = 0; x < width; x += 1, at += 1) values[at] = value(x, y);
  return { values, width, height };
}

/** The same numbers for the same seed: 0 up to 1. */
function numbers(seed: number): () => number {
  let state = seed * 2_654_435_761;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
    return (state >>> 8) / 2 ** 24;
  };
}

/** Something in a scene: how bright it is where it is, null beside it. It lies within `reach` of its middle. */
interface Thing {
  middle: readonly [number, number];
  reach: number;
  at: (dx: number, dy: number) => number | null;
}

function drawn(ground: (x: number, y: number) => number, things: readonly Thing[]): Grey {
  const [w, h] = [WIDTH * FINE, HEIGHT * FINE];
  const large = grey(w, h, (x, y) => ground(x / w, y / h));
  for (const { middle, reach, at } of things) {
    const [cx, cy] = middle;
    const ends = (centre: number, most: number) => [
      Math.max(0, Math.floor(centre - reach)),
      Math.min(most, centre + reach),
    ];
    const [left = 0, right = 0] = ends(cx, w);
    const [top = 0, bottom = 0] = ends(cy, h);
    for (let y = top; y < bottom; y += 1)
      for (let x = left; x < right; x += 1)
        large.values[y * w + x] = at(x - cx, y - cy) ?? large.values[y * w + x] ?? 0;
  }
  return halved(large);
}

const made = new Map<string, Grey>();

/** Each scene is drawn once. */
function once(name: string, draw: () => Grey): Grey {
  const known = made.get(name) ?? draw();
  made.set(name, known);
  return known;
}

/** A dock by day: bars and boards of every size, slant and brightness, before a sky that grows lighter. */
export const dock = (seed: number, bars = 25): Grey => once(`dock ${seed} ${bars}`, () => drawDock(seed, bars));

function drawDock(seed: number, bars: number): Grey {
  const next = numbers(seed);
  const things = Array.from({ length: bars }, (): Thing => {
    const middle = [next() * WIDTH * FINE, next() * HEIGHT * FINE] as const;
    const [length, wide, turn, level] = [50 + next() * 550, 5 + next() * 95, next() * Math.PI, 30 + next() * 190];
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const at = (dx: number, dy: number): number | null =>
      Math.abs(dx * cos + dy * sin) < length / 2 && Math.abs(dy * cos - dx * sin) < wide / 2 ? level : null;
    return { middle, reach: length, at };
  });
  return drawn((_, y) => 150 + 40 * y, things);
}

/** White laminate with a shadow over it, four studs and a seam a few steps darker than the rest. */
export const gelcoat = (seed: number, contrast: number): Grey =>
  once(`gelcoat ${seed} ${contrast}`, () => {
    const next = numbers(seed);
    const level = 225 - contrast;
    const studs = Array.from({ length: 4 }, (): Thing => {
      const middle = [next() * WIDTH * FINE, next() * HEIGHT * FINE] as const;
      const radius = 8 + next() * 12;
      return { middle, reach: radius, at: (dx, dy) => (Math.hypot(dx, dy) < radius ? level : null) };
    });
    const seam: Thing = {
      middle: [WIDTH, HEIGHT],
      reach: WIDTH,
      at: (dx, dy) => (Math.abs(dy - 0.1 * dx) < 2 ? level : null),
    };
    return drawn((x, y) => 215 + 15 * x + 10 * y, [...studs, seam]);
  });

/** A dock at night, six stops down, with a lamp that lights its surroundings. lit: its radius as a share of the width. */
export function night(seed: number, lit: number): Grey {
  const dark = stops(dock(seed), 6);
  return grey(WIDTH, HEIGHT, (x, y) => {
    const from = Math.hypot(x - WIDTH * 0.7, y - HEIGHT * 0.3) / (lit * WIDTH);
    return toScreen(toLight(dark.values[y * WIDTH + x] ?? 0) + 2 * Math.exp(-(from ** 2)));
  });
}

/** A smooth slope of brightness from side to side. */
export const slope = (from: number, to: number): Grey => grey(WIDTH, HEIGHT, (x) => from + ((to - from) * x) / WIDTH);

/** Brightness on a screen as an amount of light, by the usual power of 2.2, and back. */
const toLight = (value: number): number => (value / 255) ** 2.2;
const toScreen = (light: number): number => 255 * Math.min(1, light) ** (1 / 2.2);

/** The same scene with so many stops less light. */
export const stops = (picture: Grey, less: number): Grey =>
  changed(picture, (value) => toScreen(toLight(value) / 2 ** less));

export const changed = (picture: Grey, by: (value: number) => number): Grey => ({
  ...picture,
  values: picture.values.map(by),
});

/** A Gaussian blur; sigma in pixels of the picture. Edge pixels are continued outward by mirroring. */
export function blurred(picture: Grey, sigma: number): Grey {
  const reach = Math.ceil(4 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * sigma ** 2)));
  return smeared(smeared(picture, weights, 'across'), weights, 'down');
}

/** Shake along one direction over so many pixels. */
export const shaken = (picture: Grey, over: number, way: 'across' | 'down'): Grey =>
  smeared(picture, new Array<number>(2 * Math.floor(over / 2) + 1).fill(1), way);

export function smeared({ values, width, height }: Grey, weights: readonly number[], way: 'across' | 'down'): Grey {
  const reach = (weights.length - 1) / 2;
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const smear = new Float64Array(values.length);
  const [lines, length, step, between] = way === 'across' ? [height, width, 1, width] : [width, height, width, 1];
  const line = new Float64Array(length + 2 * reach);
  for (let which = 0; which < lines; which += 1) {
    for (let i = 0; i < line.length; i += 1)
      line[i] = values[which * between + mirrored(i - reach, length) * step] ?? 0;
    for (let i = 0; i < length; i += 1) {
      let total = 0;
      for (let k = 0; k < weights.length; k += 1) total += (weights[k] ?? 0) * (line[i + k] ?? 0);
      smear[which * between + i * step] = total / sum;
    }
  }
  return { values: smear, width, height };
}

function mirrored(at: number, length: number): number {
  const round = ((at % (2 * length)) + 2 * length) % (2 * length);
  return round < length ? round : 2 * length - 1 - round;
}

/** Grain of this standard deviation, about normal: four even numbers together, less their mean. */
export function grainy(picture: Grey, sigma: number, seed = 1): Grey {
  const next = numbers(seed + 77);
  return changed(picture, (value) => value + sigma * Math.sqrt(3) * (next() + next() + next() + next() - 2));
}

/** As a canvas gives it: whole steps, no colour. */
export function pixels({ values, width, height }: Grey): Pixels {
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (const [i, value] of values.entries()) data.fill(Math.round(value), i * 4, i * 4 + 3);
  return { data, width, height };
}
