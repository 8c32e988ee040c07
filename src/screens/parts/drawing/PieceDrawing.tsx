import { useMemo } from 'preact/hooks';
import type { PieceJudgement } from '../../../core/check/index.ts';
import { type PieceSketch, sketchPiece } from '../../../core/cloth/index.ts';
import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { shownAsExpected } from '../../model/contradicted.ts';
import { pieceName } from '../../model/job-words.ts';
import { openJob } from '../../model/opened.ts';
import { hidden } from '../../model/second-looks.ts';
import { adjustedPlaces, surenessOf } from '../../model/sureness.ts';
import { lengthText, pointLabel, readingName, wordsOfPiece } from '../../model/words.ts';
import { AskedLine } from './AskedLine.tsx';
import { type Drawn, EdgeMarks, ThingsInTheWay } from './EdgeMarks.tsx';
import { faceOfPiece, seenFrom } from './face.ts';
import { type Flat, fitDrawing, ground, nameSpot, type Projection, path, type View } from './project.ts';

interface Props {
  sheet: Sheet;
  piece: string;
  width: number;
  height: number;
  /** The reading that is being asked for: thick and orange, its hook end a dot, its reading end an arrow. */
  asked?: SheetReading | null;
  /** Points that are being asked for without a reading (photo and run steps). */
  askedPoints?: readonly string[];
  /** The part of an edge that is being asked for, by its points: in orange. */
  askedEdge?: readonly string[];
  /** Readings that a finding speaks of. */
  bad?: ReadonlySet<string>;
  /** Beside their lines: all, those of a piece with few, none. */
  values?: 'all' | 'few' | 'none';
  /** What the engine makes of the piece so far: places to draw once it has the shape, and how sure each point is. */
  judgement?: PieceJudgement | undefined;
}

/** With more lines than this their values would cover each other on a phone. */
const FEW = 8;

/** The piece to scale: what is known so far by the readings, the rest as the guide expects it. */
export function PieceDrawing(props: Props) {
  const { sheet, piece, width, height, asked } = props;
  const { judgement } = props;
  // A picture of another sheet, on paper say, is not of the job on the screen.
  const asExpected = shownAsExpected.value.has(piece) && openJob.value?.sheet === sheet;
  const drawn = useMemo(
    () => (asExpected ? sketchPiece(unread(sheet), piece) : sketchPiece(sheet, piece, adjustedPlaces(judgement))),
    [sheet, piece, judgement, asExpected],
  );
  const face = faceOfPiece(sheet, piece);
  // What is over or under a piece that lies does not show from above.
  const view: View = asked?.kind === 'height' && face === 'plan' ? 'slant' : face;
  const projection = fitDrawing(drawn, view, width, height);
  const straights = sheet.readings.filter((r) => r.piece === piece && r.kind === 'straight' && r.value !== null);
  const values = placeValues(straights, drawn, projection, sheet);
  const showValues = props.values === 'all' || (props.values !== 'none' && straights.length <= FEW);
  return (
    <svg class="drawing" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={describe(props)}>
      <Outline sheet={sheet} piece={piece} drawn={drawn} projection={projection} />
      {view === 'slant' && <Uprights drawn={drawn} projection={projection} />}
      {straights.map((reading) => (
        <TakenLine
          key={reading.id}
          reading={reading}
          drawn={drawn}
          projection={projection}
          look={lookOf(reading, props)}
          value={
            showValues && reading.id !== asked?.id && !hidden.value.has(reading.id)
              ? (values.get(reading.id) ?? null)
              : null
          }
        />
      ))}
      {props.askedEdge && <polyline class="asked" points={path(ends(props.askedEdge, drawn, projection))} />}
      {asked && <AskedLine reading={asked} drawn={drawn} projection={projection} />}
      <EdgeMarks sheet={sheet} piece={piece} drawn={drawn} projection={projection} />
      <ThingsInTheWay sheet={sheet} piece={piece} drawn={drawn} projection={projection} />
      <Points {...props} drawn={drawn} projection={projection} />
      <text x={width / 2} y={14} text-anchor="middle" class="value">
        {seenFrom(view, wordsOfPiece(sheet, piece))}
      </text>
    </svg>
  );
}

const unread = (sheet: Sheet): Sheet => ({
  ...sheet,
  readings: sheet.readings.map((reading) => ({ ...reading, value: null })),
});

function describe({ sheet, asked, piece }: Props): string {
  const kind = sheet.pieces.find((p) => p.id === piece);
  return asked ? say().dock.drawingAsks(readingName(asked, sheet)) : say().dock.drawingOf(kind ? pieceName(kind) : '');
}

/** What was taped from or to the asked points stands out; the rest stays faint, or thirty lines would hide the one. */
function lookOf(reading: SheetReading, { bad, asked }: Props): string {
  if (bad?.has(reading.id)) return 'taken bad';
  return !asked || reading.points.some((id) => asked.points.includes(id)) ? 'taken' : 'taken faint';
}

