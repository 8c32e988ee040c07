import type { Place } from '../../../core/cloth/index.ts';
import { axesOf, planeOf } from '../../../core/geometry/index.ts';
import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { isolated } from '../../../text/isolated.ts';
import { saySheet } from '../../../text/sheet.ts';
import { readingName } from '../../model/words.ts';
import { StateMark } from '../../parts/marks.tsx';
import { placesOf } from '../drawing/scene.ts';
import { boundText, placeText, withoutNames } from '../engine-words.ts';
import { labelsOf, readingValue } from '../names.ts';
import { checkOf, residualOf } from '../sections/ReadingCheck.tsx';
import { type EngineView, engineView, type PointResult } from '../state/engine-view.ts';
import type { SheetContent } from './sheet-content.ts';

export function ReadingsHead() {
  const { columns } = saySheet();
  return (
    <div class="sheet-reading head">
      <span>{columns.reading}</span>
      <span>{columns.takes}</span>
      <span>{columns.value}</span>
      <span>{columns.residual}</span>
      <span>{columns.check}</span>
    </div>
  );
}

interface ReadingProps {
  reading: SheetReading;
  sheet: Sheet;
  engine: EngineView | null;
}

/** A reading: what the tape said each time, what counts, how far the shape is from it, and what would show a slip in it. */
export function ReadingLine({ reading, sheet, engine }: ReadingProps) {
  const words = sayBench().readings;
  const check = engine && checkOf({ reading, engine });
  const reason = reading.answer?.reason ?? '';
  const left = engine?.without.includes(reading.id) && <strong>{saySheet().leftOff}</strong>;
  return (
    <div class="sheet-reading">
      <strong>{readingName(reading, sheet)}</strong>
      <span>
        {reading.takes.map(({ id, text, struck }, i) => (
          <span key={id}>
            {i > 0 && '; '}
            {struck ? <s>{text}</s> : text}
            {struck && ` (${isolated(struck.reason)})`}
          </span>
        ))}
        {reading.supposed && ` ${saySheet().supposed}`}
      </span>
      <strong>{reading.value === null ? words.states[reading.state] : readingValue(reading, sheet)}</strong>
      <span>{(engine && residualOf({ reading, engine }, sheet)) ?? '–'}</span>
      <span>{reason || left || (check?.doubt ? <strong>{check.text}</strong> : (check?.text ?? ''))}</span>
    </div>
  );
}

/** The points of the shape as it is shown, with their axes; of a bent one only what was given. Null while there is none. */
export function pointsOf({ job, piece }: SheetContent) {
  const engine = engineView(job, piece.id);
  const solution = engine?.shown;
  if (!solution) return null;
  const places: ReadonlyMap<string, Place> = placesOf(job.sheet, piece.id, solution);
  return {
    points: engine.bent ? solution.points.filter(({ state }) => state === 'known') : solution.points,
    places,
    axes: axesOf(solution.dimension === 2 ? planeOf([...places.values()]) : null),
  };
}

/** Which shape the figures are of, where that is not the one of every reading; nothing where they are of a bent one. */
export function ShapeNote({ content: { job, piece } }: { content: SheetContent }) {
  const engine = engineView(job, piece.id);
  const words = saySheet();
  if (engine?.bent)
    return (
      <p class="sheet-line">
        <StateMark mark="stop">{words.bent}</StateMark>
      </p>
    );
  return <p class="sheet-line">{engine && words.without(withoutNames(engine, job.sheet))}</p>;
}

/** The shape the figures are of is not that of every reading. */
export const isShapeApart = ({ job, piece }: SheetContent): boolean => {
  const engine = engineView(job, piece.id);
  return engine !== null && (engine.bent || engine.without.length > 0);
};

export function PointsHead({ content }: { content: SheetContent }) {
  const words = sayBench().engine.sure;
  const axes = pointsOf(content)?.axes ?? [];
  return (
    <div class="sheet-point head">
      <span>{words.point}</span>
      {axes.map((axis) => (
        <span key={axis}>{words[axis]}</span>
      ))}
      <span>{words.within}</span>
      <small>{words.frame(axes)}</small>
    </div>
  );
}

export function PointLine({ point, content }: { point: PointResult; content: SheetContent }) {
  const words = sayBench().engine.sure;
  const { sheet } = content.job;
  const known = pointsOf(content);
  const place = known?.places.get(point.id);
  const floats = point.state === 'floating' || !place;
  const within =
    point.state === 'known' ? words.known : point.relative95 === null ? '' : boundText(point.relative95, sheet);
  return (
    <div class="sheet-point">
      <strong>{labelsOf(sheet, [point.id])}</strong>
      {(known?.axes ?? []).map((axis) => (
        <span key={axis}>{floats ? '–' : placeText(place['xyz'.indexOf(axis)] ?? 0, sheet)}</span>
      ))}
      <span>{floats ? words.floats : within}</span>
    </div>
  );
}
