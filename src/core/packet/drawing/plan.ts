import { withAllowance } from '../../cloth/allowance.ts';
import { type Place, runPlaces, stationsOn } from '../../cloth/index.ts';
import { outlineOf } from '../../geometry/index.ts';
import type { Sheet, SheetPiece, SheetPoint } from '../../job/index.ts';
import { formatLength } from '../../length/index.ts';
import type { StateMark } from '../state.ts';
import type { Drawing, DrawingWords, Entity, Flat, Layer } from './drawing.ts';

export interface PlanInput {
  readonly sheet: Sheet;
  readonly piece: string;
  /** Where the points are, mm; what the engine has, or a sketch. */
  readonly places: ReadonlyMap<string, Place>;
  readonly adjusted: boolean;
  /** The state it was made from, so that a sheet of paper can be matched with it. */
  readonly of: StateMark;
  readonly words: DrawingWords;
}

/** A piece from above, to scale: what was measured, and the shop's allowance apart from it. */
export function makePlan(input: PlanInput): Drawing | null {
  const { sheet, places } = input;
  const piece = sheet.pieces.find(({ id }) => id === input.piece);
  const points = sheet.points.filter(({ id, pieces }) => pieces.includes(input.piece) && places.has(id));
  if (!piece || points.length === 0) return null;
  const letter = letterHeight(points.map(({ id }) => flatOf(places.get(id))));
  return {
    system: sheet.system,
    flat: piece.flat,
    entities: [
      ...outlines(input, piece),
      ...edges(input),
      ...pointMarks(input, points, letter),
      ...obstructions(input, letter),
      ...dimensions(input, letter),
    ],
    block: block(input, piece),
    space: points.map(({ id, label }) => ({ label, at: places.get(id) ?? [0, 0, 0] })),
  };
}

const flatOf = (place: Place | undefined): Flat => (place ? [-place[1], place[0]] : [0, 0]);

/** Letters that can be read on a sheet that holds the whole piece, mm on the piece. */
function letterHeight(places: readonly Flat[]): number {
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const span = Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  return Math.min(40, Math.max(8, span / 110));
}

function outlines({ sheet, piece, places }: PlanInput, { flat }: SheetPiece): Entity[] {
  const outline = outlineOf(sheet, piece);
  const line = (outline?.points ?? []).flatMap((id) => {
    const place = places.get(id);
    return place ? [flatOf(place)] : [];
  });
  if (!outline || line.length < 3) return [];
  const entities: Entity[] = [{ type: 'line', layer: 'OUTLINE', points: line, closed: true }];
  // A plan of what is not flat is no pattern: an allowance round it would be cut from by mistake.
  const hem = flat ? (sheet.shop?.hem ?? 0) + (sheet.shop?.trim ?? 0) : 0;
  if (hem > 0) entities.push({ type: 'line', layer: 'ALLOWANCE', points: withAllowance(line, hem), closed: true });
  return entities;
}

function edges({ sheet, piece, places }: PlanInput): Entity[] {
  return sheet.runs
    .filter((run) => run.piece === piece)
    .flatMap((run): Entity[] => {
      const line = runPlaces(run, places).map(flatOf);
      const fasteners = stationsOn(run, sheet, places).map(
        ({ place }): Entity => ({ type: 'circle', layer: 'FASTENER', at: flatOf(place), radius: 6 }),
      );
      return line.length < 2 ? fasteners : [{ type: 'line', layer: 'EDGE', points: line, closed: false }, ...fasteners];
    });
}

const LAYER_OF: Partial<Record<SheetPoint['role'], Layer>> = { mark: 'MARK', obstruction: 'OBSTRUCTION' };

function pointMarks({ places }: PlanInput, points: readonly SheetPoint[], letter: number): Entity[] {
  return points.flatMap(({ id, label, role }): Entity[] => {
    const [x, y] = flatOf(places.get(id));
    const layer = LAYER_OF[role] ?? 'POINT';
    return [
      { type: 'circle', layer, at: [x, y], radius: letter / 4 },
      {
        type: 'text',
        layer: 'TEXT',
        at: [x + letter / 2, y + letter / 2],
        text: label,
        height: letter,
        anchor: 'start',
      },
    ];
  });
}

