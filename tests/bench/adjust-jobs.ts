/**
 * Seeded, invented jobs with a known true shape: what the slip trials and the benchmark measure on. Nothing here knows
 * how the engine looks for slips.
 */
import {
  defaultSigma,
  type Network,
  type NetworkPoint,
  type NetworkReading,
  type Side,
} from '../../src/core/adjust/index.ts';
import { normalDeviate, type Random } from '../../src/core/adjust/random.ts';

export type Style = 'inches' | 'feet-inches' | 'metric';
export type Xyz = readonly [number, number, number];

export interface Job {
  readonly network: Network;
  /** What each reading would have been without a slip: noise and rounding are in it. */
  readonly sound: ReadonlyMap<string, number>;
  readonly truth: ReadonlyMap<string, Xyz>;
  readonly style: Style;
}

const SIXTEENTH = 25.4 / 16;

/** The nearest sixteenth of an inch, or the nearest millimetre. */
export const rounded = (mm: number, style: Style): number =>
  style === 'metric' ? Math.round(mm) : Math.round(mm / SIXTEENTH) * SIXTEENTH;

/** What a person would write down for a length. */
export function written(mm: number, style: Style): string {
  if (style === 'metric') return `${Math.round(mm)}`;
  const sixteenths = Math.round(Math.abs(mm) / SIXTEENTH);
  const sign = mm < 0 && sixteenths > 0 ? '-' : '';
  let whole = Math.floor(sixteenths / 16);
  let [n, d] = [sixteenths % 16, 16];
  while (n > 0 && n % 2 === 0) [n, d] = [n / 2, d / 2];
  const fraction = n === 0 ? '' : ` ${n}/${d}`;
  if (style === 'inches' || whole < 12) return `${sign}${whole}${fraction}"`;
  const feet = Math.floor(whole / 12);
  whole %= 12;
  return `${sign}${feet}' ${whole}${fraction}"`;
}

export function distance(a: Xyz, b: Xyz): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

const between = (random: Random, low: number, high: number): number => low + (high - low) * random();

const STYLES: readonly Style[] = ['inches', 'feet-inches', 'metric'];

function measured(
  random: Random,
  dimension: 2 | 3,
  points: readonly NetworkPoint[],
  truth: ReadonlyMap<string, Xyz>,
  asked: readonly { kind: 'straight' | 'height'; points: string[] }[],
  style: Style,
): Job {
  const sound = new Map<string, number>();
  const at = (id: string): Xyz => truth.get(id) ?? [0, 0, 0];
  const readings = asked.map((a): NetworkReading => {
    const [p = '', q = ''] = a.points;
    const exact = a.kind === 'height' ? at(p)[2] : distance(at(p), at(q));
    const sigma = defaultSigma(a.kind, exact);
    const value = rounded(exact + sigma * normalDeviate(random), style);
    const id = a.kind === 'height' ? `${p} height` : `${p}-${q}`;
    sound.set(id, value);
    return {
      id,
      kind: a.kind,
      points: a.points,
      value,
      sigma,
      text: written(value, style),
      unit: style === 'metric' ? 'mm' : 'in',
    };
  });
  return { network: { dimension, points, readings }, sound, truth, style };
}

/** What is taped on a shade besides its six lengths: heights over the deck, tapes to marks on it. */
export interface ShadeTapes {
  readonly heights: readonly string[];
  /** Marks on the deck, each with a tape from every corner. */
  readonly marks: readonly string[];
  /** Whether the height of the marks over the same plane is taken too. */
  readonly onPlane?: boolean;
}
const AS_ASKED: ShadeTapes = { heights: ['A', 'B', 'C', 'D'], marks: [] };

/** Tension shade: mounts A, B on the hardtop, pole tips C, D; two widths, two sides, both diagonals, four heights. */
export function shadeJob(
  random: Random,
  style = STYLES[Math.floor(random() * 3)] ?? 'inches',
  { heights, marks, onPlane = false }: ShadeTapes = AS_ASKED,
): Job {
  const half = between(random, 900, 1400);
  const reach = between(random, 1800, 3200);
  const front = half * between(random, 0.55, 1);
  const top = between(random, 1500, 2200);
  const rake = between(random, 100, 700);
  const shake = (): number => between(random, -60, 60);
  const truth = new Map<string, Xyz>([
    ['A', [shake(), half + shake(), top + shake()]],
    ['B', [shake(), -half + shake(), top + shake()]],
    ['C', [reach + shake(), front + shake(), top - rake + shake()]],
    ['D', [reach + shake(), -front + shake(), top - rake + shake()]],
  ]);
  for (const [i, mark] of marks.entries())
    truth.set(mark, [
      reach * (0.35 + 0.3 * i) + shake(),
      (i === 0 ? 0.4 : -0.4) * half + shake(),
      onPlane ? 0 : shake(),
    ]);
  const side = (id: string): Side[] => [id === 'A' || id === 'C' ? 'port' : 'starboard', id < 'C' ? 'aft' : 'forward'];
  const points = ['A', 'B', 'C', 'D'].map(
    (id): NetworkPoint => ({
      id,
      label: id,
      role: id < 'C' ? 'mount' : 'corner',
      needed: true,
      sides: side(id),
      neighbours: ['A', 'B', 'C', 'D'].filter((o) => o !== id),
    }),
  );
  for (const mark of marks) points.push({ id: mark, label: mark, role: 'mark', sides: ['below'] });
  const pairs = ['AB', 'CD', 'AC', 'BD', 'AD', 'BC', ...marks.flatMap((mark) => [...'ABCD'].map((p) => `${p}${mark}`))];
  if (marks.length > 1) pairs.push(marks.slice(0, 2).join(''));
  const asked = [
    ...pairs.map((p) => ({ kind: 'straight' as const, points: [...p] })),
    ...[...heights, ...(onPlane ? marks : [])].map((p) => ({ kind: 'height' as const, points: [p] })),
  ];
  return measured(random, 3, points, truth, asked, style);
}

