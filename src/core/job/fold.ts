import { type Entry, SILENT_KINDS } from './entries.ts';
import { foldAsks } from './fold-asks.ts';
import { foldObstructions, pointedAt } from './fold-obstructions.ts';
import { foldPhotos } from './fold-photos.ts';
import { foldPieces, foldPoints, gatherPieces } from './fold-pieces.ts';
import { foldReadings } from './fold-readings.ts';
import { foldRuns, stationsOf } from './fold-runs.ts';
import { type Gathered, gather, signed } from './gather.ts';
import { Registers } from './registers.ts';
import type { Clearance, Sheet } from './sheet.ts';

/**
 * The sheet a logbook amounts to. Pure, total and deterministic: the order in which entries arrived does not matter,
 * and what cannot be understood or placed is listed under `carried`.
 */
export function fold(entries: readonly Entry[]): Sheet {
  const gathered = gather(entries);
  const registers = new Registers(gathered.causality);
  const opened = gathered.of('job.open')[0];
  const pieces = gatherPieces(gathered, registers);
  const { runs, fasteners } = foldRuns(gathered, registers, pieces);
  const shop = gathered.of('job.shop').at(-1)?.payload ?? null;
  const { readings, setAside } = foldReadings(gathered, registers, pieces, { fasteners, runs, shop });
  const { shots, photos } = foldPhotos(gathered, registers, pieces);
  const obstructions = foldObstructions(gathered, registers, pieces);
  const sheet: Sheet = {
    job: opened?.entry.job ?? entries[0]?.job ?? null,
    details: foldDetails(gathered, registers),
    system: opened?.payload.system ?? 'imperial',
    fraction: opened?.payload.fraction ?? 16,
    demo: opened?.payload.demo ?? false,
    opened: opened?.entry.at ?? null,
    pieces: foldPieces(gathered, pieces.drops),
    points: pointedAt(gathered, obstructions, foldPoints(gathered, pieces)),
    readings,
    setAside,
    obstructions,
    shop,
    request: foldRequest(gathered),
    runs: runs.map((run) => ({ ...run, stations: stationsOf(run, fasteners, gathered) })),
    fasteners,
    shots,
    photos,
    questions: [...pieces.questions],
    acceptances: gathered
      .of('finding.accept')
      .map(({ entry, payload }) => ({ ...payload, entry: entry.id, ...signed(entry) })),
    asks: foldAsks(gathered),
    clearances: foldClearances(gathered, entries),
    notes: gathered.of('note.add').map(({ entry, payload }) => ({ id: entry.id, ...payload, ...signed(entry) })),
    fittings: gathered
      .of('fitting.note')
      .map(({ entry, payload: { from = null, ...note } }) => ({ id: entry.id, ...note, from, ...signed(entry) })),
    practice: gathered
      .of('practice.done')
      .map(({ entry, payload }) => ({ entry: entry.id, ...payload, ...signed(entry) })),
    disputes: registers.disputes,
    carried: gathered.carried,
  };
  return sheet;
}

function foldDetails(gathered: Gathered, registers: Registers): Sheet['details'] {
  const opened = gathered.of('job.open')[0];
  if (opened) registers.set('detail:name', opened.entry, opened.payload.name);
  for (const { entry, payload } of gathered.of('job.detail'))
    registers.set(`detail:${payload.field}`, entry, payload.value);
  const detail = (field: keyof Sheet['details']): string =>
    registers.get(`detail:${field}`, { on: `detail.${field}`, piece: null, subject: null })?.value ?? '';
  return {
    name: detail('name'),
    customer: detail('customer'),
    contact: detail('contact'),
    boat: detail('boat'),
    place: detail('place'),
    note: detail('note'),
  };
}

function foldRequest(gathered: Gathered): Sheet['request'] {
  const asked = gathered.of('job.request').at(-1);
  return asked ? { ...asked.payload, ...signed(asked.entry) } : null;
}

function foldClearances(gathered: Gathered, entries: readonly Entry[]): Clearance[] {
  const kinds = new Map(entries.map(({ id, kind }) => [id, kind]));
  /** What is done about something that changes nothing changes nothing either. */
  const isSilent = ({ kind, payload }: Entry): boolean =>
    SILENT_KINDS.has(kind === 'undo' ? kindTakenBack(kinds, payload.entry) : kind);
  return gathered.of('piece.clear').map(({ entry, payload }) => {
    const judged = gathered.causality.past(payload.judged);
    const voidedBy = entries
      .filter((other) => !isSilent(other) && !judged.has(other.id))
      .map((other) => other.id)
      .sort();
    return { entry: entry.id, ...payload, voidedBy, ...signed(entry) };
  });
}

/** Only notes of a fitting are taken back in silence: without its clearance a piece is not clear. */
function kindTakenBack(kinds: ReadonlyMap<string, string>, entry: unknown): string {
  const kind = typeof entry === 'string' ? kinds.get(entry) : undefined;
  return kind === 'fitting.note' ? kind : 'undo';
}
