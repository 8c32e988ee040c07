import { describe, expect, it } from 'vitest';
import { drawQr } from '../../src/screens/bench/link/qr.ts';

/** The drawing's black squares, read back from its path. */
function squares(text: string): { side: number; black: (x: number, y: number) => boolean } {
  const drawing = drawQr(text);
  if (!drawing) throw new Error('too long');
  const cells = new Set<string>();
  for (const [, x, y, width] of drawing.path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let i = 0; i < Number(width); i += 1) cells.add(`${Number(x) + i} ${y}`);
  return { side: drawing.side, black: (x, y) => cells.has(`${x} ${y}`) };
}

const text = `https://shop.example.org/app/#/r/${'Ab3-_'.repeat(70)}z`;

describe('the code of a link', () => {
  it('has four modules of white all round (ISO/IEC 18004)', () => {
    const { side, black } = squares(text);
    for (let i = 0; i < side; i += 1)
      for (let edge = 0; edge < 4; edge += 1)
        for (const [x, y] of [
          [i, edge],
          [i, side - 1 - edge],
          [edge, i],
          [side - 1 - edge, i],
        ] as const)
          expect(black(x, y)).toBe(false);
  });

  it('has its three finders, and none in the fourth corner', () => {
    const { side, black } = squares(text);
    const isFinder = (left: number, top: number): boolean =>
      [0, 1, 2, 3, 4, 5, 6].every((y) =>
        [0, 1, 2, 3, 4, 5, 6].every((x) => {
          const ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
          return black(left + x, top + y) === (ring !== 2);
        }),
      );
    const far = side - 4 - 7;
    expect([isFinder(4, 4), isFinder(far, 4), isFinder(4, far), isFinder(far, far)]).toEqual([true, true, true, false]);
  });

  it('is said to be fine where a module is smaller than three pixels at the size it is shown', () => {
    // Versions 17 and 18 with the lowest correction hold 644 and 718 bytes (ISO/IEC 18004, table 7; from memory).
    expect(drawQr(text)?.fine).toBe(false);
    expect(drawQr('a'.repeat(644))).toMatchObject({ side: 85 + 8, fine: false });
    expect(drawQr('a'.repeat(645))).toMatchObject({ side: 89 + 8, fine: true });
  });

  it('is not drawn where it would be too fine to be read', () => {
    // Version 20 with the lowest correction holds 858 bytes (ISO/IEC 18004, table 7; from memory).
    expect(drawQr('a'.repeat(858))?.side).toBe(97 + 8);
    expect(drawQr('a'.repeat(859))).toBeNull();
  });
});
