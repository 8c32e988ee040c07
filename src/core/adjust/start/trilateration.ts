import { at } from '../array.ts';
import type { Vector } from '../model.ts';
import type { Problem } from '../problem.ts';
import type { Evidence, Span } from './evidence.ts';
import { type Ball, intersectCircles, intersectSpheres, length, minus } from './intersect.ts';

/**
 * Places points one after the other, the best-tied next, each where its distances to the placed ones agree best in the
 * least-absolute sense: pairs of circles or triples of spheres give the candidates, so one slip among several tapes
 * does not carry the point away. Free directions (the datum, a floating point) are filled in arbitrarily.
 *
 * @param seeds points to place first, in order
 */
export function trilaterate(problem: Problem, evidence: Evidence, seeds: readonly number[]): Float64Array {
  const { frame } = evidence;
  const count = problem.network.points.length;
  const x = new Float64Array(3 * count);
  const placed = new Uint8Array(count);
  const put = (p: number, v: Vector): void => {
    x.set(v, 3 * p);
    placed[p] = 1;
  };
  for (let p = 0; p < count; p++) {
    const v: Vector = [at(frame, 3 * p), at(frame, 3 * p + 1), at(frame, 3 * p + 2)];
    if (v.every((c) => !Number.isNaN(c))) put(p, v);
  }
  for (const p of seeds) if (placed[p] !== 1) put(p, place(problem, evidence, x, placed, p));
  for (;;) {
    const next = bestTied(evidence, placed, count);
    if (next < 0) return x;
    put(next, place(problem, evidence, x, placed, next));
  }
}

function bestTied(evidence: Evidence, placed: Uint8Array, count: number): number {
  let best = -1;
  let bestTies = -1;
  for (let p = 0; p < count; p++) {
    if (placed[p] === 1) continue;
    let ties = 0;
    for (const s of evidence.spans[p] ?? []) if (placed[s.to] === 1) ties++;
    for (const o of evidence.offsets[p] ?? []) {
      if (placed[o.from] === 1 && placed[o.towards] === 1) ties += 2;
    }
    if (ties > bestTies) {
      best = p;
      bestTies = ties;
    }
  }
  return best;
}

function place(problem: Problem, evidence: Evidence, x: Float64Array, placed: Uint8Array, p: number): Vector {
  const spans = (evidence.spans[p] ?? []).filter((s) => placed[s.to] === 1);
  const centre = (q: number): Vector => [at(x, 3 * q), at(x, 3 * q + 1), at(x, 3 * q + 2)];
  const balls = spans.map((s): Ball => ({ centre: centre(s.to), radius: s.length }));
  const z = at(evidence.frame, 3 * p + 2);
  const candidates = [...byOffsets(evidence, p, placed, centre, z), ...byBalls(balls, z)];
  if (candidates.length === 0) candidates.push(...underTied(balls, z, evidence, p, placed));
  return bestOf(candidates, spans, centre, problem, p, evidence);
}

function byBalls(balls: readonly Ball[], z: number): Vector[] {
  // Twelve tapes to one point are plenty to find where it lies; more only cost time.
  const used = balls.slice(0, 12);
  const found: Vector[] = [];
  used.forEach((a, i) => {
    used.slice(i + 1).forEach((b, j) => {
      if (!Number.isNaN(z)) found.push(...intersectCircles(a, b, z));
      else for (const c of used.slice(i + j + 2)) found.push(...intersectSpheres(a, b, c));
    });
  });
  return found;
}

function byOffsets(
  evidence: Evidence,
  p: number,
  placed: Uint8Array,
  centre: (q: number) => Vector,
  z: number,
): Vector[] {
  const found: Vector[] = [];
  for (const o of evidence.offsets[p] ?? []) {
    if (placed[o.from] !== 1 || placed[o.towards] !== 1) continue;
    const a = centre(o.from);
    const b = centre(o.towards);
    const d = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const u = [(b[0] - a[0]) / d, (b[1] - a[1]) / d] as const;
    const along = o.along ?? 0;
    const outs = o.signed === true ? [o.out ?? 0] : [o.out ?? 0, -(o.out ?? 0)];
    for (const out of outs) {
      found.push([a[0] + along * u[0] - out * u[1], a[1] + along * u[1] + out * u[0], Number.isNaN(z) ? a[2] : z]);
    }
  }
  return found;
}

