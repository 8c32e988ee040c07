import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLEAR_OF_FINGER, LOUPE, loupePlace } from '../../src/screens/dock/photo/loupe-place.ts';

const PHONE = { width: 390, height: 844 };

describe('the loupe', () => {
  it('stands above the finger, its rim clear of it', () => {
    const { x, y } = loupePlace({ x: 200, y: 500 }, PHONE);
    expect(x).toBe(200);
    expect(500 - y).toBe(LOUPE / 2 + CLEAR_OF_FINGER);
  });

  it('stands beside a finger at the top, on the side with more room', () => {
    expect(loupePlace({ x: 330, y: 40 }, PHONE).x).toBeLessThan(330 - LOUPE / 2);
    expect(loupePlace({ x: 60, y: 40 }, PHONE).x).toBeGreaterThan(60 + LOUPE / 2);
  });

  it('is never under the finger, never below it except at the very top, and always whole on the screen', () => {
    const screens = fc.record({
      width: fc.integer({ min: 280, max: 1400 }),
      height: fc.integer({ min: 300, max: 1400 }),
    });
    fc.assert(
      fc.property(
        screens.chain((seen) =>
          fc.record({
            seen: fc.constant(seen),
            x: fc.integer({ min: 0, max: seen.width }),
            y: fc.integer({ min: 0, max: seen.height }),
          }),
        ),
        ({ seen, x, y }) => {
          const at = loupePlace({ x, y }, seen);
          expect(Math.hypot(at.x - x, at.y - y)).toBeGreaterThan(LOUPE / 2);
          expect(at.y).toBeLessThanOrEqual(Math.max(y, LOUPE));
          for (const [value, most] of [
            [at.x, seen.width],
            [at.y, seen.height],
          ] as const) {
            expect(value - LOUPE / 2).toBeGreaterThanOrEqual(0);
            expect(value + LOUPE / 2).toBeLessThanOrEqual(most);
          }
        },
      ),
    );
  });
});
