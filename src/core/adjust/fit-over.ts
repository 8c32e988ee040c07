import type { Vector } from './model.ts';
import { bestRotation, centroid, relative, transformed } from './rigid.ts';

/** Two shapes laid over each other. gaps: mm between each point's two places then; rms over all of them. */
export interface ShapeFit {
  readonly gaps: ReadonlyMap<string, number>;
  readonly rms: number;
  /** The first shape, turned and shifted onto the second. */
  readonly laid: ReadonlyMap<string, Vector>;
}

/**
 * The first shape laid over the second without stretching or mirroring it, by least squares over the points both have
 * (Horn 1987; in a plane a turn about z). Null for fewer than two points in a plane, three in space.
 */
export function fitOver(
  first: ReadonlyMap<string, Vector>,
  second: ReadonlyMap<string, Vector>,
  dimension: 2 | 3,
): ShapeFit | null {
  const ids = [...first.keys()].filter((id) => second.has(id));
  if (ids.length < dimension) return null;
  const from = flattened(ids, first);
  const to = flattened(ids, second);
  const all = ids.map((_, i) => i);
  const [about, shift] = [centroid(from, all), centroid(to, all)];
  const turn = bestRotation(relative(from, all, about), relative(to, all, shift), dimension === 2);
  const moved = transformed(from, turn, about, shift);
  const gap = (i: number): number =>
    Math.hypot(...[0, 1, 2].map((c) => (moved[3 * i + c] ?? 0) - (to[3 * i + c] ?? 0)));
  const whole = transformed(flattened([...first.keys()], first), turn, about, shift);
  return {
    gaps: new Map(ids.map((id, i) => [id, gap(i)])),
    rms: Math.sqrt(all.reduce((sum, i) => sum + gap(i) ** 2, 0) / ids.length),
    laid: new Map(
      [...first.keys()].map((id, i) => [
        id,
        [whole[3 * i] ?? 0, whole[3 * i + 1] ?? 0, whole[3 * i + 2] ?? 0] as const,
      ]),
    ),
  };
}

const flattened = (ids: readonly string[], places: ReadonlyMap<string, Vector>): Float64Array =>
  Float64Array.from(ids.flatMap((id) => [...(places.get(id) ?? [0, 0, 0])]));
