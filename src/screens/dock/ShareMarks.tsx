import { useState } from 'preact/hooks';
import type { Guide } from '../../core/guide/index.ts';
import type { PointRole, Sheet, SheetPoint } from '../../core/job/index.ts';
import { pieceWords } from '../../text/guides.ts';
import { say } from '../../text/index.ts';
import { sayWalk } from '../../text/walk.ts';
import { pieceName } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { wordsOfPoint } from './step-words.ts';

/** What can serve two pieces: something put or fixed on the boat. An edge belongs to its own cloth. */
const LASTING: ReadonlySet<PointRole> = new Set(['mark', 'mount', 'corner']);

const there = ({ points }: Sheet): SheetPoint[] =>
  points.filter(({ pieces, replacedBy }) => pieces.length > 0 && replacedBy === null);

/** Whether other pieces have points that the new one could use: of the same lasting sort. */
export const sharedWith = (sheet: Sheet, guide: Guide): boolean =>
  there(sheet).some(({ role }) => LASTING.has(role) && guide.points.some((point) => point.role === role));

interface Props {
  job: OpenJob;
  guide: Guide;
  onCancel: () => void;
  /** By the guide's slots, the points that are on the boat already. */
  onDone: (slots: ReadonlyMap<string, string>) => void;
}

/** One plain question before a second piece: which of its points are on the boat already. */
export function ShareMarks({ job, guide, onCancel, onDone }: Props) {
  const [naming, name] = useState(false);
  const [slots, setSlots] = useState<ReadonlyMap<string, string>>(new Map());
  const words = sayWalk().shared;
  const { sheet } = job;
  const pieces = sheet.pieces.filter(({ id }) => there(sheet).some((point) => point.pieces.includes(id)));
  const set = (slot: string, id: string): void => {
    const next = new Map(slots);
    if (id === '') next.delete(slot);
    else next.set(slot, id);
    setSlots(next);
  };
  const field = (slot: string) => (
    <SlotField key={slot} {...{ sheet, guide, slot, slots }} onChange={(id) => set(slot, id)} />
  );
  const first = guide.points.filter(({ role }) => LASTING.has(role));
  const more = guide.points.filter(({ role }) => !LASTING.has(role));
  return (
    <section class="stack">
      <h2>{words.question(pieces.map(pieceName).join(', '))}</h2>
      <p class="quiet small">{words.help}</p>
      {naming ? (
        <>
          {first.map(({ slot }) => field(slot))}
          <details>
            <summary class="button plain">{words.more}</summary>
            <div class="stack">{more.map(({ slot }) => field(slot))}</div>
          </details>
          <button type="button" class="button main wide" onClick={() => onDone(slots)}>
            {words.begin}
          </button>
        </>
      ) : (
        <div class="choices">
          <button type="button" class="button choice" onClick={() => onDone(new Map())}>
            {words.none}
          </button>
          <button type="button" class="button choice" onClick={() => name(true)}>
            {words.some}
          </button>
        </div>
      )}
      <button type="button" class="button plain" onClick={onCancel}>
        {say().general.cancel}
      </button>
    </section>
  );
}

interface FieldProps {
  sheet: Sheet;
  guide: Guide;
  slot: string;
  slots: ReadonlyMap<string, string>;
  onChange: (id: string) => void;
}

/** One point of the guide: new, or one that is there; one that is taken already is not offered again. */
function SlotField({ sheet, guide, slot, slots, onChange }: FieldProps) {
  const words = sayWalk().shared;
  const label = guide.points.find((point) => point.slot === slot)?.label ?? slot;
  const chosen = slots.get(slot) ?? '';
  const taken = new Set([...slots.values()].filter((id) => id !== chosen));
  return (
    <label class="field">
      <span>{words.option(label, pieceWords(guide.kind)?.points[slot]?.name ?? '')}</span>
      <select value={chosen} onChange={(event) => onChange(event.currentTarget.value)}>
        <option value="">{words.fresh}</option>
        {there(sheet)
          .filter(({ id }) => !taken.has(id))
          .map((point) => (
            <option key={point.id} value={point.id}>
              {words.option(point.label, wordsOfPoint(sheet, point.id)?.name ?? '')}
            </option>
          ))}
      </select>
    </label>
  );
}
