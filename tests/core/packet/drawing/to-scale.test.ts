import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entity, Flat } from '../../../../src/core/packet/drawing/drawing.ts';
import { placeTexts } from '../../../../src/core/packet/drawing/paper-texts.ts';
import { scaledPlan } from '../../../../src/core/packet/drawing/to-scale.ts';
import { drawing as words } from '../../../../src/text/en/drawing.ts';

const place = fc.tuple(fc.integer({ min: 0, max: 150 }), fc.integer({ min: 0, max: 150 }));
const entities = fc.array(fc.tuple(place, place), { minLength: 1, maxLength: 25 }).map((pairs): Entity[] =>
  pairs.flatMap(([a, b], i): Entity[] => [
    { type: 'circle', layer: 'POINT', at: a, radius: 0.8 },
    { type: 'line', layer: 'DIMENSION', points: [a, b], closed: false },
    { type: 'text', layer: 'DIMENSION', at: a, text: `${i + 100} 3/16"`, height: 3.4, anchor: 'middle' },
  ]),
);

describe('values on a drawing on paper', () => {
  it('never cover one another, lie on their line, and are counted where there is no room', () => {
    fc.assert(
      fc.property(entities, (list) => {
        const { written, leftOut } = placeTexts(list);
        expect(written.length + leftOut).toBe(list.length / 3);
        for (const [i, one] of written.entries())
          for (const other of written.slice(i + 1))
            expect(
              Math.abs(one.at[0] - other.at[0]) >= (one.wide + other.wide) / 2 - 1e-9 ||
                Math.abs(one.at[1] - other.at[1]) >= (one.height + other.height) / 2 - 1e-9,
            ).toBe(true);
      }),
    );
  });
});

const rectangle = (width: number, height: number): Entity => {
  const points: Flat[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  return { type: 'line', layer: 'OUTLINE', points, closed: true };
};

const facts = { job: '', piece: '', demo: null, isCleared: false, cleared: '', state: '', seal: '' };

describe('a plan to scale', () => {
  it.each([
    ['metric', 3000, 2000, 20, 'Scale 1:20'],
    ['metric', 400, 300, 5, 'Scale 1:5'],
    ['imperial', 2400, 2000, 16, 'Scale 3/4 in = 1 ft (1:16)'],
    ['imperial', 1500, 900, 12, 'Scale 1 in = 1 ft (1:12)'],
    ['imperial', 1000, 900, 8, 'Scale 1 1/2 in = 1 ft (1:8)'],
  ] as const)('in %s of %i by %i mm stands at 1:%i and says so', (system, width, height, ratio, said) => {
    const drawing = {
      system,
      facts,
      legend: [],
      warnings: ['A PLAN'],
      adjusted: true,
      flat: false,
      entities: [rectangle(width, height)],
      block: [],
      space: [],
    };
    const plan = scaledPlan(drawing, { width: 190, height: 160 }, words, (mm) => `${mm}`);
    expect(plan.ratio).toBe(ratio);
    expect(plan.svg).toContain(said);
    expect(plan.svg).toContain('A PLAN');
    expect(plan.height).toBeLessThanOrEqual(160);
    const [, points = ''] = /<polygon [^>]*points="([^"]+)"/.exec(plan.svg) ?? [];
    const xs = points.split(' ').map((one) => Number(one.split(',')[0]));
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(width / ratio, 3);
  });
});
