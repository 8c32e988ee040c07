import type { RunDeclaration } from './declarations.ts';
import type { Payload } from './entries.ts';
import type { Pieces } from './fold-pieces.ts';
import { type Gathered, loose, signed } from './gather.ts';
import type { Registers } from './registers.ts';
import type { Fastener, SheetRun, Stretch } from './sheet.ts';
import { type Closure, FASTENER_OF, type FastenerType, type NoValue } from './words.ts';

interface Declared {
  readonly run: RunDeclaration;
  readonly piece: string;
}

/** What is said of a whole edge by its fastener, in the words of a stretch. An end of a track says which of the two it closes. */
const CLOSURE_OF: Record<FastenerType, Closure> = {
  snap: 'snap',
  'turn-button': 'turn-button',
  eyelet: 'cord',
  hook: 'hook',
  'track-end': 'track',
  'zip-end': 'zip',
  'strap-end': 'strap',
};

/** Edges with what closes them, and the fasteners along them. Stations are filled in once the readings are known. */
export function foldRuns(
  gathered: Gathered,
  registers: Registers,
  pieces: Pieces,
): { runs: SheetRun[]; fasteners: Fastener[] } {
  const declared = declaredRuns(gathered, pieces);
  registerDetails(gathered, registers, declared);
  const fasteners: Fastener[] = [];
  for (const { entry, payload } of gathered.of('fastener.add')) {
    if (!declared.has(payload.run)) loose(gathered, entry);
    else if (!fasteners.some((fastener) => fastener.id === payload.fastener)) {
      const { fastener, run, reading, rank, type, presence } = payload;
      fasteners.push({ id: fastener, run, reading, rank, type, presence });
    }
  }
  fasteners.sort((a, b) => a.rank - b.rank || (a.id < b.id ? -1 : 1));
  const used = new Set(fasteners.map((fastener) => fastener.run));
  const runs = [...declared.values()].flatMap((one): SheetRun[] => {
    const run = sheetRun(one, registers, pieces, gathered);
    if (pieces.holds(run.when, run.piece)) return [run];
    return used.has(run.id) ? [{ ...run, needed: false }] : [];
  });
  return { runs, fasteners };
}

function declaredRuns(gathered: Gathered, { ids }: Pieces): Map<string, Declared> {
  const declared = new Map<string, Declared>();
  const add = (run: RunDeclaration, piece: string): void => {
    if (!declared.has(run.id)) declared.set(run.id, { run, piece });
  };
  for (const { payload } of gathered.of('piece.add')) for (const run of payload.runs) add(run, payload.id);
  for (const { entry, payload } of gathered.of('run.add')) {
    if (ids.has(payload.piece)) add(payload.run, payload.piece);
    else loose(gathered, entry);
  }
  return declared;
}

function registerDetails(gathered: Gathered, registers: Registers, declared: ReadonlyMap<string, Declared>): void {
  for (const { entry, payload } of gathered.of('run.detail')) {
    if (!declared.has(payload.run)) loose(gathered, entry);
    registers.set(`run:${payload.run}:${payload.field}`, entry, payload.value);
  }
  for (const { entry, payload } of gathered.of('run.points')) {
    if (!declared.has(payload.run)) loose(gathered, entry);
    registers.set(`run:${payload.run}:points`, entry, payload.points.join(' '));
  }
  for (const { entry, payload } of gathered.of('run.answer')) {
    if (!declared.has(payload.run)) loose(gathered, entry);
    registers.set(`run:${payload.run}:answer`, entry, payload.answer);
  }
  for (const { entry, payload } of gathered.of('stretch.set')) {
    if (!declared.has(payload.run)) loose(gathered, entry);
    registers.set(`stretch:${payload.run}:${payload.from}:${payload.field}`, entry, payload.value);
  }
}

