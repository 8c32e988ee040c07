import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/core/cloth/index.ts';
import { fitPlaces } from '../../src/screens/parts/drawing/project.ts';

const frame = { width: 300, height: 200, margin: 20 };
describe('a view', () => {
  const [aft, forward]: [Place, Place] = [
    [0, 0, 0],
    [1000, 0, 400],
  ];
  const across = (view: 'port' | 'starboard') => {
    const { to } = fitPlaces([aft, forward], view, frame);
    return to(forward)[0] - to(aft)[0];
  };

  it('from port has the bow to the left, from starboard to the right', () => {
    expect(across('port')).toBeLessThan(0);
    expect(across('starboard')).toBeGreaterThan(0);
  });

  it('from astern has port to the left, from ahead to the right, and up is up in both', () => {
    const [port, starboard]: [Place, Place] = [
      [0, 800, 0],
      [0, -800, 300],
    ];
    for (const [view, way] of [
      ['astern', 1],
      ['ahead', -1],
    ] as const) {
      const { to } = fitPlaces([port, starboard], view, frame);
      expect(Math.sign(to(starboard)[0] - to(port)[0])).toBe(way);
      expect(to(starboard)[1]).toBeLessThan(to(port)[1]);
    }
  });
});
