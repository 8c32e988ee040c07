/**
 * Slips put into invented jobs. Written from what people do, not from the engine's list: some of these the engine has
 * no name for (a slack tape, a rail's far side, a wrong digit on a keypad two places off, a bent hook).
 */
import type { NetworkReading } from '../../src/core/adjust/index.ts';
import type { Random } from '../../src/core/adjust/random.ts';
import { distance, type Job, rounded, type Style, written } from './adjust-jobs.ts';

export interface Slipped {
  readonly kind: string;
  readonly id: string;
  /** What the reading would have been. */
  readonly right: number;
  readonly wrong: number;
}

const INCH = 25.4;
const pick = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
const sign = (random: Random): number => (random() < 0.5 ? -1 : 1);

/** Feet, whole inches and sixteenths as a person sees them. */
function parts(mm: number, style: Style) {
  const sixteenths = Math.round(mm / (INCH / 16));
  const inches = Math.floor(sixteenths / 16);
  return style === 'feet-inches' && inches >= 12
    ? { feet: Math.floor(inches / 12), inches: inches % 12, sixteenths: sixteenths % 16 }
    : { feet: 0, inches, sixteenths: sixteenths % 16 };
}

const whole = (p: { feet: number; inches: number; sixteenths: number }): number =>
  (12 * p.feet + p.inches + p.sixteenths / 16) * INCH;

/** Changes the digits of one of the numbers written. */
function onDigits(mm: number, style: Style, change: (digits: string) => string): number {
  if (style === 'metric') return Number(change(`${Math.round(mm)}`));
  const p = parts(mm, style);
  if (p.feet > 0 && change(`${p.inches}`) === `${p.inches}`) return whole({ ...p, feet: Number(change(`${p.feet}`)) });
  return whole({ ...p, inches: Number(change(`${p.inches}`)) });
}

type Misdeed = (mm: number, style: Style, random: Random) => number;

const MISDEEDS: Readonly<Record<string, Misdeed>> = {
  'a foot or 100 mm out': (mm, style, r) => mm + sign(r) * (style === 'metric' ? 100 : 12 * INCH),
  'ten inches or a metre out': (mm, style, r) => mm + sign(r) * (style === 'metric' ? 1000 : 10 * INCH),
  'digits swapped': (mm, style, r) =>
    onDigits(mm, style, (d) => {
      const i = Math.floor(r() * (d.length - 1));
      return d.length < 2 ? d : d.slice(0, i) + d[i + 1] + d[i] + d.slice(i + 2);
    }),
  '6 read as 9': (mm, style, r) => {
    let done = false;
    return onDigits(mm, style, (d) =>
      [...d]
        .map((c) => {
          if (done || !'69'.includes(c) || r() < 0.3) return c;
          done = true;
          return c === '6' ? '9' : '6';
        })
        .join(''),
    );
  },
  'one digit wrong': (mm, style, r) =>
    onDigits(mm, style, (d) => {
      const i = Math.floor(r() * d.length);
      return d.slice(0, i) + pick(r, [...'0123456789']) + d.slice(i + 1);
    }),
  'fraction the wrong way': (mm, style) => {
    if (style === 'metric') return mm;
    const p = parts(mm, style);
    return whole({ ...p, sixteenths: (16 - p.sixteenths) % 16 });
  },
  'fraction from the wrong inch': (mm, style, r) => (style === 'metric' ? mm + 10 * sign(r) : mm + sign(r) * INCH),
  'sixteenths called eighths': (mm, style) => {
    if (style === 'metric') return mm;
    const p = parts(mm, style);
    return whole({ ...p, sixteenths: p.sixteenths < 8 ? 2 * p.sixteenths : p.sixteenths });
  },
  'started at the 1 (or 10) mark': (mm, style) => mm + (style === 'metric' ? 100 : INCH),
  'tape case left out': (mm, _style, r) => mm - (68 + 18 * r()),
  'feet and inches as inches': (mm, style) => {
    if (style === 'metric') return mm;
    const p = parts(mm, 'feet-inches');
    return p.feet === 0 ? mm : (Number(`${p.feet}${p.inches}`) + p.sixteenths / 16) * INCH;
  },
  'decimal feet': (mm, style) => {
    if (style === 'metric') return mm;
    const p = parts(mm, 'feet-inches');
    return p.feet === 0 ? mm : Number(`${p.feet}.${p.inches}`) * 12 * INCH;
  },
  'unit mistaken': (mm, style, r) =>
    style === 'metric' ? pick(r, [mm / 10, mm * 10]) : pick(r, [mm / 2.54, mm * 2.54]),
  'slack or round something': (mm, _style, r) => mm + 8 + 250 * r() * r(),
  'edge for centre, inside for outside': (mm, _style, r) => mm + sign(r) * (8 + 40 * r()),
};