function sheetRun({ run, piece }: Declared, registers: Registers, pieces: Pieces, gathered: Gathered): SheetRun {
  const detail = (field: Payload<'run.detail'>['field'] | 'points'): string | undefined =>
    registers.get(`run:${run.id}:${field}`, { on: `run.${field}`, piece, subject: run.id })?.value;
  const ordered = detail('points')?.split(' ') ?? run.points;
  const kept = pieces.drops.kept(piece, ordered);
  const points = kept.length >= 2 ? kept : ordered;
  const whole: WholeEdge = {
    type: (detail('type') ?? null) as WholeEdge['type'],
    presence: (detail('presence') ?? null) as WholeEdge['presence'],
    count: numberOf(detail('planned-count') ?? null),
  };
  const stretches = stretchesOf({ run, piece }, points, registers, whole);
  const first = stretches[0];
  const later = gathered.of('run.points').findLast(({ payload }) => payload.run === run.id && payload.whole);
  const length = later?.payload.whole ?? run.whole;
  const planned = stretches.filter((stretch) => stretch.count !== null);
  return {
    ...run,
    points,
    whole: length !== null && isDropped(gathered, length) ? null : length,
    piece,
    manner: (detail('manner') ?? 'cumulative') as SheetRun['manner'],
    line: (detail('line') ?? null) as SheetRun['line'],
    // What is said of the whole edge comes first; otherwise its first stretch speaks for it.
    type: whole.type ?? (first?.closes ? FASTENER_OF[first.closes] : undefined) ?? null,
    presence: whole.presence ?? first?.presence ?? null,
    plannedCount:
      whole.count ?? (planned.length > 0 ? planned.reduce((sum, stretch) => sum + (stretch.count ?? 0), 0) : null),
    stations: [],
    stretches,
    answer: answerOf(run.id, piece, registers, gathered),
  };
}

const numberOf = (text: string | null): number | null => (text === null ? null : Number(text));

const isDropped = (gathered: Gathered, reading: string): boolean =>
  gathered.of('reading.drop').some(({ payload }) => payload.reading === reading);

/** That an edge has no value stands until somebody who knew of it tells more of the edge. */
function answerOf(run: string, piece: string, registers: Registers, gathered: Gathered): SheetRun['answer'] {
  const given = registers.get(`run:${run}:answer`, { on: 'run.answer', piece, subject: run });
  if (!given) return null;
  const told = [
    ...gathered.of('fastener.add'),
    ...gathered.of('run.detail'),
    ...gathered.of('run.points'),
    ...gathered.of('stretch.set'),
  ];
  if (told.some(({ entry, payload }) => payload.run === run && gathered.causality.saw(entry.id, given.entry.id)))
    return null;
  const reason = gathered.of('run.answer').find(({ entry }) => entry.id === given.entry.id)?.payload.reason ?? '';
  return { answer: given.value as NoValue, reason, ...signed(given.entry) };
}

/** What was said of an edge before it had stretches: it holds for each that says nothing of its own. */
interface WholeEdge {
  readonly type: FastenerType | null;
  readonly presence: Stretch['presence'];
  readonly count: number | null;
}

/** The stretches of an edge: the first begins at its first point, others where somebody said so. */
function stretchesOf(
  { run, piece }: Declared,
  points: readonly string[],
  registers: Registers,
  whole: WholeEdge,
): Stretch[] {
  const about = (from: string, field: string) => ({ on: `stretch.${field}`, piece, subject: `${run.id} ${from}` });
  const fact = (from: string, field: Payload<'stretch.set'>['field']): string | null =>
    registers.get(`stretch:${run.id}:${from}:${field}`, about(from, field))?.value ?? null;
  const begins = points.filter((from, i) => i === 0 || (i < points.length - 1 && fact(from, 'begins') === 'yes'));
  return begins.map((from, i): Stretch => {
    const closes = fact(from, 'closes') ?? (whole.type === null ? null : CLOSURE_OF[whole.type]);
    const presence = fact(from, 'presence') ?? whole.presence;
    return {
      from,
      to: begins[i + 1] ?? points.at(-1) ?? from,
      closes: closes as Stretch['closes'],
      presence: (closes === 'nothing' ? null : presence) as Stretch['presence'],
      into: fact(from, 'into') as Stretch['into'],
      setter: fact(from, 'setter') as Stretch['setter'],
      pulls: fact(from, 'pulls') as Stretch['pulls'],
      count: numberOf(fact(from, 'count')) ?? (begins.length === 1 ? whole.count : null),
      spacing: numberOf(fact(from, 'spacing')),
    };
  });
}

/** Ids of the readings along a run, in order: those declared with a place in the sequence, then those of fasteners. */
export function stationsOf(run: SheetRun, fasteners: readonly Fastener[], gathered: Gathered): string[] {
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