/** Where point p would lie by most of its tapes to points as they stand; where it is, if nothing is better. */
export function bestAmongTapes(evidence: Evidence, x: Float64Array, p: number): Vector {
  const centre = (q: number): Vector => [at(x, 3 * q), at(x, 3 * q + 1), at(x, 3 * q + 2)];
  const spans = evidence.spans[p] ?? [];
  const balls = spans.map((s): Ball => ({ centre: centre(s.to), radius: s.length }));
  const z = at(evidence.frame, 3 * p + 2);
  const misfit = (v: Vector): number => {
    // Neighbours may lie a little off themselves, so a tape counts as agreeing within some sigmas.
    let cost = Number.isNaN(z) ? 0 : Math.min(25, (v[2] - z) ** 2 / 16);
    for (const s of spans) cost += Math.min(25, ((length(minus(v, centre(s.to))) - s.length) / (3 * s.sigma)) ** 2);
    return cost;
  };
  let best = centre(p);
  let least = misfit(best) - 1e-6;
  // A height over the frame's plane may itself be the slip.
  for (const v of [...byBalls(balls, z), ...(Number.isNaN(z) ? [] : byBalls(balls, best[2]))]) {
    const cost = misfit(v);
    if (cost < least) [best, least] = [v, cost];
  }
  return best;
}

/**
 * Too few tapes to fix the point: any place they allow, but off the lines and planes of the others, where a shape would
 * look looser than it is. This also lays the datum's first two or three points.
 */
function underTied(balls: readonly Ball[], z: number, evidence: Evidence, p: number, placed: Uint8Array): Vector[] {
  const [a, b] = balls;
  const before = placed.reduce((n, one) => n + one, 0);
  const lift = Number.isNaN(z) && before > 2 ? 0.3 * (a?.radius ?? 1000) : 0;
  const height = Number.isNaN(z) ? lift : z;
  if (a !== undefined && b !== undefined) return intersectCircles(a, b, height);
  const angle = before < 2 ? 0 : 1 + 2.4 * p;
  if (a !== undefined) {
    const flat = Math.sqrt(Math.max(0, a.radius ** 2 - (height - a.centre[2]) ** 2));
    return [[a.centre[0] + flat * Math.cos(angle), a.centre[1] + flat * Math.sin(angle), height]];
  }
  const fx = at(evidence.frame, 3 * p);
  const fy = at(evidence.frame, 3 * p + 1);
  const away = before === 0 ? 0 : 1000 + 100 * p;
  return [[Number.isNaN(fx) ? away * Math.cos(angle) : fx, Number.isNaN(fy) ? away * Math.sin(angle) : fy, height]];
}

function bestOf(
  candidates: readonly Vector[],
  spans: readonly Span[],
  centre: (q: number) => Vector,
  problem: Problem,
  p: number,
  evidence: Evidence,
): Vector {
  const nominal = problem.network.points[p]?.nominal;
  let best: Vector = [0, 0, 0];
  let bestCost = Number.POSITIVE_INFINITY;
  for (const v of candidates) {
    let cost = 0;
    for (const s of spans) cost += Math.abs(length(minus(v, centre(s.to))) - s.length) / s.sigma;
    for (let c = 0; c < 3; c++) {
      const f = at(evidence.frame, 3 * p + c);
      if (!Number.isNaN(f)) cost += Math.abs((v[c] ?? 0) - f);
    }
    // Only a tie-break between mirror images, so that equal fits fall the same way every time.
    if (nominal !== undefined) cost += 1e-9 * length(minus(v, nominal));
    else cost -= 1e-9 * (v[1] + v[2]);
    if (cost < bestCost) {
      best = v;
      bestCost = cost;
    }
  }
  return best;
}

/** Sets of first points worth trying: well-tied, wide pairs (plane) or triangles (space), best first, disjoint-ish. */
export function seedSets(problem: Problem, evidence: Evidence, wanted: number): number[][] {
  const flat = problem.network.points.every((_, p) => !Number.isNaN(at(evidence.frame, 3 * p + 2)));
  const scored: { seeds: number[]; score: number }[] = [];
  const ties = evidence.spans.map((s) => s.length);
  const lengthOf = (a: number, b: number): number | undefined => evidence.spans[a]?.find((s) => s.to === b)?.length;
  evidence.spans.forEach((list, a) => {
    for (const s of list) {
      if (s.to < a) continue;
      const pair = s.length * Math.min(ties[a] ?? 0, ties[s.to] ?? 0);
      if (flat) {
        scored.push({ seeds: [a, s.to], score: pair });
        continue;
      }
      for (const t of list) {
        const third = t.to > s.to ? lengthOf(s.to, t.to) : undefined;
        if (third === undefined) continue;
        const half = (s.length + t.length + third) / 2;
        const area = Math.sqrt(Math.max(0, half * (half - s.length) * (half - t.length) * (half - third)));
        scored.push({ seeds: [a, s.to, t.to], score: area * Math.min(ties[a] ?? 0, ties[s.to] ?? 0, ties[t.to] ?? 0) });
      }
    }
  });
  scored.sort((m, n) => n.score - m.score);
  const chosen: number[][] = [];
  for (const { seeds } of scored) {
    if (chosen.length >= wanted) break;
    if (chosen.every((c) => c.filter((p) => seeds.includes(p)).length < seeds.length - 1 || chosen.length === 0)) {
      chosen.push(seeds);
    }
  }
  return chosen.length === 0 ? [[]] : chosen;
}
