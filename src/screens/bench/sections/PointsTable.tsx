import type { Place } from '../../../core/cloth/index.ts';
import { axesOf, planeOf } from '../../../core/geometry/index.ts';
import type { Sheet } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { StateMark } from '../../parts/marks.tsx';
import { placesOf } from '../drawing/scene.ts';
import { boundText, namesOf, placeText, withoutNames } from '../engine-words.ts';
import { labelsOf, readingTitle } from '../names.ts';
import { type EngineView, floatingOf, isConfirmed, type PointResult, type Solution } from '../state/engine-view.ts';
import type { Lit } from '../state/lit.ts';
import { isSelected, toggle } from '../state/selection.ts';
import { useWide } from '../use-wide.ts';

interface Props {
  job: OpenJob;
  piece: string;
  engine: EngineView;
  solution: Solution;
  lit: Lit;
}

/** Where each point lies, how sure that is, and what slip could move it without being seen. */
export function PointsTable({ job, piece, engine, solution, lit }: Props) {
  const words = sayBench().engine.sure;
  const wide = useWide();
  const places = placesOf(job.sheet, piece, solution);
  const axes = axesOf(solution.dimension === 2 ? planeOf([...places.values()]) : null);
  const { points } = solution;
  if (points.length === 0) return null;
  const open = openPoints(engine);
  const isBent = ({ state }: PointResult): boolean => engine.bent && state === 'fixed';
  const common = sameForAll(points.map((point) => uncheckedFor(point, engine)));
  return (
    <>
      {common && <p>{words.unseenAll(namesOf(common, job.sheet))}</p>}
      <table class="bench-table bench-points">
        <caption class="sr-only">{words.caption(withoutNames(engine, job.sheet))}</caption>
        <thead>
          <tr>
            <th scope="col">{words.point}</th>
            {wide ? (
              axes.map((axis) => (
                <th key={axis} scope="col">
                  {words[axis]}
                </th>
              ))
            ) : (
              <th scope="col">{words.place}</th>
            )}
            <th scope="col">{words.within}</th>
          </tr>
        </thead>
        <tbody>
          {points.map((point) => (
            <PointRow
              key={point.id}
              point={point}
              place={open.has(point.id) || isBent(point) ? undefined : places.get(point.id)}
              bent={isBent(point)}
              axes={axes}
              wide={wide}
              lit={lit.points.has(point.id)}
              sheet={job.sheet}
              loose={isLoose(job, point.id)}
              unseen={unseenText(point, engine, solution, common ? [] : uncheckedFor(point, engine), job.sheet)}
            />
          ))}
        </tbody>
      </table>
      <p class="small quiet">{words.frame(axes)}</p>
    </>
  );
}

const isLoose = (job: OpenJob, point: string): boolean =>
  job.findings.some(({ rule, subjects }) => rule === 'point-loose' && subjects.some(({ id }) => id === point));

/** Points that float, or lie elsewhere in another shape that fits as well. */
function openPoints({ judgement }: EngineView): ReadonlySet<string> {
  const { adjustment } = judgement;
  const moved = adjustment.state === 'two-shapes' ? adjustment.shapes.flatMap((shape) => shape.moved) : [];
  return new Set([...floatingOf(judgement).map(({ point }) => point), ...moved]);
}

/** Readings that nothing checks, nobody read twice, and a point hangs on. */
const uncheckedFor = (point: PointResult, { judgement }: EngineView): string[] =>
  point.hangsOnUnchecked.filter((id) => !isConfirmed(judgement, id));

/** A list that is the same for every point is said once; null where they differ or are empty. */
function sameForAll(lists: readonly (readonly string[])[]): readonly string[] | null {
  const [first] = lists;
  if (!first || first.length === 0 || lists.length < 2) return null;
  return lists.every((list) => list.join() === first.join()) ? first : null;
}

type Axis = 'x' | 'y' | 'z';

interface RowProps {
  point: PointResult;
  /** Undefined while the readings do not fix it. */
  place: Place | undefined;
  /** Contradictions bend it: its figures are not to be used. */
  bent: boolean;
  axes: readonly Axis[];
  wide: boolean;
  lit: boolean;
  sheet: Sheet;
  loose: boolean;
  unseen: string | null;
}

function PointRow({ point, place, bent, axes, wide, lit, sheet, loose, unseen }: RowProps) {
  const along = (axis: Axis): string => (place ? placeText(place['xyz'.indexOf(axis)] ?? 0, sheet) : '');
  return (
    <>
      <tr class={lit ? 'lit' : ''} data-row={`point:${point.id}`}>
        <th scope="row">
          <button
            type="button"
            class="bench-name-button"
            aria-pressed={isSelected('point', point.id)}
            onClick={() => toggle('point', point.id)}
          >
            {labelsOf(sheet, [point.id])}
          </button>
        </th>
        {wide ? (
          axes.map((axis) => (
            <td key={axis} class="number">
              {along(axis)}
            </td>
          ))
        ) : (
          <td>
            <div class="bench-place">
              {place &&
                axes.map((axis) => (
                  <span key={axis}>
                    <span class="quiet">{axis}</span> <span class="number">{along(axis)}</span>
                  </span>
                ))}
            </div>
          </td>
        )}
        <td class="number">
          <Within point={point} bent={bent} open={place === undefined} sheet={sheet} loose={loose} />
        </td>
      </tr>
      {unseen !== null && (
        <tr class={`bench-doing ${lit ? 'lit' : ''}`}>
          <td class="small" colSpan={wide ? axes.length + 2 : 3}>
            {unseen}
          </td>
        </tr>
      )}
    </>
  );
}

type WithinProps = Pick<RowProps, 'point' | 'bent' | 'sheet' | 'loose'> & { open: boolean };

function Within({ point, bent, open, sheet, loose }: WithinProps) {
  const words = sayBench().engine.sure;
  if (bent) return <StateMark mark="stop">{words.notUsed}</StateMark>;
  if (open) return <StateMark mark="stop">{words.floats}</StateMark>;
  if (point.state === 'known') return <span>{words.known}</span>;
  if (point.relative95 === null) return null;
  const text = boundText(point.relative95, sheet);
  return loose ? <StateMark mark="stop">{text}</StateMark> : <span>{text}</span>;
}

/** What could move a point without anybody noticing; readings that were read twice and agree are not told of. */
function unseenText(
  { worstUnseen }: PointResult,
  { judgement, bent }: EngineView,
  solution: Solution,
  unchecked: readonly string[],
  sheet: Sheet,
): string | null {
  const words = sayBench().engine.sure;
  const said = unchecked.length > 0 ? [words.unseenAny(namesOf(unchecked, sheet))] : [];
  const size = solution.readings.find(({ id }) => id === worstUnseen?.reading)?.minimalDetectableBias;
  if (worstUnseen && size && !bent && !isConfirmed(judgement, worstUnseen.reading)) {
    const name = readingTitle(sheet, worstUnseen.reading);
    said.push(words.unseen(name, boundText(size, sheet), boundText(worstUnseen.shift, sheet)));
  }
  return said.length > 0 ? said.join(' ') : null;
}
