import { useMemo } from 'preact/hooks';
import type { Shape, SpotName } from '../../../core/cloth/index.ts';
import type { Sheet } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { pointLabel } from '../../model/words.ts';
import { StateMark } from '../../parts/marks.tsx';
import { runTitle } from '../names.ts';
import type { EngineView } from '../state/engine-view.ts';
import { type Measured, measuredOn } from '../state/measured.ts';
import {
  chooseRun,
  chooseSpot,
  type MeasureKind,
  type Measuring,
  measuring,
  startMeasuring,
} from '../state/measuring.ts';

interface Props {
  shape: Shape;
  engine: EngineView | null;
}

const KINDS: readonly MeasureKind[] = ['distance', 'edge', 'angle', 'area'];

/** Below the drawing: what is measured on it, by taps or by choosing here, how much that is, and how sure. */
export function MeasurePanel({ shape, engine }: Props) {
  const now = measuring.value;
  const found = useMemo(() => (now ? measuredOn(shape, now) : null), [shape, now]);
  const words = sayBench().measure;
  if (!now) return null;
  return (
    <fieldset class="bench-tools bench-measuring stack no-print" data-testid="measure">
      <legend class="sr-only">{words.what}</legend>
      <div class="row">
        {KINDS.map((kind) => (
          <button
            key={kind}
            type="button"
            class="button"
            aria-pressed={kind === now.kind}
            onClick={() => startMeasuring(kind)}
          >
            {words.kinds[kind]}
          </button>
        ))}
      </div>
      <Ends now={now} shape={shape} />
      <div class="stack" aria-live="polite">
        {found ? <Found found={found} shape={shape} bent={engine?.bent ?? false} /> : <p>{words.how[now.kind]}</p>}
      </div>
    </fieldset>
  );
}

function Found({ found, shape, bent }: { found: Measured; shape: Shape; bent: boolean }) {
  const { notes } = sayBench().measure;
  const all = [...found.notes, ...(shape.joint && found.rows.length > 0 ? [notes.within] : [])];
  if (bent) return <StateMark mark="stop">{notes.bent}</StateMark>;
  return (
    <>
      {found.rows.length > 0 && (
        <dl class="bench-found">
          {found.rows.map(({ name, value, sure }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>
                <strong class="number">{value}</strong> <span class="number">{sure}</span>
              </dd>
            </div>
          ))}
        </dl>
      )}
      <p class="small quiet">{all.join(' ')}</p>
    </>
  );
}

function Ends({ now, shape }: { now: Measuring; shape: Shape }) {
  const { ends, choose } = sayBench().measure;
  const { sheet, piece } = shape;
  if (now.kind === 'edge') {
    const runs = sheet.runs.filter((run) => run.piece === piece);
    return (
      <label class="field">
        <span>{ends.edge}</span>
        <select value={now.run ?? ''} onChange={({ currentTarget }) => chooseRun(currentTarget.value || null)}>
          <option value="">{choose}</option>
          {runs.map(({ id }) => (
            <option key={id} value={id}>
              {runTitle(sheet, id)}
            </option>
          ))}
        </select>
      </label>
    );
  }
  const names = now.kind === 'angle' ? [ends.arm, ends.corner, ends.other] : [ends.from, ends.to];
  return (
    <div class="bench-ends">
      {now.spots.map((spot, i) => (
        <SpotField key={names[i]} name={names[i] ?? ''} spot={spot} shape={shape} onSpot={(to) => chooseSpot(i, to)} />
      ))}
    </div>
  );
}

interface SpotFieldProps {
  name: string;
  spot: SpotName | null;
  shape: Shape;
  onSpot: (spot: SpotName | null) => void;
}

const keyOf = ({ on, id }: SpotName): string => `${on} ${id}`;

function SpotField({ name, spot, shape: { sheet, piece, places }, onSpot }: SpotFieldProps) {
  const { choose, points, station } = sayBench().measure;
  const own = sheet.points.filter(({ id, pieces }) => pieces.includes(piece) && places.has(id));
  const runs = sheet.runs.filter((run) => run.piece === piece && run.stations.length > 0);
  const chosen = (value: string): SpotName | null => {
    const [on, id] = value.split(' ');
    return (on === 'point' || on === 'station') && id !== undefined ? { on, id } : null;
  };
  return (
    <label class="field">
      <span>{name}</span>
      <select value={spot ? keyOf(spot) : ''} onChange={({ currentTarget }) => onSpot(chosen(currentTarget.value))}>
        <option value="">{choose}</option>
        <optgroup label={points}>
          {own.map(({ id }) => (
            <option key={id} value={keyOf({ on: 'point', id })}>
              {pointLabel(sheet, id)}
            </option>
          ))}
        </optgroup>
        {runs.map((run) => (
          <optgroup key={run.id} label={runTitle(sheet, run.id)}>
            {placed(run.stations, sheet).map(({ id, number }) => (
              <option key={id} value={keyOf({ on: 'station', id })}>
                {station(runTitle(sheet, run.id), number)}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}

/** Stations that were read, with their numbers on the edge. */
const placed = (stations: readonly string[], { readings }: Sheet): { id: string; number: number }[] =>
  stations.flatMap((id, i) =>
    readings.some((reading) => reading.id === id && reading.value !== null) ? [{ id, number: i + 1 }] : [],
  );
