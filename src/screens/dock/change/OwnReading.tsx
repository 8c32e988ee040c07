import { useState } from 'preact/hooks';
import { type OwnReading as Own, ownReading } from '../../../core/guide/amend/index.ts';
import { type Side, SizeOf } from '../../../core/job/index.ts';
import { uuid } from '../../../device/clock.ts';
import { say } from '../../../text/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { actAll } from '../../model/open-job.ts';
import { go } from '../../model/route.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import type { ChangeProps } from './change-props.ts';
import { type Choosable, choosable } from './choosable.ts';

type Kind = keyof ReturnType<typeof sayWalk>['own']['kinds'];
const KINDS = ['straight', 'height', 'along', 'out', 'girth', 'size'] as const satisfies readonly Kind[];
/** Ways an offset may count. */
const ACROSS = ['port', 'starboard', 'forward', 'aft'] as const satisfies readonly Side[];

interface Draft {
  kind: Kind;
  a: string;
  b: string;
  from: string;
  to: string;
  toward: Side | null;
  of: SizeOf;
  what: string;
}

/** A reading of a person's own: between any two points, over a string, or a plain size; read at once. */
export function OwnReading({ job, piece }: ChangeProps) {
  const { sheet } = job;
  const points = choosable(sheet, piece);
  const [a = '', b = ''] = points.map(({ id }) => id);
  const [draft, setDraft] = useState<Draft>({
    kind: 'straight',
    a,
    b,
    from: '',
    to: '',
    toward: null,
    of: 'width',
    what: '',
  });
  const set = (more: Partial<Draft>): void => setDraft({ ...draft, ...more });
  const words = sayWalk().own;
  const own = readingOf(draft);
  const read = async (asked: Own): Promise<void> => {
    const { deeds, reading } = ownReading(sheet, piece, asked, uuid);
    if (deeds.length > 0) await actAll(deeds);
    const there = sheet.readings.find(({ id }) => id === reading);
    go({ at: 'step', job: job.id, piece, step: there?.slot ?? reading });
  };
  return (
    <>
      <Choice
        label={words.kind}
        value={draft.kind}
        options={KINDS.map((id) => ({ id, told: words.kinds[id] }))}
        onChange={(id) => set({ kind: KINDS.find((kind) => kind === id) ?? 'straight' })}
      />
      {points.length >= 2 && (
        <PieceDrawing
          judgement={job.pieces.get(piece)}
          sheet={sheet}
          piece={piece}
          width={360}
          height={220}
          askedPoints={own?.points ?? []}
        />
      )}
      <Fields draft={draft} set={set} points={points} />
      {own === null && points.length < 2 && <p>{words.tooFew}</p>}
      <button type="button" class="button main wide" disabled={own === null} onClick={() => own && void read(own)}>
        {words.ask}
      </button>
    </>
  );
}

/** What is asked for; null while it is not complete. */
function readingOf({ kind, a, b, from, to, toward, of, what }: Draft): Own | null {
  const note = what.trim() === '' ? {} : { note: what.trim() };
  if (kind === 'size') return { kind, points: a === '' ? [] : [a], of, ...note };
  if (a === '') return null;
  if (kind === 'straight' || kind === 'girth') return b === '' || b === a ? null : { kind, points: [a, b] };
  const string = from === '' || to === '' || from === to ? null : [from, to];
  if (string === null) return kind === 'height' && from === '' && to === '' ? { kind, points: [a] } : null;
  return { kind, points: [a], baseline: string, ...(kind === 'out' && toward ? { toward } : {}) };
}

interface FieldsProps {
  draft: Draft;
  set: (more: Partial<Draft>) => void;
  points: readonly Choosable[];
}

function Fields({ draft, set, points }: FieldsProps) {
  const words = sayWalk().own;
  const { sizes, sides } = say().general;
  const { kind } = draft;
  const choose = (field: 'a' | 'b' | 'from' | 'to', label: string, none?: string) => (
    <Choice
      label={label}
      value={draft[field]}
      options={[...(none === undefined ? [] : [{ id: '', told: none }]), ...points]}
      onChange={(id) => set({ [field]: id })}
    />
  );
  if (kind === 'size')
    return (
      <>
        <Choice
          label={words.of}
          value={draft.of}
          options={SizeOf.options.map((id) => ({ id, told: sizes[id] }))}
          onChange={(id) => set({ of: SizeOf.options.find((one) => one === id) ?? 'width' })}
        />
        {choose('a', words.at, words.anywhere)}
        <label class="field">
          <span>{words.what}</span>
          <input
            value={draft.what}
            maxLength={120}
            autocomplete="off"
            onInput={(event) => set({ what: event.currentTarget.value })}
          />
        </label>
      </>
    );
  if (kind === 'straight' || kind === 'girth')
    return (
      <>
        {choose('a', words.from)}
        {choose('b', words.to)}
      </>
    );
  const none = kind === 'height' ? words.noString : '–';
  return (
    <>
      {choose('a', words.at)}
      {choose('from', words.stringFrom, none)}
      {choose('to', words.stringTo, none)}
      {kind === 'out' && (
        <Choice
          label={words.toward}
          value={draft.toward ?? ''}
          options={[{ id: '', told: '–' }, ...ACROSS.map((id) => ({ id, told: sides[id] }))]}
          onChange={(id) => set({ toward: ACROSS.find((side) => side === id) ?? null })}
        />
      )}
    </>
  );
}

interface ChoiceProps {
  label: string;
  value: string;
  options: readonly { id: string; told: string }[];
  onChange: (id: string) => void;
}

function Choice({ label, value, options, onChange }: ChoiceProps) {
  return (
    <label class="field">
      <span>{label}</span>
      <select value={value} onChange={(event) => onChange(event.currentTarget.value)}>
        {options.map(({ id, told }) => (
          <option key={id} value={id}>
            {told}
          </option>
        ))}
      </select>
    </label>
  );
}
