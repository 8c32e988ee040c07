import { describe, expect, it } from 'vitest';
import type { PictureTools } from '../../../src/device/photos/canvas.ts';
import { doubtAbout } from '../../../src/device/photos/doubts.ts';
import { lookAt } from '../../../src/device/photos/index.ts';
import type { Grey, Pixels } from '../../../src/device/photos/measures.ts';
import {
  blurred,
  changed,
  dock,
  gelcoat,
  grainy,
  grey,
  HEIGHT,
  night,
  pixels,
  shaken,
  slope,
  stops,
  WIDTH,
} from './pictures.ts';

const about = (picture: Grey) => doubtAbout(pixels(picture));
const scenes = [
  ['many things', () => dock(1)],
  ['others', () => dock(2)],
  ['few things', () => dock(3, 10)],
] as const;

describe('nothing is said', () => {
  describe.each(scenes)('of a sharp picture by day: %s', (_, scene) => {
    it('as it is, and with the grain of a phone', () => {
      expect(about(scene())).toBeNull();
      expect(about(grainy(scene(), 0.5))).toBeNull();
    });

    it('a stop or two dark, half a stop light', () => {
      for (const less of [2, 1, -0.5]) expect(about(stops(scene(), less))).toBeNull();
    });

    it('with a blur too slight to hide a stud: a thousandth of the width', () => {
      expect(about(blurred(scene(), 0.5))).toBeNull();
    });
  });

  it('of white laminate, sharp or not: there is too little contrast to tell', () => {
    for (const contrast of [4, 8, 20]) {
      expect(about(gelcoat(1, contrast))).toBeNull();
      expect(about(grainy(gelcoat(2, contrast), 0.5))).toBeNull();
    }
    expect(about(blurred(gelcoat(1, 8), 4))).toBeNull();
  });

  it('of a plain surface with light falling off over it', () => {
    expect(about(slope(90, 240))).toBeNull();
  });

  it('of a sharp thing before a blurred background', () => {
    for (const seed of [1, 2]) {
      const [near, far] = [dock(seed), blurred(dock(seed + 10), 6)];
      const inMiddle = (x: number, y: number) =>
        Math.abs(x - WIDTH / 2) < WIDTH / 5 && Math.abs(y - HEIGHT / 2) < HEIGHT / 4;
      const mixed = grey(WIDTH, HEIGHT, (x, y) => (inMiddle(x, y) ? near : far).values[y * WIDTH + x] ?? 0);
      expect(about(mixed)).toBeNull();
    }
  });
});

describe.each(scenes)('blurred, with %s', (_, scene) => {
  it.each([2, 3, 4, 8, 16])('is said of a smear of %i in 512 pixels', (sigma) => {
    expect(about(blurred(scene(), sigma))).toBe('blurred');
  });

  it.each([4, 8, 16])('is said through the grain of a phone: %i', (sigma) => {
    expect(about(grainy(blurred(scene(), sigma), 0.5))).toBe('blurred');
  });

  it.each(['across', 'down'] as const)('is said of shake %s, over a twentieth of the width', (way) => {
    expect(about(shaken(scene(), 25, way))).toBe('blurred');
  });

  it('is not unsaid by more of it', () => {
    const said = [0.5, 1, 1.5, 2].map((sigma) => about(blurred(scene(), sigma)) === 'blurred');
    expect(said).toEqual([...said].sort((a, b) => Number(a) - Number(b)));
  });
});

describe('dark', () => {
  it.each(scenes)('is said from five stops less light than by day, and never taken back by less: %s', (_, scene) => {
    const said = [0, 2, 3, 4, 5, 6].map((less) => about(stops(scene(), less)) === 'dark');
    expect(said.slice(0, 2)).toEqual([false, false]);
    expect(said.slice(4)).toEqual([true, true]);
    expect(said).toEqual([...said].sort((a, b) => Number(a) - Number(b)));
  });

  it('is said of a night with a lamp in it, whose mean brightness is no longer that of a night', () => {
    for (const seed of [1, 2, 3]) {
      const lamp = night(seed, 0.12);
      const mean = lamp.values.reduce((sum, value) => sum + value, 0) / lamp.values.length;
      expect(mean).toBeGreaterThan(35);
      expect(about(lamp)).toBe('dark');
    }
  });

  it('is not said where half of the picture is lit', () => {
    expect(about(night(1, 0.5))).not.toBe('dark');
  });
});

describe('empty', () => {
  it('is said where there is nothing: the sun, or something over the lens', () => {
    expect(about(grey(WIDTH, HEIGHT, () => 255))).toBe('empty');
    expect(
      about(
        grainy(
          grey(WIDTH, HEIGHT, () => 120),
          0.5,
        ),
      ),
    ).toBe('empty');
    expect(about(changed(dock(1), () => 90))).toBe('empty');
  });
});

describe('what it does not notice, as its words say', () => {
  it('a thing blurred before a sharp background', () => {
    const [near, far] = [blurred(dock(1), 6), dock(2)];
    const mixed = grey(
      WIDTH,
      HEIGHT,
      (x, y) => (Math.abs(x - WIDTH / 2) < WIDTH / 5 ? near : far).values[y * WIDTH + x] ?? 0,
    );
    expect(about(mixed)).toBeNull();
  });

  it('a dark thing in good light, which it takes for a dark picture', () => {
    expect(about(changed(gelcoat(1, 20), (value) => value - 190))).toBe('dark');
  });
});

describe('looking at a stored picture', () => {
  const showing = (picture: Pixels, changes: Partial<PictureTools> = {}): PictureTools => ({
    decode: async () => ({ width: 2048, height: 1536, source: {} as CanvasImageSource, close: () => undefined }),
    isHonest: () => true,
    draw: () => ({ pixels: () => picture, jpeg: async () => null }),
    ...changes,
  });
  const none = new Blob([]);

  it('says what its copy says', async () => {
    expect(await lookAt(none, showing(pixels(stops(dock(1), 7))))).toBe('dark');
    expect(await lookAt(none, showing(pixels(dock(1))))).toBeNull();
  });

  it('says nothing where the browser cannot look', async () => {
    const dark = pixels(stops(dock(1), 7));
    const fail = (): never => {
      throw new Error('no');
    };
    expect(await lookAt(none, showing(dark, { isHonest: () => false }))).toBeNull();
    expect(await lookAt(none, showing(dark, { decode: fail }))).toBeNull();
    expect(await lookAt(none, showing(dark, { draw: fail }))).toBeNull();
  });
});
