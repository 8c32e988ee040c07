import { signal } from '@preact/signals';
import { askAgain, askable, isAsked } from '../../../core/check/index.ts';
import type { Ask, Sheet } from '../../../core/job/index.ts';
import { act, type OpenJob } from '../../model/open-job.ts';

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

/** Begins with what is to be read again ticked. */
export function beginAsk(job: OpenJob, piece: string): void {
  const items = askAgain(job.sheet, job.findings, piece, job.pieces.get(piece)).map(
    ({ on, id }) => [keyOf(on, id), { on, id, note: '' }] as const,
  );
  asking.value = { piece, note: '', items: new Map(items) };
}

/** Ticks readings besides what is ticked already; begins the asking with these alone where nobody has. */
export function alsoAsk(job: OpenJob, piece: string, readings: readonly string[]): void {
  if (asking.value?.piece !== piece) asking.value = { piece, note: '', items: new Map() };
  for (const reading of readings) {
    const { on, id } = askable(job.sheet, reading);
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

/** A reading is asked for again, by itself or with its edge, and still open. */
export function isReadingAsked(sheet: Sheet, piece: string, reading: string): boolean {
  const { on, id } = askable(sheet, reading);
  return isAsked(sheet, piece, on, id);
}