/** Slips of any size: no text can tell what should have been read, only the network, to some millimetres. */
export const SIZELESS: readonly string[] = [
  'tape case left out',
  'slack or round something',
  'edge for centre, inside for outside',
];

const NETWORK_MISDEEDS = ['another pair of points', 'port for starboard', 'two lines swapped'] as const;

export const MISDEED_NAMES: readonly string[] = [...Object.keys(MISDEEDS), ...NETWORK_MISDEEDS];

/** One slip of the given kind at a random reading, or undefined where it changes nothing there. */
export function misread(job: Job, kind: string, random: Random): Slipped[] | undefined {
  const { readings } = job.network;
  const reading = pick(random, readings);
  const right = job.sound.get(reading.id) ?? 0;
  const alone = MISDEEDS[kind];
  if (alone !== undefined) {
    const wrong = rounded(alone(right, job.style, random), job.style);
    return wrong > 0 && Math.abs(wrong - right) > 1 ? [{ kind, id: reading.id, right, wrong }] : undefined;
  }
  if (kind === 'two lines swapped') {
    const other = pick(
      random,
      readings.filter((r) => r.kind === reading.kind && r.id !== reading.id),
    );
    const theirs = job.sound.get(other.id) ?? 0;
    if (Math.abs(theirs - right) < 3) return undefined;
    return [
      { kind, id: reading.id, right, wrong: theirs },
      { kind, id: other.id, right: theirs, wrong: right },
    ];
  }
  const taken = elsewhere(job, reading, kind, random);
  if (taken === undefined) return undefined;
  const wrong = rounded(taken, job.style);
  return Math.abs(wrong - right) > 1 ? [{ kind, id: reading.id, right, wrong }] : undefined;
}

/** The tape was held to another point. */
function elsewhere(job: Job, reading: NetworkReading, kind: string, random: Random): number | undefined {
  const at = (id: string) => job.truth.get(id) ?? ([0, 0, 0] as const);
  const [a = '', b] = reading.points;
  const ids = job.network.points.map((p) => p.id);
  const other = (id: string): string | undefined => {
    if (kind !== 'port for starboard')
      return pick(
        random,
        ids.filter((q) => q !== a && q !== b),
      );
    const own = job.network.points.find((p) => p.id === id)?.sides ?? [];
    const wanted = own.includes('port') ? 'starboard' : own.includes('starboard') ? 'port' : undefined;
    if (wanted === undefined) return undefined;
    const twin = /^[PS]\d/.test(id) ? (id.startsWith('P') ? 'S' : 'P') + id.slice(1) : undefined;
    const across = job.network.points.filter((p) => p.sides?.includes(wanted) && p.id !== a && p.id !== b);
    return twin !== undefined && across.some((p) => p.id === twin) ? twin : across[0]?.id;
  };
  if (b === undefined) {
    const q = other(a);
    return q === undefined ? undefined : at(q)[2];
  }
  const first = random() < 0.5;
  const q = other(first ? a : b);
  return q === undefined ? undefined : first ? distance(at(q), at(b)) : distance(at(a), at(q));
}

/** The job with slips in it. */
export function withSlips(job: Job, slips: readonly Slipped[]): Job {
  const readings = job.network.readings.map((r) => {
    const slip = slips.find((s) => s.id === r.id);
    return slip === undefined ? r : { ...r, value: slip.wrong, text: written(slip.wrong, job.style) };
  });
  return { ...job, network: { ...job.network, readings } };
}
