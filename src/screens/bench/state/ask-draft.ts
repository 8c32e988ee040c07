import { signal } from '@preact/signals';
import { gates } from '../../../core/check/index.ts';
import type { Ask, Sheet } from '../../../core/job/index.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { suspicion } from './engine-view.ts';

export type AskOn = Ask['items'][number]['on'];

/** What is about to be asked again; items by `on:id`, with a note each. */
export interface AskDraft {
  piece: string;
  note: string;
  items: ReadonlyMap<string, { on: AskOn; id: string; note: string }>;
}

export const asking = signal<AskDraft | null>(null);

const keyOf = (on: AskOn, id: string): string => `${on}:${id}`;
export const askNote = (on: AskOn, id: string): string | null => asking.value?.items.get(keyOf(on, id))?.note ?? null;

/** Begins with what stops speak of, and what is suspected, ticked; except what is asked for already. */
export function beginAsk(job: OpenJob, piece: string): void {
  const suspects = suspicion(job, piece)?.readAgain ?? [];
  const items: [string, { on: AskOn; id: string; note: string }][] = [
    ...suspects.map((id) => askableReading(job.sheet, id)),
    ...stopItems(job, piece, new Set(suspects)),
  ]
    .filter(({ on, id }) => !isAsked(job.sheet, piece, on, id))
    .map(({ on, id }) => [keyOf(on, id), { on, id, note: '' }]);
  asking.value = { piece, note: '', items: new Map(items) };
}

/** Ticks readings besides what is ticked already; begins the asking with these alone where nobody has. */
export function alsoAsk(job: OpenJob, piece: string, readings: readonly string[]): void {
  if (asking.value?.piece !== piece) asking.value = { piece, note: '', items: new Map() };
  for (const reading of readings) {
    const { on, id } = askableReading(job.sheet, reading);
    if (askNote(on, id) === null && !isAsked(job.sheet, piece, on, id)) tickAsk(on, id, true);
  }
}

export function endAsk(): void {
  asking.value = null;
}

export function tickAsk(on: AskOn, id: string, ticked: boolean): void {
  const draft = asking.value;
  if (!draft) return;
  const items = new Map(draft.items);
  if (ticked) items.set(keyOf(on, id), { on, id, note: '' });
  else items.delete(keyOf(on, id));
  asking.value = { ...draft, items };
}

export function noteAsk(on: AskOn, id: string, note: string): void {
  const draft = asking.value;
  if (draft?.items.has(keyOf(on, id)))
    asking.value = { ...draft, items: new Map(draft.items).set(keyOf(on, id), { on, id, note }) };
}

export function noteWholeAsk(note: string): void {
  if (asking.value) asking.value = { ...asking.value, note };
}

/** Writes the asking into the logbook. */
export async function makeAsk(): Promise<void> {
  const draft = asking.value;
  if (!draft || draft.items.size === 0) return;
  await act('ask.again', { piece: draft.piece, note: draft.note.trim(), items: [...draft.items.values()] });
  asking.value = null;
}

export const isAsked = (sheet: Sheet, piece: string, on: AskOn, id: string): boolean =>
  sheet.asks.some(
    (ask) => ask.piece === piece && ask.items.some((item) => item.open && item.on === on && item.id === id),
  );

/** A reading is asked for again, by itself or with its edge, and still open. */
export function isReadingAsked(sheet: Sheet, piece: string, reading: string): boolean {
  const { on, id } = askableReading(sheet, reading);
  return isAsked(sheet, piece, on, id);
}

/** The things that stops of a piece speak of; of several readings only those that are suspected, where any is. */
function stopItems(job: OpenJob, piece: string, suspects: ReadonlySet<string>): { on: AskOn; id: string }[] {
  const { standing } = gates(job.sheet, job.findings, piece).cut;
  return standing
    .filter((finding) => finding.severity === 'stop' && finding.rule !== 'asked-again')
    .flatMap(({ subjects, numbers }) => {
      const { suspect } = numbers;
      if (typeof suspect === 'string') return [{ on: 'reading' as const, id: suspect }];
      const likely = subjects.filter(({ on, id }) => on === 'reading' && suspects.has(id));
      return likely.length > 0 ? likely : subjects;
    })
    .flatMap(({ on, id }) => {
      if (on === 'reading') return [askableReading(job.sheet, id)];
      return on === 'run' || on === 'shot' || on === 'question' ? [{ on, id }] : [];
    });
}

/** The place of a fastener is read again on its edge: it has no step of its own. */
function askableReading(sheet: Sheet, id: string): { on: AskOn; id: string } {
  const reading = sheet.readings.find((candidate) => candidate.id === id);
  return reading?.run !== undefined && reading.slot === null ? { on: 'run', id: reading.run } : { on: 'reading', id };
}
