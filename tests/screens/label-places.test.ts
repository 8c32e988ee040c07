import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, placeLabels, type Spot } from '../../src/screens/parts/photo/label-places.ts';

const FRAME = { width: 800, height: 600 };
const LOOK = { size: 30, ring: 15 };
const spot = (x: number, y: number, wide = 40): Spot => ({ x, y, wide });
const boxOf = (...spots: Spot[]): Box => placeLabels(spots, FRAME, LOOK)[0]?.box as Box;
const apart = (a: Box, b: Box): boolean =>
  a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
const spots: fc.Arbitrary<Spot[]> = fc.array(
  fc.record({
    x: fc.integer({ min: 0, max: FRAME.width }),
    y: fc.integer({ min: 0, max: FRAME.height }),
    wide: fc.integer({ min: 0, max: FRAME.width }),
  }),
  { minLength: 1, maxLength: 12 },
);

describe('labels on a picture', () => {
  it('stand right of their spot where there is room', () => {
    const { left, top, bottom } = boxOf(spot(400, 300));
    expect(left).toBeGreaterThan(400 + LOOK.ring);
    expect((top + bottom) / 2).toBeCloseTo(300, 6);
  });

  it.each([
    [0, 0],
    [800, 0],
    [0, 600],
    [800, 600],
    [799, 300],
  ])('stay inside the picture at %i, %i', (x, y) => {
    const box = boxOf(spot(x, y, 210));
    expect(box.left).toBeGreaterThanOrEqual(0);
    expect(box.top).toBeGreaterThanOrEqual(0);
    expect(box.right).toBeLessThanOrEqual(FRAME.width);
    expect(box.bottom).toBeLessThanOrEqual(FRAME.height);
  });

  it('keep off the label and the ring of a neighbour', () => {
    const two = placeLabels([spot(400, 300), spot(440, 300)], FRAME, LOOK);
    expect(apart(two[0]?.box as Box, two[1]?.box as Box)).toBe(true);
    expect(apart(two[0]?.box as Box, { left: 425, right: 455, top: 285, bottom: 315 })).toBe(true);
  });

  it('are one for each spot and stay inside, wherever the spots lie and however long they are', () => {
    fc.assert(
      fc.property(spots, (list) => {
        const places = placeLabels(list, FRAME, LOOK);
        expect(places).toHaveLength(list.length);
        for (const { box } of places) {
          expect(box.left).toBeGreaterThanOrEqual(0);
          expect(box.top).toBeGreaterThanOrEqual(-1e-9);
          expect(box.right).toBeLessThanOrEqual(FRAME.width + 1e-9);
          expect(box.bottom).toBeLessThanOrEqual(FRAME.height + 1e-9);
        }
      }),
    );
  });
});
