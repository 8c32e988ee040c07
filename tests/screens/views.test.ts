import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PieceSketch, Place } from '../../src/core/cloth/index.ts';
import { seenTurned, TURNS } from '../../src/core/geometry/index.ts';
import { fitTurned, projectionOf, START, viewsOf } from '../../src/screens/bench/drawing/views.ts';
import { fitPlaces } from '../../src/screens/parts/drawing/project.ts';

const coordinate = fc.integer({ min: -4000, max: 4000 });
const place = fc.tuple(coordinate, coordinate, coordinate);
const size = { width: 600, height: 400 };
const WHOLE = { zoom: 1, x: 0, y: 0 };
const sketch = (places: readonly Place[]): PieceSketch => ({
  places: new Map(places.map((at, i) => [String(i), at])),
  measured: new Set(),
});

describe('the views of a piece', () => {
  it('are one where it lies flat, its face and space where it hangs, and all where it is not flat', () => {
    expect(viewsOf('plan', true)).toEqual(['plan']);
    expect(viewsOf('astern', true)).toEqual(['astern', 'turned']);
    expect(viewsOf('plan', false)).toEqual(['plan', 'starboard', 'astern', 'turned']);
    expect(viewsOf('astern', false)).toEqual(['astern', 'plan', 'starboard', 'turned']);
  });
});

describe('a turned piece', () => {
  const turn = fc.record({
    around: fc.double({ min: -3, max: 3, noNaN: true }),
    down: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
  });

  it('stays in its frame however it is turned, at one scale', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 8 }), turn, turn, (places, one, other) => {
        const frame = { ...size, margin: 40 };
        const [first, second] = [fitTurned(places, one, frame), fitTurned(places, other, frame)];
        expect(first.scale).toBe(second.scale);
        for (const at of places) {
          const [x, y] = first.to(at);
          expect(Math.min(x, size.width - x)).toBeGreaterThanOrEqual(40 - 1e-6);
          expect(Math.min(y, size.height - y)).toBeGreaterThanOrEqual(40 - 1e-6);
        }
      }),
    );
  });

  it('from straight above has every line along and as long as the plan, to its own scale', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 8 }), (places) => {
        const frame = { ...size, view: TURNS.plan, look: WHOLE };
        const [turned, plan] = [
          projectionOf(sketch(places), frame, true),
          projectionOf(sketch(places), { ...frame, view: 'plan' }, true),
        ];
        const [first = [0, 0, 0], ...rest] = places;
        for (const at of rest)
          for (const axis of [0, 1] as const) {
            const [a, b] = [turned, plan].map(({ to, scale }) => (to(at)[axis] - to(first)[axis]) / scale);
            expect(a).toBeCloseTo(b ?? Number.NaN, 4);
          }
      }),
    );
  });

  it('is enlarged and moved as the plan is', () => {
    const places: Place[] = [
      [0, 0, 0],
      [1000, 400, 300],
    ];
    const { to, scale } = projectionOf(
      sketch(places),
      { ...size, view: START, look: { zoom: 2, x: 30, y: -10 } },
      true,
    );
    const whole = projectionOf(sketch(places), { ...size, view: START, look: WHOLE }, true);
    expect(scale).toBeCloseTo(2 * whole.scale, 9);
    const [x, y] = whole.to([1000, 400, 300]);
    expect(to([1000, 400, 300])[0]).toBeCloseTo(300 + 2 * (x - 300) + 30, 9);
    expect(to([1000, 400, 300])[1]).toBeCloseTo(200 + 2 * (y - 200) - 10, 9);
  });
});

it('the plan lies where it lay: up is the bow, right is starboard', () => {
  const { to, scale } = fitPlaces(
    [
      [0, 0, 0],
      [1000, -500, 250],
    ],
    'plan',
    { ...size, margin: 60 },
  );
  const [right, up] = seenTurned(TURNS.plan, [1000, -500, 250]);
  expect(to([1000, -500, 250])[0] - to([0, 0, 0])[0]).toBeCloseTo(right * scale, 6);
  expect(to([0, 0, 0])[1] - to([1000, -500, 250])[1]).toBeCloseTo(up * scale, 6);
});
