import { type PieceSketch, type Place, stationsOn } from '../../../core/cloth/index.ts';
import { extentOf } from '../../../core/geometry/thing-extent.ts';
import type { Sheet } from '../../../core/job/index.ts';
import type { Projection } from './project.ts';

export interface Drawn {
  drawn: PieceSketch;
  projection: Projection;
}

interface Props extends Drawn {
  sheet: Sheet;
  piece: string;
}

/** A small mark at every fastener's place along its edge. */
export function EdgeMarks({ sheet, piece, drawn, projection }: Props) {
  return (
    <>
      {sheet.runs
        .filter((run) => run.piece === piece)
        .flatMap((run) => stationsOn(run, sheet, drawn.places))
        .map(({ reading, place }) => {
          const [x, y] = projection.to(place);
          return <path key={reading} class="edge-mark" d={`M${x - 3} ${y - 3}l6 6m0-6l-6 6`} />;
        })}
    </>
  );
}

/** Smaller than this nobody would see it, px. */
const LEAST = 5;

/** What is in the way of the cloth, as large as it is, and what must stay clear round it. */
export function ThingsInTheWay({ sheet, piece, drawn, projection }: Props) {
  return (
    <>
      {sheet.obstructions
        .filter((thing) => thing.piece === piece)
        .map((thing) => {
          const place: Place | undefined = drawn.places.get(thing.point ?? '');
          if (!place) return null;
          const [x, y] = projection.to(place);
          const { most, clearance } = extentOf(sheet, thing.id);
          const px = Math.max(LEAST, most * projection.scale);
          return (
            <g key={thing.id}>
              {clearance > 0 && <circle class="thing-clear" cx={x} cy={y} r={px + clearance * projection.scale} />}
              <circle class="thing" cx={x} cy={y} r={px} />
            </g>
          );
        })}
    </>
  );
}