/** Open-bow cover, flat: marks W1 (port), W2 (starboard), F (forward, centreline), seven edge points, gaps between. */
export function bowJob(random: Random, style = STYLES[Math.floor(random() * 3)] ?? 'inches'): Job {
  const half = between(random, 800, 1150);
  const length = between(random, 1500, 2600);
  const wander = (): number => between(random, -40, 40);
  const truth = new Map<string, Xyz>([
    ['W1', [wander(), half * 0.75 + wander(), 0]],
    ['W2', [wander(), -half * 0.75 + wander(), 0]],
    ['F', [length * 0.72 + wander(), wander(), 0]],
  ]);
  const stations = [0.06, 0.4, 0.74];
  stations.forEach((s, i) => {
    const breadth = half * (1 - s ** 2.2 * 0.75);
    truth.set(`P${i + 1}`, [length * s + wander(), breadth + wander(), 0]);
    truth.set(`S${i + 1}`, [length * s + wander(), -breadth + wander(), 0]);
  });
  truth.set('T', [length + wander(), wander(), 0]);
  const edge = ['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1'];
  const marks = ['W1', 'W2', 'F'];
  const sidesOf: Record<string, Side[]> = {
    W1: ['port', 'aft'],
    W2: ['starboard', 'aft'],
    F: ['forward'],
    T: ['forward'],
  };
  const points: NetworkPoint[] = [
    ...marks.map((id): NetworkPoint => ({ id, label: id, role: 'mark', sides: sidesOf[id] ?? [] })),
    ...edge.map(
      (id, i): NetworkPoint => ({
        id,
        label: id,
        role: 'edge',
        needed: true,
        sides: sidesOf[id] ?? [id.startsWith('P') ? 'port' : 'starboard'],
        neighbours: [edge[i - 1], edge[i + 1]].filter((n) => n !== undefined),
      }),
    ),
  ];
  const pairs: [string, string][] = [
    ['W1', 'W2'],
    ['W1', 'F'],
    ['W2', 'F'],
  ];
  for (const p of edge) for (const m of marks) pairs.push([p, m]);
  edge.forEach((p, i) => {
    const next = edge[i + 1];
    if (next !== undefined) pairs.push([p, next]);
  });
  pairs.push(['P1', 'S1']);
  return measured(
    random,
    2,
    points,
    truth,
    pairs.map((p) => ({ kind: 'straight', points: p })),
    style,
  );
}

/** A larger cover for timing: `count` points round an edge, each taped to its nearest marks and its two neighbours. */
export function largeJob(random: Random, count: number, tapes: number, dimension: 2 | 3, marks: number): Job {
  const truth = new Map<string, Xyz>();
  const points: NetworkPoint[] = [];
  const height = (): number => (dimension === 3 ? between(random, 0, 1500) : 0);
  for (let m = 0; m < marks; m++) {
    const angle = (2 * Math.PI * m) / marks;
    truth.set(`M${m}`, [2500 * Math.cos(angle), 1000 * Math.sin(angle), height()]);
    points.push({ id: `M${m}`, label: `M${m}`, role: 'mark' });
  }
  const edge = Array.from({ length: count - marks }, (_, i) => `E${i}`);
  edge.forEach((id, i) => {
    const angle = (2 * Math.PI * i) / edge.length;
    truth.set(id, [4000 * Math.cos(angle) + between(random, -100, 100), 1500 * Math.sin(angle), height()]);
    points.push({
      id,
      label: id,
      role: 'edge',
      needed: true,
      neighbours: [edge[i - 1], edge[i + 1]].filter((n) => n !== undefined),
    });
  });
  const pairs: [string, string][] = [];
  for (let a = 0; a < marks; a++) for (let b = a + 1; b < marks; b++) pairs.push([`M${a}`, `M${b}`]);
  edge.forEach((id, i) => {
    const next = edge[(i + 1) % edge.length];
    if (next !== undefined) pairs.push([id, next]);
  });
  const want = tapes - pairs.length;
  const reach = edge.map((id) =>
    Array.from({ length: marks }, (_, m) => `M${m}`).sort(
      (a, b) =>
        distance(truth.get(id) ?? [0, 0, 0], truth.get(a) ?? [0, 0, 0]) -
        distance(truth.get(id) ?? [0, 0, 0], truth.get(b) ?? [0, 0, 0]),
    ),
  );
  for (let k = 0; k < want; k++) {
    const id = edge[k % edge.length];
    const mark = reach[k % edge.length]?.[Math.floor(k / edge.length)];
    if (id !== undefined && mark !== undefined) pairs.push([id, mark]);
  }
  return measured(
    random,
    dimension,
    points,
    truth,
    pairs.map((p) => ({ kind: 'straight', points: p })),
    'inches',
  );
}
