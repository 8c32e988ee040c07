import { at } from './array.ts';
import { type DatumDefect, datumDefect } from './datum.ts';
import { symmetricEigen } from './linear/symmetric-eigen.ts';
import type { Side, Vector } from './model.ts';
import { evaluate, newEvaluation, type Problem, settleKinds, weightedSquare } from './problem.ts';
import type { Solution } from './result.ts';
import { bestRotation, centroid, mirrorThrough, relative, scatter, transformed } from './rigid.ts';

export interface Framed {
  readonly x: Float64Array;
  readonly handedness: Solution['handedness'];
  readonly wrongSides: readonly { readonly point: string; readonly side: Side }[];
}

const SIDES: Readonly<Record<Side, readonly [number, number]>> = {
  forward: [0, 1],
  aft: [0, -1],
  port: [1, 1],
  starboard: [1, -1],
  above: [2, 1],
  below: [2, -1],
};

/** Turns and, where nothing else settles it, mirrors the shape so that it agrees with declared sides and the nominal layout. */
export function settleFrame(problem: Problem, x: Float64Array, weight: Float64Array): Framed {
  const own = align(problem, x, weight);
  const twin = mirrorTwin(problem, x, weight);
  const ownWrong = wrongSides(problem, own);
  if (twin === undefined) {
    settleKinds(problem, own);
    return { x: own, handedness: 'fixed', wrongSides: ownWrong };
  }
  const other = align(problem, twin, weight);
  const otherWrong = wrongSides(problem, other);
  let takeTwin = otherWrong.length < ownWrong.length;
  let handedness: Solution['handedness'] = otherWrong.length === ownWrong.length ? 'open' : 'sides';
  if (handedness === 'open') {
    const [a, b] = [nominalMisfit(problem, own), nominalMisfit(problem, other)];
    if (Math.abs(a - b) > 1e-3 * (a + b)) {
      handedness = 'nominal';
      takeTwin = b < a;
    }
  }
  const chosen = takeTwin ? other : own;
  settleKinds(problem, chosen);
  return { x: chosen, handedness, wrongSides: takeTwin ? otherWrong : ownWrong };
}

/** Declared sides that the coordinates contradict; a millimetre past the middle is not yet the other side. */
function wrongSides(problem: Problem, x: Float64Array): { point: string; side: Side }[] {
  const { points } = problem.network;
  const found: { point: string; side: Side }[] = [];
  const middleOf = middles(problem, x);
  points.forEach((p, i) => {
    for (const side of p.sides ?? []) {
      const [axis, sign] = SIDES[side];
      if (!hasOtherSide(problem, i, side)) continue;
      if (sign * (at(x, 3 * i + axis) - (middleOf(i)[axis] ?? 0)) < -1) found.push({ point: p.id, side });
    }
  });
  return found;
}

/** Among what a point is held against, something lies elsewhere: which of two port points is further to port says nothing. */
function hasOtherSide({ network: { points } }: Problem, i: number, side: Side): boolean {
  const marked = points.some(({ role }) => role === 'mark');
  return points.some((p, k) => k !== i && (!marked || p.role === 'mark') && !p.sides?.includes(side));
}

/** For each point the centroid of the marks other than itself, or of all other points where there are no marks. */
function middles(problem: Problem, x: Float64Array): (i: number) => Vector {
  const { points } = problem.network;
  const marks = points.flatMap((p, i) => (p.role === 'mark' ? [i] : []));
  const list = marks.length > 0 ? marks : points.map((_, i) => i);
  const all = centroid(x, list);
  const among = new Set(list);
  return (i) => {
    if (!among.has(i) || list.length < 2) return all;
    const n = list.length;
    const without = (c: 0 | 1 | 2): number => (n * all[c] - at(x, 3 * i + c)) / (n - 1);
    return [without(0), without(1), without(2)];
  };
}

