import type { PieceSketch } from '../../../core/cloth/index.ts';
import type { SheetReading } from '../../../core/job/index.ts';
import { askedPlaces } from './asked-places.ts';
import { type Flat, type Projection, path } from './project.ts';

interface Props {
  reading: SheetReading;
  drawn: PieceSketch;
  projection: Projection;
}

/** The dimension that is asked for, thick: its hook end a dot, its reading end an arrow; the string it starts from thin. */
export function AskedLine({ reading, drawn, projection }: Props) {
  const { string, along } = askedPlaces(reading, drawn.places);
  const line = along.map((place) => projection.to(place));
  const [a, b, before] = [line[0], line.at(-1), line.at(-2)];
  if (!a || !b || !before) return null;
  return (
    <g>
      {string.length > 0 && (
        <polyline class="asked-string" points={path(string.map((place) => projection.to(place)))} />
      )}
      <polyline class="asked" points={path(line)} />
      <circle class="asked-end" cx={a[0]} cy={a[1]} r={8} />
      <polygon
        class="asked-end"
        points="0,0 -18,-9 -18,9"
        transform={`translate(${b[0]} ${b[1]}) rotate(${turnOf(before, b)})`}
      />
    </g>
  );
}

const turnOf = (from: Flat, to: Flat): number => (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
