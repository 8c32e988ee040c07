import { type Context, isMeasured, type Measured } from './context.ts';

/** The straight distance between two points; where several readings give it, their mean. Millimetres. */
export interface Straight {
  readonly ends: readonly [string, string];
  readonly readings: readonly Measured[];
  readonly value: number;
  readonly sigma: number;
}

/** Points as places in a list, and what was taped straight between them. */
interface Net {
  /** For each point, the later points it is taped to. */
  readonly later: readonly ReadonlyMap<number, Straight>[];
  between(a: string, b: string): Straight | undefined;
}

const nets = new WeakMap<Context, Net>();

/** Built once for a context. A length of zero or less is another rule's matter and takes no part. */
export function netOf(context: Context): Net {
  const known = nets.get(context);
  if (known) return known;
  const net = build(context);
  nets.set(context, net);
  return net;
}

function build(context: Context): Net {
  const places = new Map<string, number>();
  const later: Map<number, Straight>[] = [];
  const placeOf = (point: string): number => {
    const place = places.get(point) ?? places.size;
    if (place === places.size) {
      places.set(point, place);
      later.push(new Map());
    }
    return place;
  };
  for (const reading of context.sheet.readings) {
    const [from, to] = reading.points;
    if (reading.kind !== 'straight' || !isMeasured(reading) || reading.value <= 0) continue;
    if (from === undefined || to === undefined || from === to) continue;
    const [low, high] = [placeOf(from), placeOf(to)].sort((a, b) => a - b) as [number, number];
    const before = later[low]?.get(high);
    later[low]?.set(high, joined([from, to], [...(before?.readings ?? []), reading], context));
  }
  return {
    later,
    between(a, b) {
      const [low, high] = [places.get(a) ?? -1, places.get(b) ?? -1].sort((p, q) => p - q) as [number, number];
      return later[low]?.get(high);
    },
  };
}

function joined(ends: readonly [string, string], readings: readonly Measured[], context: Context): Straight {
  const value = readings.reduce((sum, reading) => sum + reading.value, 0) / readings.length;
  return { ends, readings, value, sigma: Math.max(...readings.map((reading) => context.sigma(reading))) };
}

/** Three sides, each between two of the same three points. */
export type Triangle = readonly [Straight, Straight, Straight];

/** Every three points with all three distances; found along the net, not by trying all points. */
export function trianglesOf(context: Context): Triangle[] {
  const { later } = netOf(context);
  return later.flatMap((fromA) =>
    [...fromA].flatMap(([b, ab]) =>
      [...(later[b] ?? [])].flatMap(([c, bc]): Triangle[] => {
        const ac = fromA.get(c);
        return ac ? [[ab, bc, ac]] : [];
      }),
    ),
  );
}

/** The six distances among four points. */
export type Six = Readonly<Record<'ab' | 'ac' | 'ad' | 'bc' | 'bd' | 'cd', Straight>>;

/** Every four points with all six distances. */
export function foursOf(context: Context): Six[] {
  const { later } = netOf(context);
  const fours: Six[] = [];
  for (const fromA of later) {
    for (const [b, ab] of fromA) {
      const fromB = later[b];
      const shared = [...(fromB ?? [])].filter(([c]) => fromA.has(c));
      for (const [c, bc] of shared) {
        const ac = fromA.get(c);
        for (const [d, bd] of shared) {
          const [ad, cd] = [fromA.get(d), later[c]?.get(d)];
          if (ac && ad && cd) fours.push({ ab, ac, ad, bc, bd, cd });
        }
      }
    }
  }
  return fours;
}

export const readingsOf = (straights: readonly Straight[]): Measured[] =>
  straights.flatMap((straight) => straight.readings);
