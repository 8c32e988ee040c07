import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axesOf, depthOff, faceOf, offPlane, onPlane, type Point3, planeOf } from '../../../src/core/geometry/index.ts';

/** A rectangle on two of the boat's axes, at a place on the third. */
const sheet = (axes: readonly [number, number], wide: number, high: number, off = 0): Point3[] =>
  [
    [0, 0],
    [wide, 0],
    [wide, high],
    [0, high],
  ].map(([u = 0, v = 0]) => {
    const place: [number, number, number] = [off, off, off];
    place[axes[0]] = u;
    place[axes[1]] = v;
    return place;
  });

describe('the face of a layout', () => {
  it('is seen from above where it lies, even with some height', () => {
    expect(faceOf(sheet([0, 1], 2000, 1500))).toBe('plan');
    expect(faceOf([...sheet([0, 1], 2000, 1500), [500, 500, 900]])).toBe('plan');
  });

  it('is seen from astern or ahead where it hangs across the boat', () => {
    expect(faceOf(sheet([1, 2], 2200, 1300))).toBe('astern');
    expect(faceOf(sheet([1, 2], 2200, 1300, -3000))).toBe('astern');
    expect(faceOf(sheet([1, 2], 2200, 1300, 2500))).toBe('ahead');
  });

  it('is seen from its own side where it hangs along the boat', () => {
    expect(faceOf(sheet([0, 2], 2200, 1300, 1100))).toBe('port');
    expect(faceOf(sheet([0, 2], 2200, 1300, -1100))).toBe('starboard');
  });

  it('is the plan where nothing is known', () => {
    expect(faceOf([])).toBe('plan');
  });
});

describe('a plane of the boat', () => {
  const place = fc.tuple(fc.integer({ min: -9000, max: 9000 }), fc.integer(), fc.integer());

  it('gives every place back from its coordinates there and how far it is off', () => {
    fc.assert(
      fc.property(fc.constantFrom('plan', 'side', 'end'), place, (plane, at) => {
        expect(offPlane(plane, onPlane(plane, at), depthOff(plane, at))).toEqual(at);
      }),
    );
  });

  it('names its axes', () => {
    expect([axesOf('plan'), axesOf('side'), axesOf('end')].map((axes) => axes.join(''))).toEqual(['xy', 'xz', 'yz']);
    expect(axesOf(null).join('')).toBe('xyz');
    expect(planeOf(sheet([0, 2], 2000, 1200))).toBe('side');
  });
});
