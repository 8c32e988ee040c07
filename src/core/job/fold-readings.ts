import type { ReadingDeclaration } from './declarations.ts';
import type { Pieces } from './fold-pieces.ts';
import { type Gathered, loose, signed } from './gather.ts';
import { outvoted } from './outvoted.ts';
import type { Registers } from './registers.ts';
import type { Answer, Fastener, SetAside, SheetReading, SheetRun, Take } from './sheet.ts';
import type { ShopRules } from './shop-rules.ts';
import { type Instruments, instrumentsOf, spreadOf } from './spread.ts';
import type { NoValue } from './words.ts';

interface Declared {
  readonly declaration: ReadingDeclaration;
  readonly piece: string;
}

/** Where fasteners lie is read too: each has a reading of its own. shop: how wide its takes are. */
interface Edges {
  readonly fasteners: readonly Fastener[];
  readonly runs: readonly SheetRun[];
  readonly shop: ShopRules | null;
}

/**
 * Readings with their takes: takes add up and never compete; a struck take stays with its reason. A reading that was
 * dropped, or whose point left the piece, is set aside with what was read.
 */
export function foldReadings(
  gathered: Gathered,
  registers: Registers,
  pieces: Pieces,
  edges: Edges,
): { readings: SheetReading[]; setAside: SetAside[] } {
  const declared = declaredReadings(gathered, pieces.ids, edges);
  const all = readAll(gathered, registers, declared, instrumentsOf(edges.shop));
  const dropped = droppedReadings(gathered, declared);
  const readings: SheetReading[] = [];
  const setAside: SetAside[] = [];
  for (const reading of all) {
    const gone = dropped.get(reading.id) ?? leftWithPoint(reading, pieces);
    if (gone) setAside.push({ reading, ...gone });
    else if (pieces.holds(reading.when, reading.piece)) readings.push(reading);
    // Read although nobody asks any more: it stays a fact, and the cloth does not wait for it.
    else if (reading.takes.length > 0) readings.push({ ...reading, needed: false });
  }
  return { readings, setAside };
}

type Gone = Omit<SetAside, 'reading'>;

function droppedReadings(gathered: Gathered, declared: ReadonlyMap<string, unknown>): ReadonlyMap<string, Gone> {
  const dropped = new Map<string, Gone>();
  for (const { entry, payload } of gathered.of('reading.drop')) {
    if (!declared.has(payload.reading)) loose(gathered, entry);
    else if (!dropped.has(payload.reading)) dropped.set(payload.reading, { reason: payload.reason, ...signed(entry) });
  }
  return dropped;
}

function leftWithPoint(reading: SheetReading, { drops }: Pieces): Gone | undefined {
  for (const point of [...reading.points, ...(reading.via ?? []), ...(reading.baseline ?? [])]) {
    const gone = drops.of(reading.piece, point);
    if (gone) return gone;
  }
  return undefined;
}

function readAll(
  gathered: Gathered,
  registers: Registers,
  declared: ReadonlyMap<string, Declared>,
  instruments: Instruments,
): SheetReading[] {
  const takes = foldTakes(gathered, declared);
  const expected = foldExpected(gathered, declared);
  const supposed = foldSupposed(gathered, declared);
  const reasons = new Map<string, string>();
  for (const { entry, payload } of gathered.of('reading.answer')) {
    if (!declared.has(payload.reading)) loose(gathered, entry);
    registers.set(`reading:${payload.reading}`, entry, payload.answer);
    reasons.set(entry.id, payload.reason);
  }
  return [...declared].map(([id, { declaration, piece }]) => {
    const own = counted(takes.get(id) ?? [], declaration, instruments);
    const live = own.filter((take) => take.struck === null);
    const counting = live.filter((take) => take.outvoted !== true);
    const given = registers.get(`reading:${id}`, { on: 'reading', piece, subject: id });
    // A value taken by someone who knew of the answer replaces it; one taken without knowing stands beside it.
    const replaced = given !== undefined && live.some((take) => gathered.causality.saw(take.id, given.entry.id));
    const answer: Answer | null =
      given && !replaced
        ? {
            answer: given.value as NoValue,
            reason: reasons.get(given.entry.id) ?? '',
            ...signed(given.entry),
          }
        : null;
    const basis = live.map((take) => take.id).sort();
    const guess = live.length === 0 ? undefined : supposed.get(`${id} ${basis.join('+')}`);
    const mean = counting.length === 0 ? null : counting.reduce((sum, take) => sum + take.value, 0) / counting.length;
    const value = guess?.value ?? mean;
    const state = value !== null ? 'measured' : (answer?.answer ?? 'open');
    return {
      ...declaration,
      piece,
      takes: own,
      answer,
      value,
      state,
      supposed: guess ?? null,
      expected: expected.get(id) ?? null,
    };
  });
}

