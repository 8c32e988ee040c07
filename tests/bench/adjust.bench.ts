/**
 * The measuring engine against two peers on the same problems in the same run, each started from the same coordinates:
 * scipy's least_squares (Debian python3-scipy) with the analytic Jacobian, plus the covariance; and the npm package
 * ml-levenberg-marquardt with the analytic Jacobian, solution only. Peers that are not installed are left out.
 */

import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { adjust, type Network, nameSlips, nextTapes, seededRandom, type Vector } from '../../src/core/adjust/index.ts';
import { normalDeviate } from '../../src/core/adjust/random.ts';
import { bowJob, type Job, largeJob } from './adjust-jobs.ts';
import { misread, withSlips } from './adjust-slips.ts';

/** Best of some runs, ms: what is left when the machine's other work is not in the way. */
function best(runs: number, work: () => void): number {
  for (let k = 0; k < 3; k++) work();
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < runs; k++) {
    const begin = performance.now();
    work();
    least = Math.min(least, performance.now() - begin);
  }
  return least;
}

/** Marks known, the rest started some millimetres off (from further off the peers end in a false minimum of the large job). */
function startable(job: Job, dimension: 2 | 3): Network {
  const random = seededRandom(3);
  const points = job.network.points.map((p) => {
    const t = job.truth.get(p.id) ?? [0, 0, 0];
    if (p.role === 'mark') return { ...p, known: t };
    const off = (c: 0 | 1 | 2): number => (c < dimension ? t[c] + 5 * normalDeviate(random) : 0);
    return { ...p, nominal: [off(0), off(1), off(2)] as const };
  });
  return { ...job.network, points: [...points.filter((p) => 'known' in p), ...points.filter((p) => !('known' in p))] };
}

interface Flat {
  readonly dimension: number;
  readonly known: Vector[];
  readonly start: Vector[];
  readonly rows: [number, number, number, number][];
}

function flatten(network: Network): Flat {
  const index = new Map(network.points.map((p, i) => [p.id, i]));
  return {
    dimension: network.dimension,
    known: network.points.flatMap((p) => (p.known === undefined ? [] : [p.known])),
    start: network.points.flatMap((p) => (p.nominal === undefined ? [] : [p.nominal])),
    rows: network.readings.map((r) => [
      index.get(r.points[0] ?? '') ?? 0,
      index.get(r.points[1] ?? '') ?? 0,
      r.value,
      r.sigma,
    ]),
  };
}

function scipy(flat: Flat, repeat: number): { ms: number; square: number } | undefined {
  const script = fileURLToPath(new URL('../reference/adjust/scipy_solve.py', import.meta.url));
  const run = spawnSync('/usr/bin/python3', [script], { input: JSON.stringify([{ ...flat, repeat }]), maxBuffer: 1e9 });
  return run.status === 0 ? JSON.parse(run.stdout.toString())[0] : undefined;
}

function mljs(flat: Flat, runs: number): { ms: number; square: number } {
  const n = flat.dimension;
  const k = flat.known.length;
  const place = (p: number[], i: number, c: number): number =>
    i < k ? (flat.known[i]?.[c as 0 | 1 | 2] ?? 0) : (p[(i - k) * n + c] ?? 0);
  const length = (p: number[], i: number, j: number): number => {
    let s = 0;
    for (let c = 0; c < n; c++) s += (place(p, j, c) - place(p, i, c)) ** 2;
    return Math.sqrt(s);
  };
  const row = (x: number) => flat.rows[x] ?? ([0, 0, 0, 1] as const);
  const model = (p: number[]) => (x: number) => length(p, row(x)[0], row(x)[1]) / row(x)[3];
  const jacobianFunction = (p: number[]) => (x: number) => {
    const [i, j, , sigma] = row(x);
    const derivative = new Array<number>(p.length).fill(0);
    const d = length(p, i, j);
    for (let c = 0; c < n; c++) {
      const u = (place(p, j, c) - place(p, i, c)) / d / sigma;
      if (j >= k) derivative[(j - k) * n + c] = u;
      if (i >= k) derivative[(i - k) * n + c] = -u;
    }
    return derivative;
  };
  const data = { x: flat.rows.map((_, r) => r), y: flat.rows.map((r) => r[2] / r[3]) };
  const initialValues = flat.start.flatMap((v) => v.slice(0, n));
  let square = 0;
  const ms = best(runs, () => {
    // Its only stop is the number of steps, so it is given as few as it needs from this start.
    const fit = levenbergMarquardt(data, model, {
      initialValues,
      jacobianFunction,
      damping: 1e-7,
      maxIterations: 5,
      weights: 1,
    });
    square = fit.parameterError;
  });
  return { ms, square };
}

async function main(): Promise<void> {
  console.log(
    '| job | this engine, all of it | after one take (warm) | scipy, solution and covariance | ml-levenberg-marquardt, solution |',
  );
  console.log('|---|---|---|---|---|');
  for (const [points, tapes, dimension, marks] of [
    [60, 240, 2, 6],
    [60, 240, 3, 6],
    [200, 900, 2, 8],
    [200, 900, 3, 8],
  ] as const) {
    const network = startable(largeJob(seededRandom(1), points, tapes, dimension, marks), dimension);
    const runs = points > 100 ? 12 : 40;
    const first = adjust(network);
    if (!('solution' in first)) throw new Error(first.state);
    const full = best(runs, () => void adjust(network));
    const start = new Map(first.solution.points.map((p) => [p.id, p.position]));
    const readings = network.readings.map((r, i) => (i === 100 ? { ...r, value: r.value + 1 } : r));
    const warm = best(runs, () => void adjust({ ...network, readings }, { start, seekShapes: false }));
    const flat = flatten(network);
    const theirs = scipy(flat, points > 100 ? 3 : 8);
    const others = mljs(flat, points > 100 ? 1 : 4);
    const against = (other: { ms: number; square: number } | undefined): string =>
      other === undefined
        ? 'not installed'
        : `${other.ms.toFixed(1)} ms (${(other.ms / full).toFixed(0)} x), vPv ${other.square.toFixed(3)}`;
    const own = `${full.toFixed(2)} ms (${first.state}, vPv ${first.solution.weightedSquare.toFixed(3)})`;
    console.log(
      `| ${points} points, ${network.readings.length} tapes, ${dimension}D | ${own} | ${warm.toFixed(2)} ms | ${against(theirs)} | ${against(others)} |`,
    );
  }
  const random = seededRandom(8);
  const sound = bowJob(random);
  let slips = misread(sound, 'digits swapped', random);
  while (slips === undefined) slips = misread(sound, 'digits swapped', random);
  const slipped = withSlips(sound, slips).network;
  const doubted = adjust(slipped);
  console.log(
    `\nBow cover, 10 points, 31 tapes: adjust ${best(40, () => void adjust(sound.network)).toFixed(2)} ms, ` +
      `adjust with a slip ${best(20, () => void adjust(slipped)).toFixed(2)} ms, name it ${best(20, () => void nameSlips(slipped, doubted)).toFixed(2)} ms, ` +
      `next tapes ${best(20, () => void nextTapes(sound.network, adjust(sound.network))).toFixed(2)} ms`,
  );
}

await main();
