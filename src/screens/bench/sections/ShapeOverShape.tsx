import type { ShapeFit } from '../../../core/adjust/index.ts';
import { type PieceChanges, shownPlaces } from '../../../core/check/index.ts';
import type { Place } from '../../../core/cloth/index.ts';
import { outlineOf } from '../../../core/geometry/index.ts';
import type { Sheet } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { pointLabel } from '../../model/words.ts';
import { type Flat, fitPlaces } from '../../parts/drawing/project.ts';
import { StateMark } from '../../parts/marks.tsx';
import { boundText, namesOf } from '../engine-words.ts';
import { engineView } from '../state/engine-view.ts';

const FRAME = { width: 420, height: 300, margin: 30 };
/** mm; closer than this two shapes are the same to a tape. */
const WORTH_SAYING = 3;
const MOST = 8;

interface Props {
  fit: ShapeFit;
  changes: PieceChanges;
  job: OpenJob;
}

/** Two shapes laid over each other, and the points that lie furthest apart. */
export function ShapeOverShape({ fit, changes, job }: Props) {
  const words = sayBench().compare;
  const { sheet } = job;
  const { piece, without } = changes;
  const now = shownPlaces(engineView(job, piece));
  const projection = fitPlaces([...now.values(), ...fit.laid.values()], 'plan', FRAME);
  const round = outlineOf(sheet, piece)?.points ?? [];
  const line = (places: ReadonlyMap<string, Place>): Flat[] =>
    round.flatMap((id) => {
      const place = places.get(id);
      return place ? [projection.to(place)] : [];
    });
  const path = (flats: readonly Flat[]): string => flats.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  return (
    <>
      <p class="small">{words.shapeHow}</p>
      {without.before.length > 0 && <p>{words.withoutThen(namesOf(without.before, sheet))}</p>}
      {without.after.length > 0 && <p>{words.without(namesOf(without.after, sheet))}</p>}
      {changes.bent && <StateMark mark="stop">{words.bent}</StateMark>}
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
      {!changes.bent && <HowFar fit={fit} sheet={sheet} />}
    </>
  );
}

function HowFar({ fit, sheet }: { fit: ShapeFit; sheet: Sheet }) {
  const words = sayBench().compare;
  const far = [...fit.gaps].filter(([, gap]) => gap >= WORTH_SAYING).sort((a, b) => b[1] - a[1]);
  return (
    <>
      <p>{words.rms(boundText(fit.rms, sheet))}</p>
      <ul>
        {far.slice(0, MOST).map(([id, gap]) => (
          <li key={id}>{words.further(pointLabel(sheet, id), boundText(gap, sheet))}</li>
        ))}
      </ul>
    </>
  );
}