/** The takes of a reading, those marked that two others outvote. */
function counted(takes: readonly Take[], { kind }: ReadingDeclaration, instruments: Instruments): Take[] {
  const looks = takes
    .filter(({ struck }) => struck === null)
    .map(({ id, value, sigma, who }) => ({ id, value, sigma: sigma ?? spreadOf(kind, value, who.role, instruments) }));
  const gone = new Set([...outvoted(looks)].map(({ id }) => id));
  return takes.map((take) => (gone.has(take.id) ? { ...take, outvoted: true } : take));
}

/** By reading and the takes it rests on: another take, or one struck out, is another basis. */
function foldSupposed(
  gathered: Gathered,
  declared: ReadonlyMap<string, unknown>,
): ReadonlyMap<string, NonNullable<SheetReading['supposed']>> {
  const supposed = new Map<string, NonNullable<SheetReading['supposed']>>();
  for (const { entry, payload } of gathered.of('reading.suppose')) {
    const { reading, value, text, slip, basis } = payload;
    if (!declared.has(reading)) loose(gathered, entry);
    supposed.set(`${reading} ${basis}`, { entry: entry.id, value, text, slip, ...signed(entry) });
  }
  return supposed;
}

function foldExpected(
  gathered: Gathered,
  declared: ReadonlyMap<string, unknown>,
): ReadonlyMap<string, NonNullable<SheetReading['expected']>> {
  const expected = new Map<string, NonNullable<SheetReading['expected']>>();
  for (const { entry, payload } of gathered.of('reading.expect')) {
    const { reading, ...what } = payload;
    if (!declared.has(reading)) loose(gathered, entry);
    expected.set(reading, what);
  }
  return expected;
}

function declaredReadings(
  gathered: Gathered,
  pieceIds: ReadonlySet<string>,
  { fasteners, runs }: Edges,
): Map<string, Declared> {
  const declared = new Map<string, Declared>();
  const add = (declaration: ReadingDeclaration, piece: string): void => {
    if (!declared.has(declaration.id)) declared.set(declaration.id, { declaration, piece });
  };
  for (const { payload } of gathered.of('piece.add')) for (const reading of payload.readings) add(reading, payload.id);
  for (const { entry, payload } of gathered.of('reading.add')) {
    if (pieceIds.has(payload.piece)) add(payload.reading, payload.piece);
    else loose(gathered, entry);
  }
  const pieceOfRun = new Map(runs.map((run) => [run.id, run.piece]));
  for (const { reading, run, presence } of fasteners) {
    const piece = pieceOfRun.get(run);
    if (piece) add({ id: reading, slot: null, kind: 'running', points: [], run, needed: presence === 'there' }, piece);
  }
  return declared;
}

function foldTakes(gathered: Gathered, declared: ReadonlyMap<string, unknown>): Map<string, Take[]> {
  const struck = new Map<string, NonNullable<Take['struck']>>();
  for (const { entry, payload } of gathered.of('take.strike')) {
    if (!struck.has(payload.take)) struck.set(payload.take, { reason: payload.reason, ...signed(entry) });
  }
  const takes = new Map<string, Take[]>();
  for (const { entry, payload } of gathered.of('take.add')) {
    if (!declared.has(payload.reading)) loose(gathered, entry);
    const take: Take = {
      id: entry.id,
      text: payload.text,
      unit: payload.unit,
      value: payload.value,
      sigma: payload.sigma ?? null,
      struck: struck.get(entry.id) ?? null,
      ...signed(entry),
    };
    const list = takes.get(payload.reading);
    if (list) list.push(take);
    else takes.set(payload.reading, [take]);
  }
  return takes;
}