/** Moves the shape within the motions no reading feels: onto the nominal layout, else to the declared sides. */
function align(problem: Problem, x: Float64Array, weight: Float64Array): Float64Array {
  const evaluation = newEvaluation(problem);
  evaluate(problem, x, evaluation);
  const free = freedomOf(problem, datumDefect(problem, x, evaluation, weight));
  if (!free.turn && free.shift.every((s) => !s)) return x;
  const { points } = problem.network;
  const nominal = points.flatMap((p, i) => (p.nominal === undefined ? [] : [i]));
  const all = points.map((_, i) => i);
  if (nominal.length >= 2) {
    const layout = new Float64Array(x.length);
    for (const i of nominal) layout.set(points[i]?.nominal ?? [], 3 * i);
    const [from, to] = [centroid(x, nominal), centroid(layout, nominal)];
    const turn = bestRotation(relative(x, nominal, from), relative(layout, nominal, to), !free.tumble);
    return transformed(x, free.turn ? turn : UNIT, from, pick(free.shift, to, from));
  }
  const origin = points.findIndex((p) => p.role === 'mark');
  const zero = centroid(x, [Math.max(0, origin)]);
  if (!free.turn) return transformed(x, UNIT, zero, pick(free.shift, [0, 0, 0], zero));
  const turn = bySides(problem, x, free.tumble) ?? byFirstPoints(x, all, free.tumble);
  const turned = transformed(x, turn, zero, pick(free.shift, [0, 0, 0], zero));
  return free.tumble ? levelled(problem, turned) : turned;
}

/** Lays the plane of the marks level, so that above and below are square to it, and turns to the sides once more. */
function levelled(problem: Problem, x: Float64Array): Float64Array {
  const marks = problem.network.points.flatMap((p, i) => (p.role === 'mark' ? [i] : []));
  if (marks.length < 3) return x;
  const about = centroid(x, marks);
  const v = relative(x, marks, about);
  const spread = scatter(v);
  const { values, vectors } = symmetricEigen(spread, 3);
  if (!(at(values, 1) > 1e-3 * at(values, 2))) return x;
  const up = at(vectors, 6) < 0 ? -1 : 1;
  const normal = Float64Array.of(up * at(vectors, 0), up * at(vectors, 3), up * at(vectors, 6));
  // The shortest turn that stands the normal up: it leaves the axis square to both alone.
  const axis = [-at(normal, 1), at(normal, 0), 0];
  const turn = bestRotation(Float64Array.of(...normal, ...axis), Float64Array.of(0, 0, 1, ...axis), false);
  const origin: Vector = [at(x, 3 * (marks[0] ?? 0)), at(x, 3 * (marks[0] ?? 0) + 1), at(x, 3 * (marks[0] ?? 0) + 2)];
  const level = transformed(x, turn, origin, origin);
  return transformed(level, bySides(problem, level, false) ?? UNIT, origin, origin);
}

const UNIT = Float64Array.of(1, 0, 0, 0, 1, 0, 0, 0, 1);

const pick = (free: readonly boolean[], to: Vector, from: Vector): Vector => [
  free[0] === true ? to[0] : from[0],
  free[1] === true ? to[1] : from[1],
  free[2] === true ? to[2] : from[2],
];

/**
 * Which whole motions are free. A turn is only used when the place it turns about is free too, so a network held at
 * one point or line stays where it is.
 */
function freedomOf(problem: Problem, defect: DatumDefect): { shift: boolean[]; turn: boolean; tumble: boolean } {
  const k = defect.motions.length;
  const whole = k === (problem.dimension === 2 ? 3 : 6);
  const shift = [0, 1, 2].map((axis) => axis < problem.dimension && (whole || inSpan(problem, defect, axis)));
  const turn =
    problem.dimension === 2
      ? k === 3
      : k === 6 ||
        (k === 3 && shift[0] === true && shift[1] === true && shift[2] !== true) ||
        (k === 4 && shift.every((s) => s));
  return { shift, turn, tumble: problem.dimension === 3 && k === 6 };
}

/** Whether the pure translation along an axis is a combination of the free motions. */
function inSpan(problem: Problem, defect: DatumDefect, axis: number): boolean {
  const n = problem.network.points.length;
  const k = defect.motions.length;
  if (k === 0) return false;
  const size = k + 1;
  const target = new Float64Array(3 * n);
  for (let p = 0; p < n; p++) target[3 * p + axis] = 1;
  const list = [...defect.motions, target].map((m) => {
    const norm = Math.sqrt(m.reduce((s, v) => s + v * v, 0)) || 1;
    return m.map((v) => v / norm);
  });
  const gram = new Float64Array(size * size);
  list.forEach((a, i) => {
    list.forEach((b, j) => {
      gram[i * size + j] = a.reduce((s, v, c) => s + v * at(b, c), 0);
    });
  });
  return at(symmetricEigen(gram, size).values, 0) < 1e-9;
}

