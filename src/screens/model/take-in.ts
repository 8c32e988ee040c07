import type { Entry } from '../../core/job/index.ts';
import { type RowRefusal, readTable } from '../../core/packet/index.ts';
import { now, uuid } from '../../device/clock.ts';
import { looksLikeBackup, type PhotoBytes, readPacketFile } from '../../device/packet-file/index.ts';
import { StoreFailure } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';
import { sayTakeIn } from '../../text/take-in.ts';
import { jobTitle } from './job-words.ts';
import { loadJob, openJob } from './open-job.ts';
import { actor, device, store, units } from './services.ts';

/** What became of a file: taken in, or refused with the reason; then nothing stored was touched. */
export type TakenIn = { ok: true; job: string; lines: string[] } | { ok: false; lines: string[] };

interface Incoming {
  name: string;
  entries: readonly Entry[];
  photos: readonly PhotoBytes[];
  /** A packet is a copy that is elsewhere too; a table is not. */
  isCopy: boolean;
  missing: readonly string[];
}

type Read = { ok: true; incoming: Incoming } | { ok: false; lines: string[] };

/** Takes a packet or a readings table into this device: by its content, whatever its name. */
export async function takeIn(file: Blob, fileName: string): Promise<TakenIn> {
  const words = sayTakeIn();
  const read = await readIncoming(file, fileName);
  if (!read.ok) return { ok: false, lines: [words.refused, ...read.lines] };
  const { entries, photos, missing, name, isCopy } = read.incoming;
  const job = entries[0]?.job ?? '';
  try {
    const imported = await store().importEntries(job, entries, photos, isCopy ? now() : null);
    if (openJob.value?.id === job) await loadJob(job);
    const lines = [words.added(imported.added, name)];
    if (imported.setAside.length > 0) lines.push(words.setAside(imported.setAside.length));
    if (missing.length > 0) lines.push(words.missingPhotos(missing.length));
    return { ok: true, job, lines };
  } catch (error) {
    const code = error instanceof StoreFailure ? error.code : 'unknown';
    return { ok: false, lines: [words.refused, say().store.failures[code]] };
  }
}

async function readIncoming(file: Blob, fileName: string): Promise<Read> {
  const words = sayTakeIn();
  if (await looksLikeBackup(file).catch(() => false)) return { ok: false, lines: [words.isBackup] };
  const read = await readPacketFile(file);
  if (!read.ok) return { ok: false, lines: [words.why[read.why]] };
  if (read.kind === 'packet') {
    const { logbook, sheet } = read.packet;
    const name = jobTitle(sheet.details);
    return { ok: true, incoming: { name, entries: logbook, photos: read.photos, missing: read.missing, isCopy: true } };
  }
  return readIncomingTable(read.text, fileName);
}

function readIncomingTable(text: string, fileName: string): Read {
  const words = sayTakeIn();
  const name = fileName.replace(/\.[^.]*$/, '');
  const table = readTable(text, {
    name,
    piece: say().general.pieceKinds.table,
    units: units.value.system === 'metric' ? 'mm' : 'in',
    who: actor.value,
    device: device.value,
    newId: uuid,
    now,
    keepGood: false,
  });
  if (table.ok) return { ok: true, incoming: { name, entries: table.entries, photos: [], missing: [], isCopy: false } };
  const lines = [words.tables[table.why], ...table.refused.slice(0, MOST_ROWS_NAMED).map(rowText)];
  return {
    ok: false,
    lines: table.missingColumns.length > 0 ? [...lines, words.columns(table.missingColumns)] : lines,
  };
}

/** More refused rows than a person reads on a phone. */
const MOST_ROWS_NAMED = 12;

const rowText = ({ line, code, column, understood }: RowRefusal): string =>
  sayTakeIn().row(line, sayTakeIn().rowFaults[code], column ?? '', understood ?? '');
