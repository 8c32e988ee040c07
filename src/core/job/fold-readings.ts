import type { ReadingDeclaration } from './declarations.ts';
import { type Gathered, loose, signed } from './gather.ts';
import type { Registers } from './registers.ts';
import type { Answer, Fastener, SheetReading, SheetRun, Take } from './sheet.ts';
import type { NoValue } from './words.ts';

/** Readings with their takes: takes add up and never compete; a struck take stays with its reason. */
export function foldReadings(
  gathered: Gathered,
  registers: Registers,
  pieceIds: ReadonlySet<string>,
  fasteners: readonly Fastener[],
  runs: readonly SheetRun[],
): SheetReading[] {
  const declared = declaredReadings(gathered, pieceIds, fasteners, runs);
  const takes = foldTakes(gathered, declared);
  const reasons = new Map<string, string>();
  for (const { entry, payload } of gathered.of('reading.answer')) {
    if (!declared.has(payload.reading)) loose(gathered, entry);
    registers.set(`reading:${payload.reading}`, entry, payload.answer);
    reasons.set(entry.id, payload.reason);
  }
  return [...declared].map(([id, { declaration, piece }]) => {
    const own = takes.get(id) ?? [];
    const counted = own.filter((take) => take.struck === null);
    const given = registers.get(`reading:${id}`, { on: 'reading', piece, subject: id });
    // A value taken by someone who knew of the answer replaces it; one taken without knowing stands beside it.
    const replaced = given !== undefined && counted.some((take) => gathered.causality.saw(take.id, given.entry.id));
    const answer: Answer | null =
      given && !replaced
        ? {
            answer: given.value as NoValue,
            reason: reasons.get(given.entry.id) ?? '',
            ...signed(given.entry),
          }
        : null;
    const value = counted.length === 0 ? null : counted.reduce((sum, take) => sum + take.value, 0) / counted.length;
    const state = value !== null ? 'measured' : (answer?.answer ?? 'open');
    return { ...declaration, piece, takes: own, answer, value, state };
  });
}

function declaredReadings(
  gathered: Gathered,
  pieceIds: ReadonlySet<string>,
  fasteners: readonly Fastener[],
  runs: readonly SheetRun[],
): Map<string, { declaration: ReadingDeclaration; piece: string }> {
  const declared = new Map<string, { declaration: ReadingDeclaration; piece: string }>();
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
