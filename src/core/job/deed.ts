import type { EntryKind, Payload } from './entries.ts';

/** Something to do, before it is signed, dated and written down. */
export interface Deed {
  kind: EntryKind;
  payload: Record<string, unknown>;
}

/** Something to do, checked against its kind. */
export const deed = <K extends EntryKind>(kind: K, payload: Payload<K>): Deed => ({ kind, payload: { ...payload } });
