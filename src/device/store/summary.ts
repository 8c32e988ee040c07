import { type Entry, isKnownKind, payloads } from '../../core/job/index.ts';
import type { JobRecord, JobSummary, OwnFacts } from './schema.ts';

export const NO_FACTS: OwnFacts = { lastCopy: null, archived: false };

/**
 * The summary after one more entry of this device: cheap, and exact while the entry names the heads. What only a
 * fold can tell is left open: how far the job is now, and after an undo, or an entry that comes late or beside
 * another, the names too. The list makes it anew when somebody looks.
 */
export function extend(record: JobRecord, entry: Entry): JobRecord {
  const seen = new Set(entry.seen);
  const inOrder = record.heads.every((id) => seen.has(id));
  const next: JobRecord = {
    ...record,
    entries: record.entries + 1,
    lastAt: later(record.lastAt, entry.at),
    heads: [...record.heads.filter((id) => !seen.has(id)), entry.id].sort(),
    standing: null,
    stale: record.stale || !inOrder || entry.kind === 'undo' || entry.kind === 'erase',
    erasures: record.erasures || entry.kind === 'erase',
  };
  return isKnownKind(entry.kind) ? applyKnown(next, entry) : next;
}

function applyKnown(record: JobRecord, { kind, payload }: Entry): JobRecord {
  if (kind === 'job.open') {
    const opened = payloads['job.open'].safeParse(payload);
    if (opened.success) return { ...record, name: opened.data.name, demo: opened.data.demo ?? false };
  }
  if (kind === 'job.detail') {
    const detail = payloads['job.detail'].safeParse(payload);
    if (!detail.success) return record;
    const { field, value } = detail.data;
    if (field === 'name' || field === 'customer' || field === 'boat') return { ...record, [field]: value };
  }
  if (kind === 'piece.add') {
    const piece = payloads['piece.add'].safeParse(payload);
    if (!piece.success || record.pieces.some(({ id }) => id === piece.data.id)) return record;
    const { id, kind: pieceKind, name } = piece.data;
    return { ...record, pieces: [...record.pieces, { id, kind: pieceKind, name }] };
  }
  return record;
}

/** What a screen may see of a record. */
export function shown({ stale: _stale, erasures: _erasures, ...summary }: JobRecord): JobSummary {
  return summary;
}

/** The later of two instants, ISO 8601. */
export function later(a: string | null, b: string): string {
  return a !== null && Date.parse(a) >= Date.parse(b) ? a : b;
}