function ends(ids: readonly string[], drawn: PieceSketch, projection: Projection): Flat[] {
  return ids.flatMap((id) => {
    const place = drawn.places.get(id);
    return place ? [projection.to(place)] : [];
  });
}

/** What the guide expects the piece to look like: its boxes closed, its runs open. */
function Outline(props: Pick<Props, 'sheet' | 'piece'> & Drawn) {
  const { sheet, piece, drawn, projection } = props;
  const boxes = sheet.pieces.find((p) => p.id === piece)?.boxes ?? [];
  const runs = sheet.runs.filter((run) => run.piece === piece);
  return (
    <>
      {boxes.map((box) => (
        <polygon key={box.join()} class="outline" points={path(ends(box, drawn, projection))} />
      ))}
      {runs.map((run) => (
        <polyline key={run.id} class="edge" points={path(ends(run.points, drawn, projection))} />
      ))}
    </>
  );
}

function Uprights({ drawn, projection }: Drawn) {
  const places = [...drawn.places.values()];
  return (
    <>
      {places.map((place) => {
        const [a, b] = [projection.to(place), projection.to(ground(place))];
        return <line key={path([a])} class="outline" x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />;
      })}
    </>
  );
}

interface PlacedValue {
  text: string;
  at: Flat;
}

const SPOTS = [0.5, 0.3, 0.7, 0.2, 0.8, 0.4, 0.6];
/** Room one character and one line of a value take, in the drawing's own units. */
const LETTER = 7.5;
const LINE = 15;

/** Each value somewhere along its line where it covers no other; in the middle where there is no such place. */
function placeValues(readings: readonly SheetReading[], drawn: PieceSketch, projection: Projection, sheet: Sheet) {
  const placed = new Map<string, PlacedValue>();
  for (const reading of readings) {
    const [a, b] = ends(reading.points, drawn, projection);
    if (!a || !b) continue;
    const text = lengthText(reading.value ?? 0, sheet);
    const spots = SPOTS.map((s): Flat => [a[0] + (b[0] - a[0]) * s, a[1] + (b[1] - a[1]) * s]);
    const free = spots.find((spot) =>
      [...placed.values()].every(
        (other) =>
          Math.abs(other.at[1] - spot[1]) > LINE ||
          Math.abs(other.at[0] - spot[0]) > ((other.text.length + text.length) / 2) * LETTER,
      ),
    );
    placed.set(reading.id, { text, at: free ?? [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] });
  }
  return placed;
}

function TakenLine(props: Drawn & { reading: SheetReading; look: string; value: PlacedValue | null }) {
  const [a, b] = ends(props.reading.points, props.drawn, props.projection);
  if (!a || !b) return null;
  return (
    <g>
      <line class={props.look} x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />
      {props.value !== null && (
        <text class="value" x={props.value.at[0]} y={props.value.at[1] + 4} text-anchor="middle">
          {props.value.text}
        </text>
      )}
    </g>
  );
}

/** A disc that shrinks as its point becomes sure; hollow and wide while the readings let it float. */
function discOf(sure: number | 'floats' | null, measured: boolean): { look: string; radius: number } {
  if (sure === 'floats') return { look: 'point floats', radius: 9 };
  if (sure === null) return { look: measured ? 'point sure' : 'point', radius: 4 };
  return { look: 'point sure', radius: Math.min(11, 2.5 + sure / 2) };
}

function Points({ sheet, piece, drawn, projection, asked, askedPoints, judgement }: Props & Drawn) {
  const own = sheet.points.filter((point) => point.pieces.includes(piece));
  const flat = ends(
    own.map((p) => p.id),
    drawn,
    projection,
  );
  const middle: Flat = [
    flat.reduce((sum, [x]) => sum + x, 0) / Math.max(1, flat.length),
    flat.reduce((sum, [, y]) => sum + y, 0) / Math.max(1, flat.length),
  ];
  const wanted = new Set([...(asked?.points ?? []), ...(askedPoints ?? [])]);
  return (
    <>
      {own.map((point, i) => {
        const at = flat[i];
        if (!at) return null;
        // Marks are named on the inside, edge points on the outside, so that neighbours do not cover each other.
        const spot = nameSpot(at, middle, point.role === 'mark' ? -16 : 16);
        const here = wanted.has(point.id);
        const disc = discOf(surenessOf(judgement, point.id), drawn.measured.has(point.id));
        return (
          <g key={point.id}>
            {!(here && asked) && (
              <circle class={here ? 'asked-end' : disc.look} cx={at[0]} cy={at[1]} r={here ? 8 : disc.radius} />
            )}
            <text class={here ? 'name asked-label' : 'name'} x={spot.x} y={spot.y} text-anchor={spot.anchor}>
              {pointLabel(sheet, point.id)}
            </text>
          </g>
        );
      })}
    </>
  );
}
