import { useState } from 'preact/hooks';
import { freeLabel, isLabelFree, ownPoint } from '../../../core/guide/amend/index.ts';
import { PointRole, Side } from '../../../core/job/index.ts';
import { uuid } from '../../../device/clock.ts';
import { sayWalk } from '../../../text/walk.ts';
import { actAll } from '../../model/open-job.ts';
import { Chips } from './Chips.tsx';
import type { ChangeProps } from './change-props.ts';

/** A point of a person's own: what sort, what it is called, what it is, on which side. Open at once where there is none. */
export function OwnPoint({ job, piece }: ChangeProps) {
  const none = job.sheet.points.every(({ pieces }) => !pieces.includes(piece));
  const [open, setOpen] = useState(none);
  const words = sayWalk().points;
  if (!open)
    return (
      <button type="button" class="button wide" onClick={() => setOpen(true)}>
        {words.own}
      </button>
    );
  return (
    <section class="stack">
      <h2>{words.own}</h2>
      <OwnPointForm job={job} piece={piece} />
    </section>
  );
}

function OwnPointForm({ job, piece }: ChangeProps) {
  const { sheet } = job;
  const [role, setRole] = useState<PointRole>('corner');
  const [typed, setLabel] = useState<string | null>(null);
  const [note, setNote] = useState('');
  const [sides, setSides] = useState<readonly Side[]>([]);
  const words = sayWalk().points;
  const label = typed ?? freeLabel(sheet, piece, role);
  const free = isLabelFree(sheet, piece, label);
  const add = async (): Promise<void> => {
    await actAll(ownPoint(piece, { label, role, sides, note }, uuid));
    setLabel(null);
    setNote('');
    setSides([]);
  };
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        if (free && label.trim() !== '') void add();
      }}
    >
      <label class="field">
        <span>{words.role}</span>
        <select
          value={role}
          onChange={(event) => setRole(PointRole.options.find((one) => one === event.currentTarget.value) ?? 'corner')}
        >
          {PointRole.options.map((one) => (
            <option key={one} value={one}>
              {words.roles[one]}
            </option>
          ))}
        </select>
      </label>
      <label class="field">
        <span>{words.label}</span>
        <input
          value={label}
          maxLength={40}
          autocomplete="off"
          onInput={(event) => setLabel(event.currentTarget.value)}
        />
        {!free && <span class="state stop small">{words.taken}</span>}
      </label>
      <label class="field">
        <span>{words.note}</span>
        <input
          value={note}
          maxLength={200}
          autocomplete="off"
          onInput={(event) => setNote(event.currentTarget.value)}
        />
      </label>
      <Chips
        question={words.sides}
        options={Side.options.map((side) => ({ id: side, name: words.sideNames[side] }))}
        chosen={sides}
        onChoose={(ids) => setSides(Side.options.filter((side) => ids.includes(side)))}
      />
      <button type="submit" class="button main wide" disabled={!free || label.trim() === ''}>
        {words.add}
      </button>
    </form>
  );
}
