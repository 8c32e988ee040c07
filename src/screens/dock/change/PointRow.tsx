import { useState } from 'preact/hooks';
import { goesWith, mayHaveMoved, mayRemove } from '../../../core/guide/amend/index.ts';
import type { SheetPoint } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { pointLabel } from '../../model/words.ts';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';
import { wordsOfPoint } from '../step-words.ts';
import type { ChangeProps } from './change-props.ts';
import { addAfter, marksMoved, nextLabel, type Said, shift, takeOff } from './point-deeds.ts';

interface Props extends ChangeProps {
  point: SheetPoint;
  /** The edge whose point it is here. */
  run: string | null;
  open: boolean;
  onOpen: (open: boolean) => void;
  onSaid: (said: Said) => void;
}

/** One point; opened, what can be done about it. */
export function PointRow(props: Props) {
  const { job, point, open, onOpen } = props;
  const { sheet } = job;
  const words = sayWalk();
  const now = point.replacedBy === null ? null : sheet.points.find(({ id }) => id === point.replacedBy);
  const told = now ? words.moved.stands(point.label, now.label) : wordsOfPoint(sheet, point.id)?.name;
  return (
    <li class="stack point-row">
      <button type="button" class="item" aria-expanded={open} disabled={now !== null} onClick={() => onOpen(!open)}>
        <span class="grow">
          <strong>{pointLabel(sheet, point.id)}</strong> <span class="quiet small">{told}</span>
        </span>
        {now === null && (
          <span class="quiet" aria-hidden="true">
            {open ? '–' : '+'}
          </span>
        )}
      </button>
      {open && now === null && <Doings {...props} />}
    </li>
  );
}

type Asking = 'moved' | 'off' | null;

function Doings(props: Props) {
  const { job, piece, point, run, onOpen, onSaid } = props;
  const { sheet } = job;
  const [asking, ask] = useState<Asking>(null);
  const words = sayWalk().points;
  const edge = sheet.runs.find(({ id }) => id === run)?.points ?? [];
  const place = edge.indexOf(point.id);
  const done = async (doing: Promise<Said>): Promise<void> => {
    const said = await doing;
    onOpen(false);
    onSaid(said);
  };
  const lost = goesWith(sheet, piece, point.id).length;
  if (asking === 'moved') return <MovedAsk {...props} onCancel={() => ask(null)} done={done} />;
  if (asking === 'off')
    return (
      <ReasonPicker
        question={words.takeOffWhy(point.label, lost)}
        reasons={words.takeOffReasons}
        onCancel={() => ask(null)}
        onReason={(reason) => void done(takeOff(job, piece, point, reason))}
      />
    );
  const off = (): void => {
    if (lost > 0) ask('off');
    else void done(takeOff(job, piece, point, words.reasons.off));
  };
  return (
    <div class="stack">
      {run !== null && place < edge.length - 1 && (
        <Doing name={words.after(point.label)} act={() => void done(addAfter(job, run, point))} />
      )}
      {run !== null && place > 0 && <Doing name={words.earlier} act={() => void done(shift(job, run, place, -1))} />}
      {run !== null && place < edge.length - 1 && (
        <Doing name={words.later} act={() => void done(shift(job, run, place, 1))} />
      )}
      {mayHaveMoved(point) && <Doing name={words.wasMoved(point.label)} act={() => ask('moved')} />}
      {mayRemove(sheet, piece, point.id) ? (
        <Doing name={words.takeOff(point.label)} act={off} />
      ) : (
        <p class="quiet small">{words.mustStay}</p>
      )}
    </div>
  );
}

const Doing = ({ name, act }: { name: string; act: () => void }) => (
  <button type="button" class="button choice" onClick={act}>
    {name}
  </button>
);

interface MovedProps extends Props {
  onCancel: () => void;
  done: (doing: Promise<Said>) => Promise<void>;
}

function MovedAsk({ job, point, onCancel, done }: MovedProps) {
  const words = sayWalk().points;
  return (
    <div class="stack">
      <p>{words.movedAsk(point.label, nextLabel(job, point))}</p>
      <div class="row">
        <button type="button" class="button main" onClick={() => void done(marksMoved(job, point))}>
          {words.movedSure}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          {say().general.cancel}
        </button>
      </div>
    </div>
  );
}
