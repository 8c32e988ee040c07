import type { Sheet, SheetReading, SheetRun, TakeUnit } from '../../core/job/index.ts';
import { formatLength, type LengthParts, type LengthUnit, parseLength } from '../../core/length/index.ts';
import { sayGuide } from '../../text/guide.ts';
import { pieceWords } from '../../text/guides.ts';
import { say } from '../../text/index.ts';
import { isolated } from '../../text/isolated.ts';
import { sayLength } from '../../text/length.ts';

/** A length in the job's own unit, to its fraction. */
export function lengthText(mm: number, sheet: Pick<Sheet, 'system' | 'fraction'>): string {
  return sheet.system === 'metric'
    ? formatLength(mm, { system: 'metric', unit: 'mm' })
    : formatLength(mm, { system: 'imperial', denominator: sheet.fraction, feet: 'never' });
}

/** A value as its kind wants it: a length, or degrees for a lean. */
export function valueText(value: number, kind: SheetReading['kind'], sheet: Sheet): string {
  return kind === 'lean' ? `${((value * 180) / Math.PI).toFixed(1)}°` : lengthText(value, sheet);
}

const defaultUnit = (sheet: Pick<Sheet, 'system'>): LengthUnit => (sheet.system === 'metric' ? 'mm' : 'in');

/** What a person typed, read as a length in the job's unit. */
export const readLength = (text: string, sheet: Pick<Sheet, 'system'>) => parseLength(text, defaultUnit(sheet));

type ReadValue =
  | { ok: true; value: number; unit: TakeUnit; parts: LengthParts }
  /** In a sentence. */
  | { ok: false; refusal: string };

/** What a person typed for a reading: degrees for a lean, otherwise a length in the job's unit. */
export function readValue(text: string, kind: SheetReading['kind'], sheet: Pick<Sheet, 'system'>): ReadValue {
  if (kind === 'lean') return readDegrees(text);
  const parsed = readLength(text, sheet);
  if (parsed.ok) return { ok: true, value: parsed.mm, unit: parsed.unit, parts: parsed.parts };
  const { refusals, understood } = sayLength();
  const refusal = [refusals[parsed.why], parsed.understood && understood(parsed.understood)].filter(Boolean).join(' ');
  return { ok: false, refusal };
}

function readDegrees(text: string): ReadValue {
  const [, sign, digits] = /^([-−]?) ?(\d{1,3}(?:[.,]\d+)?|[.,]\d+) ?(?:°|deg)?$/.exec(text.trim()) ?? [];
  if (digits === undefined) return { ok: false, refusal: sayLength().notDegrees };
  const degrees = Number(digits.replace(',', '.'));
  const negative = sign !== '' && degrees > 0;
  return {
    ok: true,
    value: ((negative ? -degrees : degrees) * Math.PI) / 180,
    unit: 'deg',
    parts: { form: 'decimal', decimal: degrees, ...(negative && { negative }) },
  };
}

/** Kinds that may be below, behind, or lean the other way. */
const SIGNED: ReadonlySet<SheetReading['kind']> = new Set(['along', 'out', 'height', 'lean']);
export const maySigned = (kind: SheetReading['kind']): boolean => SIGNED.has(kind);

/** A point by its label; a mark that was moved since says so, wherever it is named. */
export function pointLabel(sheet: Pick<Sheet, 'points'>, id: string): string {
  const point = sheet.points.find((p) => p.id === id);
  if (!point) return '?';
  return point.replacedBy === null ? isolated(point.label) : sayGuide().oldMark(point.label);
}

/** A reading by the names of its points: A–C, Height of A, Fastener 3. */
export function readingName(reading: SheetReading, sheet: Sheet): string {
  const words = sayGuide().readingTitle;
  const labels = reading.points.map((id) => pointLabel(sheet, id));
  const [a, b] = labels;
  const own = reading.slot === null ? undefined : wordsOfPiece(sheet, reading.piece)?.readings?.[reading.slot];
  if (own) return own.title;
  if (reading.kind === 'size' && reading.of)
    return words.size(say().general.sizes[reading.of], thingOf(reading, sheet));
  if (reading.kind === 'straight' && a !== undefined && b !== undefined) return words.between(a, b);
  const [from, to] = stringOf(reading).map((id) => pointLabel(sheet, id));
  if (from !== undefined && to !== undefined && a !== undefined)
    return reading.kind === 'along' ? words.alongString(a, from, to) : words.offString(a, from, to);
  if (reading.kind === 'height' && a !== undefined) return words.height(a);
  if (reading.kind === 'girth' && a !== undefined && b !== undefined) return words.along(a, b);
  const run = sheet.runs.find((candidate) => candidate.id === reading.run);
  const place = run ? run.stations.indexOf(reading.id) : -1;
  if (place >= 0) return words.fastener(place + 1);
  return words.other(say().general.kinds[reading.kind], labels.join('–'));
}

/** The two ends of the string a reading is taken from; empty where it is taken from none. */
export const stringOf = ({ kind, baseline = [] }: Pick<SheetReading, 'kind' | 'baseline'>): readonly string[] =>
  baseline.length === 2 && (kind === 'out' || kind === 'height' || kind === 'along') ? baseline : [];

/** What a size is of: the thing in the way it names, or the points it is taken at. */
function thingOf(reading: SheetReading, sheet: Sheet): string {
  const thing = sheet.obstructions.find(({ id }) => id === reading.obstruction);
  return isolated(thing?.label ?? reading.note ?? '') || labelsOf(sheet, reading.points);
}

/** The words of the guide a piece was measured by. */
export const wordsOfPiece = (sheet: Sheet, piece: string) =>
  pieceWords(sheet.pieces.find(({ id }) => id === piece)?.kind);

/** What a picture that is asked for shows: by the guide, by the person who asked for it, or by its points. */
export function shotTitle(sheet: Sheet, piece: string, slot: string): string {
  const shot = sheet.shots.find((one) => one.piece === piece && one.slot === slot);
  const told = wordsOfPiece(sheet, piece)?.shots[slot]?.title ?? (shot?.note && isolated(shot.note));
  return told ?? (shot ? sayGuide().picture(labelsOf(sheet, shot.points)) : slot);
}

/** An edge by its name, or by its points. */
export function runTitle(sheet: Sheet, { piece, slot, note, points }: SheetRun): string {
  const told = slot === null ? undefined : wordsOfPiece(sheet, piece)?.runs[slot]?.title;
  return told ?? (note && isolated(note)) ?? sayGuide().edge(labelsOf(sheet, points));
}

export const labelsOf = (sheet: Sheet, points: readonly string[]): string =>
  points.map((id) => pointLabel(sheet, id)).join('–');
