import type { Flat } from '../../parts/drawing/project.ts';
import type { PointResult } from '../state/engine-view.ts';

/** An ellipse on the drawing, px and degrees. */
export interface Oval {
  point: string;
  at: Flat;
  rx: number;
  ry: number;
  turn: number;
}

/** Chi-square, 95 %, for two and three dimensions: an ellipsoid's shadow holds its point more often than the ellipsoid. */
const CHI2 = 5.991;
const CHI3 = 7.815;
const FACTORS = [200, 150, 100, 75, 50, 40, 30, 20, 15, 10, 5, 2];
/** px; the largest ellipse is drawn no larger than this, unless it is larger to scale. */
const LARGEST = 32;

/** Turns a direction of the boat's frame into one of the drawing, px for each mm. */
export type Turn = (x: number, y: number, z: number) => Flat;

/** 95 % ellipses as they are looked at, all enlarged by one round factor so that they can be seen. */
export function ovalsOf(
  points: readonly PointResult[],
  at: (point: string) => Flat | undefined,
  turn: Turn,
): { ovals: Oval[]; factor: number } {
  const real = points.flatMap((point) => {
    const place = at(point.id);
    const shape = place && point.ellipse ? shadow(point.ellipse, turn) : null;
    return place && shape ? [{ point: point.id, at: place, ...shape }] : [];
  });
  const widest = Math.max(0, ...real.map(({ rx }) => rx));
  const factor = widest > 0 ? (FACTORS.find((by) => widest * by <= LARGEST) ?? 1) : 1;
  return { ovals: real.map((oval) => ({ ...oval, rx: oval.rx * factor, ry: oval.ry * factor })), factor };
}

function shadow({ semiAxes, directions }: NonNullable<PointResult['ellipse']>, turn: Turn) {
  const share = semiAxes.length > 2 ? CHI2 / CHI3 : 1;
  let [xx, xy, yy] = [0, 0, 0];
  for (const [i, length] of semiAxes.entries()) {
    const [dx, dy, dz] = directions[i] ?? [0, 0, 0];
    const [u, v] = turn(dx * length, dy * length, dz * length);
    xx += share * u * u;
    xy += share * u * v;
    yy += share * v * v;
  }
  const [mean, half] = [(xx + yy) / 2, Math.hypot((xx - yy) / 2, xy)];
  return {
    rx: Math.sqrt(mean + half),
    ry: Math.sqrt(Math.max(0, mean - half)),
    turn: (Math.atan2(2 * xy, xx - yy) * 90) / Math.PI,
  };
}
