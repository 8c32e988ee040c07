import type { Fastener, FastenerType, SheetReading, SheetRun } from '../job/index.ts';
import { type Context, isMeasured, type Measured } from './context.ts';

/** A place along a run; fastener: what sits there, null for a place that was only measured. */
export interface Station {
  readonly reading: SheetReading;
  readonly fastener: Fastener | null;
}

/** The stations of a run in order; those measured on their own before those of fasteners, as the sheet lists them. */
export function stationsOf(context: Context, run: SheetRun): Station[] {
  return run.stations.flatMap((id) => {
    const reading = context.readings.get(id);
    return reading ? [{ reading, fastener: context.fasteners.get(id) ?? null }] : [];
  });
}

/** Neighbours on a run. Places measured on their own and fasteners are counted apart: nothing says how they interleave. */
export function neighbours(stations: readonly Station[]): (readonly [Station, Station])[] {
  return stations.flatMap((station, index) => {
    const before = stations[index - 1];
    const sameSort = before && (before.fastener === null) === (station.fastener === null);
    return sameSort ? [[before, station] as const] : [];
  });
}

/** The measured full length of a run. */
export function wholeOf(context: Context, run: SheetRun): Measured | null {
  const whole = context.readings.get(run.whole ?? '');
  return isMeasured(whole) && whole.value > 0 ? whole : null;
}

/** How far a run's stations reach from its first point, mm. */
export interface Reach {
  readonly value: number;
  readonly sigma: number;
  readonly readings: readonly Measured[];
}

/** Null until every station is measured: nothing can be told from half a run. */
export function reachOf(context: Context, run: SheetRun): Reach | null {
  const readings = stationsOf(context, run).map((station) => station.reading);
  const measured = readings.filter(isMeasured);
  if (measured.length === 0 || measured.length < readings.length) return null;
  if (run.manner === 'cumulative') {
    const last = measured.reduce((most, reading) => (reading.value > most.value ? reading : most));
    return { value: last.value, sigma: context.sigma(last), readings: [last] };
  }
  return {
    value: measured.reduce((sum, reading) => sum + reading.value, 0),
    sigma: Math.hypot(...measured.map((reading) => context.sigma(reading))),
    readings: measured,
  };
}

/** What is set one beside the next; an end of a track, zip or strap stands alone. */
const SPACED: ReadonlySet<FastenerType> = new Set(['snap', 'turn-button', 'eyelet', 'hook']);

export function isSpaced(run: SheetRun, { fastener }: Station): boolean {
  const type = fastener?.type ?? run.type;
  return type !== null && SPACED.has(type);
}

/** What is left of a run after its last station, mm; null where that cannot be told. */
export function restOf(context: Context, run: SheetRun): (Reach & { readonly whole: Measured }) | null {
  const [whole, reach] = [wholeOf(context, run), reachOf(context, run)];
  if (!whole || !reach) return null;
  return {
    whole,
    value: whole.value - reach.value,
    sigma: Math.hypot(context.sigma(whole), reach.sigma),
    readings: reach.readings,
  };
}
