import { ix } from '../array.ts';
import type { Problem } from '../problem.ts';

/** A distance between two points (indices), as a start may use it. */
export interface Span {
  readonly to: number;
  readonly length: number;
  readonly sigma: number;
}

/** A point given by station and offset from two others. */
export interface Offset {
  readonly from: number;
  readonly towards: number;
  along?: number;
  /** Left positive when `signed`. */
  out?: number;
  signed?: boolean;
}

/** What readings say directly about where points lie; enough to find a first shape. */
export interface Evidence {
  readonly spans: readonly Span[][];
  /** Frame coordinates read directly, NaN where not; three per point. */
  readonly frame: Float64Array;
  readonly offsets: readonly Offset[][];
}

export function gatherEvidence(problem: Problem): Evidence {
  const count = problem.network.points.length;
  const spans: Span[][] = Array.from({ length: count }, () => []);
  const offsets: Offset[][] = Array.from({ length: count }, () => []);
  const frame = new Float64Array(3 * count).fill(Number.NaN);
  problem.network.points.forEach((p, i) => {
    if (p.known !== undefined) frame.set(p.known, 3 * i);
    if (problem.dimension === 2) frame[3 * i + 2] = 0;
  });
  for (const { reading, refs, points, sign } of problem.prepared) {
    const first = ix(refs, 0) / 3;
    const last = ix(refs, points - 1) / 3;
    const hasBaseline = refs.length > points;
    const span =
      reading.kind === 'straight' || (reading.kind === 'girth' && points === 2) || reading.kind === 'running';
    if (span && !hasBaseline) {
      spans[first]?.push({ to: last, length: reading.value, sigma: reading.sigma });
      spans[last]?.push({ to: first, length: reading.value, sigma: reading.sigma });
    } else if (!hasBaseline) {
      inFrame(reading.kind, reading.axis, first, reading.value, reading.direction, frame, refs, points);
    } else if (reading.kind === 'along' || reading.kind === 'out') {
      const from = ix(refs, 1) / 3;
      const towards = ix(refs, 2) / 3;
      let offset = offsets[first]?.find((o) => o.from === from && o.towards === towards);
      if (offset === undefined) {
        offset = { from, towards };
        offsets[first]?.push(offset);
      }
      if (reading.kind === 'along') offset.along = reading.value;
      else {
        offset.signed = reading.direction !== undefined;
        offset.out = sign * reading.value;
      }
    }
  }
  return { spans, offsets, frame };
}

function inFrame(
  kind: string,
  axis: 'x' | 'y' | 'z' | undefined,
  point: number,
  value: number,
  direction: string | undefined,
  frame: Float64Array,
  refs: Int32Array,
  points: number,
): void {
  const set = (component: number, v: number, p = point): void => {
    if (Number.isNaN(frame[3 * p + component])) frame[3 * p + component] = v;
  };
  if (kind === 'height') set(2, value);
  else if (kind === 'along') set(0, value);
  else if (kind === 'out') set(1, direction === 'starboard' || direction === 'right' ? -value : value);
  else if (kind === 'known') set(axis === 'x' ? 0 : axis === 'y' ? 1 : 2, value);
  else if (kind === 'centre') for (let k = 0; k < points; k++) set(1, 0, ix(refs, k) / 3);
}

/**
 * The evidence without distances that no triangle they stand in allows: one side longer than the other two together
 * votes against all three, and the reading with most votes goes first. Undefined where nothing is impossible.
 */
export function withoutImpossible(evidence: Evidence): Evidence | undefined {
  const spans = evidence.spans.map((list) => [...list]);
  let dropped = 0;
  for (; dropped < 8; dropped++) {
    const worst = mostImpossible(spans);
    if (worst === undefined) break;
    const [a, b] = worst;
    spans[a] = (spans[a] ?? []).filter((s) => s.to !== b);
    spans[b] = (spans[b] ?? []).filter((s) => s.to !== a);
  }
  return dropped === 0 ? undefined : { ...evidence, spans };
}

function mostImpossible(spans: readonly (readonly Span[])[]): readonly [number, number] | undefined {
  const votes = new Map<number, number>();
  const count = spans.length;
  const vote = (a: number, b: number): void => {
    const key = Math.min(a, b) * count + Math.max(a, b);
    votes.set(key, (votes.get(key) ?? 0) + 1);
  };
  spans.forEach((list, a) => {
    for (const ab of list) {
      if (ab.to <= a) continue;
      for (const ac of list) {
        const bc = ac.to > ab.to ? spans[ab.to]?.find((s) => s.to === ac.to) : undefined;
        if (bc === undefined) continue;
        const longest = Math.max(ab.length, ac.length, bc.length);
        const slack = ab.length + ac.length + bc.length - 2 * longest;
        if (slack > -5 * (ab.sigma + ac.sigma + bc.sigma)) continue;
        vote(a, ab.to);
        vote(a, ac.to);
        vote(ab.to, ac.to);
      }
    }
  });
  let best: readonly [number, number] | undefined;
  let most = 0;
  for (const [key, n] of votes) if (n > most) [most, best] = [n, [Math.trunc(key / count), key % count]];
  return best;
}
