import type { RunDeclaration } from './declarations.ts';
import type { Payload } from './entries.ts';
import type { Pieces } from './fold-pieces.ts';
import { type Gathered, loose } from './gather.ts';
import type { Registers } from './registers.ts';
import type { Fastener, SheetRun, Stretch } from './sheet.ts';
import type { Closure, FastenerType } from './words.ts';

interface Declared {
  readonly run: RunDeclaration;
  readonly piece: string;
}

/** The fastener that closes a stretch, where one does. */
const FASTENER_OF: Partial<Record<Closure, FastenerType>> = {
  snap: 'snap',
  'turn-button': 'turn-button',
  cord: 'eyelet',
  hook: 'hook',
  zip: 'zip-end',
  track: 'track-end',
  boltrope: 'track-end',
  strap: 'strap-end',
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
  const stretches = stretchesOf({ run, piece }, points, registers);
  const first = stretches[0];
  const count = detail('planned-count');
  const planned = stretches.filter((stretch) => stretch.count !== null);
  return {
    ...run,
    points,
    whole: run.whole !== null && isDropped(gathered, run.whole) ? null : run.whole,
    piece,
    manner: (detail('manner') ?? 'cumulative') as SheetRun['manner'],
    line: (detail('line') ?? null) as SheetRun['line'],
    // What is said of the whole edge comes first; otherwise its first stretch speaks for it.
    type: (detail('type') ?? (first?.closes ? FASTENER_OF[first.closes] : undefined) ?? null) as SheetRun['type'],
    presence: (detail('presence') ?? first?.presence ?? null) as SheetRun['presence'],
    plannedCount:
      count !== undefined
        ? Number(count)
        : planned.length > 0
          ? planned.reduce((sum, stretch) => sum + (stretch.count ?? 0), 0)
          : null,
    stations: [],
    stretches,
  };
}

const isDropped = (gathered: Gathered, reading: string): boolean =>
  gathered.of('reading.drop').some(({ payload }) => payload.reading === reading);

/** The stretches of an edge: the first begins at its first point, others where somebody said so. */
function stretchesOf({ run, piece }: Declared, points: readonly string[], registers: Registers): Stretch[] {
  const about = (from: string, field: string) => ({ on: `stretch.${field}`, piece, subject: `${run.id} ${from}` });
  const fact = (from: string, field: Payload<'stretch.set'>['field']): string | null =>
    registers.get(`stretch:${run.id}:${from}:${field}`, about(from, field))?.value ?? null;
  const begins = points.filter((from, i) => i === 0 || (i < points.length - 1 && fact(from, 'begins') === 'yes'));
  return begins.map((from, i): Stretch => {
    const number = (field: 'count' | 'spacing'): number | null => {
      const text = fact(from, field);
      return text === null ? null : Number(text);
    };
    return {
      from,
      to: begins[i + 1] ?? points.at(-1) ?? from,
      closes: fact(from, 'closes') as Stretch['closes'],
      presence: fact(from, 'presence') as Stretch['presence'],
      into: fact(from, 'into') as Stretch['into'],
      setter: fact(from, 'setter') as Stretch['setter'],
      pulls: fact(from, 'pulls') as Stretch['pulls'],
      count: number('count'),
      spacing: number('spacing'),
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