function bySides(problem: Problem, x: Float64Array, tumble: boolean): Float64Array | undefined {
  const from: number[] = [];
  const to: number[] = [];
  const middleOf = middles(problem, x);
  problem.network.points.forEach((p, i) => {
    if (p.sides === undefined || p.sides.length === 0) return;
    const middle = middleOf(i);
    const target = [0, 0, 0];
    for (const side of p.sides) {
      const [axis, sign] = SIDES[side];
      target[axis] = sign;
    }
    from.push(...[0, 1, 2].map((c) => at(x, 3 * i + c) - middle[c as 0 | 1 | 2]));
    to.push(...target);
  });
  if (from.length === 0) return undefined;
  return bestRotation(Float64Array.from(from), Float64Array.from(to), !tumble);
}

/** Nothing says how the boat lies: first point at the origin, the second ahead, the rest (in space) near the plane. */
function byFirstPoints(x: Float64Array, all: readonly number[], tumble: boolean): Float64Array {
  const about = centroid(x, [0]);
  const vectors = relative(x, all, about);
  const target = new Float64Array(vectors.length);
  const ahead = Math.hypot(at(vectors, 3) || 0, at(vectors, 4) || 0, at(vectors, 5) || 0);
  if (all.length < 2 || ahead === 0) return UNIT;
  target[3] = ahead;
  const turn = bestRotation(vectors.slice(3, 6), target.slice(3, 6), !tumble);
  return turn;
}

function nominalMisfit(problem: Problem, x: Float64Array): number {
  let sum = 0;
  problem.network.points.forEach((p, i) => {
    p.nominal?.forEach((v, c) => {
      sum += (at(x, 3 * i + c) - v) ** 2;
    });
  });
  return sum;
}

/** The mirror image of the whole shape, if every reading and known point is as content with it. */
function mirrorTwin(problem: Problem, x: Float64Array, weight: Float64Array): Float64Array | undefined {
  const evaluation = newEvaluation(problem);
  evaluate(problem, x, evaluation);
  const square = weightedSquare(evaluation.residual, weight);
  for (const [normal, through] of mirrors(problem, x)) {
    const twin = reflected(x, normal, through);
    settleKinds(problem, twin);
    evaluate(problem, twin, evaluation);
    const same = Math.abs(weightedSquare(evaluation.residual, weight) - square) < 1e-6 * square + 1e-6;
    const held = problem.network.points.every(
      (p, i) => p.known === undefined || p.known.every((v, c) => Math.abs(at(twin, 3 * i + c) - v) < 1e-3),
    );
    const moves = twin.some((v, c) => Math.abs(v - at(x, c)) > 1);
    if (same && held && moves) {
      settleKinds(problem, x);
      return twin;
    }
  }
  settleKinds(problem, x);
  return undefined;
}

export function reflected(x: Float64Array, normal: Vector, through: Vector): Float64Array {
  const y = Float64Array.from(x);
  for (let i = 0; i < x.length; i += 3) {
    const d =
      (at(x, i) - through[0]) * normal[0] +
      (at(x, i + 1) - through[1]) * normal[1] +
      (at(x, i + 2) - through[2]) * normal[2];
    for (let c = 0; c < 3; c++) y[i + c] = at(x, i + c) - 2 * d * normal[c as 0 | 1 | 2];
  }
  return y;
}

/** Planes a network may be blind to: through its known points, else the frame's own. */
function mirrors(problem: Problem, x: Float64Array): [Vector, Vector][] {
  const known = problem.network.points.flatMap((p, i) => (p.known === undefined ? [] : [i]));
  const list: [Vector, Vector][] = [];
  if (known.length >= 2) {
    const { normal, through } = mirrorThrough(x, known, problem.dimension);
    list.push([normal, through]);
  }
  const about = known.length > 0 ? centroid(x, known) : ([0, 0, 0] as const);
  list.push([[0, 1, 0], about], [[1, 0, 0], about]);
  if (problem.dimension === 3) list.push([[0, 0, 1], about]);
  return list;
}