/** Things in the way: a box of their measured size where it was measured, and a clearance round it. */
function obstructions({ sheet, piece, places }: PlanInput, letter: number): Entity[] {
  return sheet.obstructions
    .filter((one) => one.piece === piece)
    .flatMap(({ id, label, point }): Entity[] => {
      const place = point === null ? undefined : places.get(point);
      if (!place) return [];
      const size = (of: string): number | null =>
        sheet.readings.find((reading) => reading.obstruction === id && reading.kind === 'size' && reading.of === of)
          ?.value ?? null;
      const [x, y] = flatOf(place);
      const [length, width, clear] = [
        size('length') ?? size('diameter'),
        size('width') ?? size('diameter'),
        size('clearance') ?? 0,
      ];
      const name: Entity = {
        type: 'text',
        layer: 'OBSTRUCTION',
        at: [x, y - letter * 1.5],
        text: label,
        height: letter,
        anchor: 'middle',
      };
      if (length === null || width === null) return [name];
      const box = (more: number): Entity => {
        const [w, h] = [width / 2 + more, length / 2 + more];
        const corners: Flat[] = [
          [x - w, y - h],
          [x + w, y - h],
          [x + w, y + h],
          [x - w, y + h],
        ];
        return { type: 'line', layer: 'OBSTRUCTION', points: corners, closed: true };
      };
      return clear > 0 ? [name, box(0), box(clear)] : [name, box(0)];
    });
}

/** Every taped straight, a thin line with its value, on a layer of its own. */
function dimensions({ sheet, piece, places }: PlanInput, letter: number): Entity[] {
  return sheet.readings
    .filter((reading) => reading.piece === piece && reading.kind === 'straight' && reading.value !== null)
    .flatMap((reading): Entity[] => {
      const [a, b] = reading.points.map((id) => places.get(id));
      if (!a || !b) return [];
      const [from, to] = [flatOf(a), flatOf(b)];
      const at: Flat = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      const text = lengthText(reading.value ?? 0, sheet);
      return [
        { type: 'line', layer: 'DIMENSION', points: [from, to], closed: false },
        { type: 'text', layer: 'DIMENSION', at, text, height: letter * 0.8, anchor: 'middle' },
      ];
    });
}

const lengthText = (mm: number, { system, fraction }: Pick<Sheet, 'system' | 'fraction'>): string =>
  system === 'metric'
    ? formatLength(mm, { system: 'metric', unit: 'mm' })
    : formatLength(mm, { system: 'imperial', denominator: fraction, feet: 'never' });

function block({ sheet, piece, adjusted, of, words }: PlanInput, { name, flat }: SheetPiece): string[] {
  const { details, shop, runs } = sheet;
  const lines = [...new Set(runs.filter((run) => run.piece === piece).flatMap(({ line }) => line ?? []))];
  const allowance = (shop?.hem ?? 0) + (shop?.trim ?? 0);
  const clearance = sheet.clearances.filter((one) => one.piece === piece && one.voidedBy.length === 0).at(-1);
  return [
    [details.name, name].filter(Boolean).join(' · '),
    [details.customer, details.boat].filter(Boolean).join(' · '),
    ...(sheet.demo ? [words.demo] : []),
    ...(flat ? [] : [words.notFlat]),
    ...(adjusted ? [] : [words.sketched]),
    lines.length > 0 ? words.measuredTo(lines.map((line) => words.lines[line]).join(', ')) : words.lineUnknown,
    ...(flat && allowance > 0 ? [words.allowance(lengthText(allowance, sheet))] : []),
    clearance ? words.cleared(clearance.who.name, clearance.at.slice(0, 16).replace('T', ' ')) : words.notCleared,
    words.state(of.entries, of.latest ?? ''),
    words.seal(of.seal),
  ].filter((line) => line !== '');
}
