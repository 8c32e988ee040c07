import { expect, it } from 'vitest';
import type { Place } from '../../src/core/cloth/index.ts';
import { askedPlaces } from '../../src/screens/parts/drawing/asked-places.ts';

const places = new Map<string, Place>([
  ['A', [0, 0, 0]],
  ['B', [2000, 0, 0]],
  ['E', [500, 300, 400]],
]);
const [A, B, E] = [places.get('A'), places.get('B'), places.get('E')];

it('follows a straight tape from its hook end, and a girth through the points it passes', () => {
  expect(askedPlaces({ kind: 'straight', points: ['B', 'A'] }, places)).toEqual({ string: [], along: [B, A] });
  expect(askedPlaces({ kind: 'girth', points: ['A', 'B'], via: ['E'] }, places).along).toEqual([A, E, B]);
});

it('stands an offset square on its string, and a station along it', () => {
  const foot = [500, 0, 0];
  const asked = { points: ['E'], baseline: ['A', 'B'] };
  expect(askedPlaces({ kind: 'out', ...asked }, places)).toEqual({ string: [A, B], along: [foot, E] });
  expect(askedPlaces({ kind: 'height', ...asked }, places)).toEqual({ string: [A, B], along: [foot, E] });
  expect(askedPlaces({ kind: 'along', ...asked }, places)).toEqual({ string: [A, B], along: [A, foot] });
});

it('stands a height on the ground, and draws no line for a size or a point without a place', () => {
  expect(askedPlaces({ kind: 'height', points: ['E'] }, places).along).toEqual([[500, 300, 0], E]);
  expect(askedPlaces({ kind: 'size', points: ['A', 'B'] }, places).along).toEqual([]);
  expect(askedPlaces({ kind: 'straight', points: ['X', 'Y'] }, places).along).toEqual([]);
});
