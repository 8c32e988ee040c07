import type { RunDeclaration } from './declarations.ts';
import { type Entry, type Payload, SILENT_KINDS } from './entries.ts';
import { foldAsks } from './fold-asks.ts';
import { foldPhotos } from './fold-photos.ts';
import { foldReadings } from './fold-readings.ts';
import { type Gathered, gather, loose, signed } from './gather.ts';
import { Registers } from './registers.ts';
import type { Clearance, Fastener, Sheet, SheetPiece, SheetPoint, SheetQuestion, SheetRun } from './sheet.ts';

/**
 * The sheet a logbook amounts to. Pure, total and deterministic: the order in which entries arrived does not matter,
 * and what cannot be understood or placed is listed under `carried`.
 */
export function fold(entries: readonly Entry[]): Sheet {
  const gathered = gather(entries);
  const registers = new Registers(gathered.causality);
  const opened = gathered.of('job.open')[0];
  const pieces = foldPieces(gathered);
  const pieceIds = new Set(pieces.map((piece) => piece.id));
  const { runs, fasteners } = foldRuns(gathered, registers, pieceIds);
  const readings = foldReadings(gathered, registers, pieceIds, fasteners, runs);
  const { shots, photos } = foldPhotos(gathered, registers, pieceIds);
  const sheet: Sheet = {
    job: opened?.entry.job ?? entries[0]?.job ?? null,
    details: foldDetails(gathered, registers),
    system: opened?.payload.system ?? 'imperial',
    fraction: opened?.payload.fraction ?? 16,
    demo: opened?.payload.demo ?? false,
    opened: opened?.entry.at ?? null,
    pieces,
    points: foldPoints(gathered, pieceIds),
    readings,
    runs: runs.map((run) => ({ ...run, stations: stationsOf(run, fasteners, gathered) })),
    fasteners,
    shots,
    photos,
    questions: foldQuestions(gathered, registers),
    acceptances: gathered
      .of('finding.accept')
      .map(({ entry, payload }) => ({ ...payload, entry: entry.id, ...signed(entry) })),
    asks: foldAsks(gathered),
    clearances: foldClearances(gathered, entries),
    notes: gathered.of('note.add').map(({ entry, payload }) => ({ id: entry.id, ...payload, ...signed(entry) })),
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

function foldPieces(gathered: Gathered): SheetPiece[] {
  const pieces = new Map<string, SheetPiece>();
  for (const { entry, payload } of gathered.of('piece.add')) {
    if (pieces.has(payload.id)) continue;
    const { id, kind, name, flat, boxes, pairs, walk } = payload;
    pieces.set(id, { id, kind, name, flat, boxes, pairs, walk, ...signed(entry) });
  }
  return [...pieces.values()];
}

function foldPoints(gathered: Gathered, pieceIds: ReadonlySet<string>): SheetPoint[] {
  const points = new Map<string, SheetPoint>();
  const add = (point: Payload<'point.add'>['point'], piece: string | null): void => {
    const known = points.get(point.id);
    if (known) {
      if (piece && !known.pieces.includes(piece)) known.pieces.push(piece);
    } else points.set(point.id, { ...point, pieces: piece ? [piece] : [] });
  };
  for (const { payload } of gathered.of('piece.add')) for (const point of payload.points) add(point, payload.id);
  for (const { entry, payload } of gathered.of('point.add')) {
    if (payload.piece && !pieceIds.has(payload.piece)) loose(gathered, entry);
    else add(payload.point, payload.piece);
  }
  return [...points.values()];
}

function foldRuns(
  gathered: Gathered,
  registers: Registers,
  pieceIds: ReadonlySet<string>,
): { runs: SheetRun[]; fasteners: Fastener[] } {
  const declared = new Map<string, { run: RunDeclaration; piece: string }>();
  for (const { payload } of gathered.of('piece.add')) {
    if (!pieceIds.has(payload.id)) continue;
    for (const run of payload.runs) if (!declared.has(run.id)) declared.set(run.id, { run, piece: payload.id });
  }
  for (const { entry, payload } of gathered.of('run.detail')) {
    if (!declared.has(payload.run)) loose(gathered, entry);
    registers.set(`run:${payload.run}:${payload.field}`, entry, payload.value);
  }
  const fasteners: Fastener[] = [];
  for (const { entry, payload } of gathered.of('fastener.add')) {
    if (!declared.has(payload.run)) loose(gathered, entry);
    else if (!fasteners.some((fastener) => fastener.id === payload.fastener)) {
      const { fastener, run, reading, rank, type, presence } = payload;
      fasteners.push({ id: fastener, run, reading, rank, type, presence });
    }
  }
  fasteners.sort((a, b) => a.rank - b.rank || (a.id < b.id ? -1 : 1));
  const runs = [...declared.values()].map(({ run, piece }): SheetRun => {
    const detail = (field: Payload<'run.detail'>['field']): string | undefined =>
      registers.get(`run:${run.id}:${field}`, { on: `run.${field}`, piece, subject: run.id })?.value;
    const count = detail('planned-count');
    return {
      ...run,
      piece,
      manner: (detail('manner') ?? 'cumulative') as SheetRun['manner'],
      line: (detail('line') ?? null) as SheetRun['line'],
      type: (detail('type') ?? null) as SheetRun['type'],
      presence: (detail('presence') ?? null) as SheetRun['presence'],
      plannedCount: count === undefined ? null : Number(count),
      stations: [],
    };
  });
  return { runs, fasteners };
}

function stationsOf(run: SheetRun, fasteners: readonly Fastener[], gathered: Gathered): string[] {
  const ofFasteners = fasteners.filter((fastener) => fastener.run === run.id).map((fastener) => fastener.reading);
  const declared = [
    ...gathered.of('piece.add').flatMap(({ payload }) => payload.readings),
    ...gathered.of('reading.add').map(({ payload }) => payload.reading),
  ]
    .filter((reading) => reading.run === run.id && reading.kind === 'running' && reading.id !== run.whole)
    .sort((a, b) => (a.sequence ?? 0) - (b.sequence ?? 0))
    .map((reading) => reading.id);
  return [...new Set([...declared, ...ofFasteners])];
}

function foldQuestions(gathered: Gathered, registers: Registers): SheetQuestion[] {
  const texts = new Map<string, string>();
  for (const { entry, payload } of gathered.of('question.answer')) {
    registers.set(`question:${payload.piece}:${payload.slot}`, entry, payload.choice);
    texts.set(entry.id, payload.text);
  }
  return gathered.of('piece.add').flatMap(({ payload }) =>
    payload.questions.map((question) => {
      const about = { on: 'question', piece: payload.id, subject: question.slot };
      const answer = registers.get(`question:${payload.id}:${question.slot}`, about);
      return {
        ...question,
        piece: payload.id,
        choice: answer?.value ?? null,
        text: answer ? (texts.get(answer.entry.id) ?? '') : '',
      };
    }),
  );
}

function foldClearances(gathered: Gathered, entries: readonly Entry[]): Clearance[] {
  return gathered.of('piece.clear').map(({ entry, payload }) => {
    const judged = gathered.causality.past(payload.judged);
    const voidedBy = entries
      .filter((other) => !SILENT_KINDS.has(other.kind) && !judged.has(other.id))
      .map((other) => other.id)
      .sort();
    return { entry: entry.id, ...payload, voidedBy, ...signed(entry) };
  });
}
