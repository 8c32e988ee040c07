import type { SpotName } from '../../../core/cloth/index.ts';
import { distanceToChain, outlineOf } from '../../../core/geometry/index.ts';
import type { Sheet } from '../../../core/job/index.ts';
import { type Flat, path } from '../../parts/drawing/project.ts';
import type { Measuring } from '../state/measuring.ts';
import type { Scene } from './scene.ts';

/** px; a tap this near to something means it. */
const NEAR = 34;

interface Props {
  scene: Scene;
  sheet: Sheet;
  piece: string;
  now: Measuring;
}

/** The way that is measured, as a band under lines and values. */
export function DrawnWay({ scene, sheet, piece, now }: Props) {
  return (
    <g class="bench-measure" data-testid="measured">
      {waysOf(scene, sheet, piece, now).map((way) => (
        <polyline key={path(way)} points={path(way)} />
      ))}
    </g>
  );
}

/** The places it is measured from, over everything else. */
export function DrawnEnds({ scene, now }: Pick<Props, 'scene' | 'now'>) {
  const spots = now.spots.flatMap((spot) => (spot ? (placeOf(scene, spot) ?? []) : []));
  return (
    <g class="bench-measure">
      {spots.map((at) => (
        <circle key={path([at])} cx={at[0]} cy={at[1]} r={11} />
      ))}
    </g>
  );
}

function waysOf(scene: Scene, sheet: Sheet, piece: string, now: Measuring): Flat[][] {
  if (now.kind === 'edge') return scene.edges.flatMap(({ run, along }) => (run.id === now.run ? [along] : []));
  if (now.kind === 'area') {
    const points = outlineOf(sheet, piece)?.points ?? [];
    const round = points.flatMap((id) => placeOf(scene, { on: 'point', id }) ?? []);
    return round.length < points.length ? [] : [[...round, ...round.slice(0, 1)]];
  }
  const spots = now.spots.flatMap((spot) => (spot ? (placeOf(scene, spot) ?? []) : []));
  return spots.length > 1 ? [spots] : [];
}

const placeOf = (scene: Scene, { on, id }: SpotName): [Flat] | null => {
  const at =
    on === 'point'
      ? scene.spots.find(({ point }) => point.id === id)?.at
      : scene.stations.find(({ station }) => station.reading === id)?.at;
  return at ? [at] : null;
};

/** What a tap means while measuring: the nearest point or fastener, however lines and names lie over it. */
export function nearestSpot(scene: Scene, at: Flat): SpotName | null {
  return nearest<SpotName>([
    ...scene.spots.map((spot) => ({ what: { on: 'point' as const, id: spot.point.id }, off: apart(spot.at, at) })),
    ...scene.stations.map(({ station, at: there }) => ({
      what: { on: 'station' as const, id: station.reading },
      off: apart(there, at),
    })),
  ]);
}

export const nearestRun = (scene: Scene, at: Flat): string | null =>
  nearest(scene.edges.map(({ run, along }) => ({ what: run.id, off: distanceToChain(at, along) })));

function nearest<T>(list: readonly { what: T; off: number }[]): T | null {
  const first = list.reduce<{ what: T | null; off: number }>((best, one) => (one.off < best.off ? one : best), {
    what: null,
    off: NEAR,
  });
  return first.what;
}

const apart = (a: Flat, b: Flat): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
