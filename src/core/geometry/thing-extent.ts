import type { Sheet } from '../job/index.ts';

/**
 * How far a thing in the way reaches from its middle, mm. least: in every direction for certain, whichever way round it
 * stands; most: at the furthest. clearance: what must stay free round it. 0 where nobody took it.
 */
export interface ThingExtent {
  readonly least: number;
  readonly most: number;
  readonly clearance: number;
}

export function extentOf({ readings }: Pick<Sheet, 'readings'>, thing: string): ThingExtent {
  const size = (of: string): number[] =>
    readings.flatMap((reading) =>
      reading.kind === 'size' && reading.obstruction === thing && reading.of === of && (reading.value ?? 0) > 0
        ? [reading.value ?? 0]
        : [],
    );
  const reaches = [...size('length'), ...size('width'), ...size('diameter'), ...size('radius').map((mm) => 2 * mm)];
  return {
    least: Math.min(...(reaches.length > 0 ? reaches : [0])) / 2,
    most: Math.max(0, ...reaches) / 2,
    clearance: Math.max(0, ...size('clearance')),
  };
}
