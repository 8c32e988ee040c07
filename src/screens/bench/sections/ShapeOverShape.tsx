import type { ShapeFit } from '../../../core/adjust/index.ts';
import type { Place } from '../../../core/cloth/index.ts';
import { outlineOf } from '../../../core/geometry/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { adjustedPlaces } from '../../model/sureness.ts';
import { pointLabel } from '../../model/words.ts';
import { type Flat, fitPlaces } from '../../parts/drawing/project.ts';
import { boundText } from '../engine-words.ts';

const FRAME = { width: 420, height: 300, margin: 30 };
/** mm; closer than this two shapes are the same to a tape. */
const WORTH_SAYING = 3;
const MOST = 8;

/** Two shapes laid over each other, and the points that lie furthest apart. */
export function ShapeOverShape({ fit, job, piece }: { fit: ShapeFit; job: OpenJob; piece: string }) {
  const words = sayBench().compare;
  const { sheet } = job;
  const now = adjustedPlaces(job.pieces.get(piece));
  const projection = fitPlaces([...now.values(), ...fit.laid.values()], 'plan', FRAME);
  const round = outlineOf(sheet, piece)?.points ?? [];
  const line = (places: ReadonlyMap<string, Place>): Flat[] =>
    round.flatMap((id) => {
      const place = places.get(id);
      return place ? [projection.to(place)] : [];
    });
  const path = (flats: readonly Flat[]): string => flats.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  const far = [...fit.gaps].filter(([, gap]) => gap >= WORTH_SAYING).sort((a, b) => b[1] - a[1]);
  return (
    <>
      <p class="small">{words.shapeHow}</p>
      <svg class="drawing" viewBox={`0 0 ${FRAME.width} ${FRAME.height}`} role="img" aria-label={words.shape}>
        <polygon class="outline" points={path(line(fit.laid))} />
        <polygon class="edge" points={path(line(now))} />
        {[...now].map(([id, place]) => {
          const [x, y] = projection.to(place);
          return (
            <text key={id} class="name" x={x + 6} y={y - 6}>
              {pointLabel(sheet, id)}
            </text>
          );
        })}
      </svg>
      <p>{words.rms(boundText(fit.rms, sheet))}</p>
      <ul>
        {far.slice(0, MOST).map(([id, gap]) => (
          <li key={id}>{words.further(pointLabel(sheet, id), boundText(gap, sheet))}</li>
        ))}
      </ul>
    </>
  );
}
