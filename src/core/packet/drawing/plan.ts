import { withAllowance } from '../../cloth/allowance.ts';
import { type Place, runPlaces, stationsOn } from '../../cloth/index.ts';
import { extentOf, type Face, faceOf, outlineOf, seenAs } from '../../geometry/index.ts';
import type { Sheet, SheetPiece, SheetPoint } from '../../job/index.ts';
import { formatLength } from '../../length/index.ts';
import type { PieceState } from '../state.ts';
import type { Drawing, DrawingWords, Entity, Flat, Layer } from './drawing.ts';
import { factsOf } from './facts.ts';

export interface PlanInput {
  readonly sheet: Sheet;
  readonly piece: string;
  /** Where the points are, mm; what the engine has, or a sketch. */
  readonly places: ReadonlyMap<string, Place>;
  readonly adjusted: boolean;
  /** Readings contradict each other: a picture, of which no figure may be used. */
  readonly bent: boolean;
  /** Readings left out of the shape, by name. */
  readonly without: readonly string[];
  /** The state it was made from, so that a sheet of paper can be matched with it. */
  readonly of: PieceState;
  readonly words: DrawingWords;
}

/** A piece square to its face (from above, or from outside where it hangs), to scale; the shop's allowance apart. */
export function makePlan(input: PlanInput): Drawing | null {
  const { sheet, places } = input;
  const piece = sheet.pieces.find(({ id }) => id === input.piece);
  const points = sheet.points.filter(({ id, pieces }) => pieces.includes(input.piece) && places.has(id));
  if (!piece || points.length === 0) return null;
  const face = faceOf(points.flatMap(({ nominal }) => (nominal ? [nominal] : [])));
  const to = projector(face);
  const letter = letterHeight(points.map(({ id }) => to(places.get(id))));
  const facts = factsOf(sheet, input.piece, input.of, input.words);
  const legend = legendOf(input, piece, face);
  const warnings = warningsOf(input, piece);
  return {
    system: sheet.system,
    facts,
    legend,
    warnings,
    adjusted: input.adjusted,
    flat: piece.flat,
    entities: [
      ...outlines(input, piece, to),
      ...edges(input, to),
      ...pointMarks(input, points, letter, to),
      ...obstructions(input, letter, to),
      ...dimensions(input, letter, to),
    ],
    block: [
      [facts.job, facts.piece].filter(Boolean).join(' · '),
      ...(facts.demo ? [facts.demo] : []),
      ...warnings,
      ...legend,
      facts.cleared,
      facts.state,
      facts.seal,
    ],
    space: input.bent ? [] : points.map(({ id, label }) => ({ label, at: places.get(id) ?? [0, 0, 0] })),
  };
}

function warningsOf({ adjusted, bent, without, words }: PlanInput, { flat }: SheetPiece): string[] {
  return [
    ...(bent ? [words.bent] : []),
    ...(flat ? [] : [words.notFlat]),
    ...(adjusted ? [] : [words.sketched]),
    ...(without.length > 0 ? [words.without(without.join(', '))] : []),
  ];
}

type Projector = (place: Place | undefined) => Flat;
const projector =
  (face: Face): Projector =>
  (place) =>
    seenAs(face, place ?? [0, 0, 0]);

/** Letters that can be read on a sheet that holds the whole piece, mm on the piece. */
function letterHeight(places: readonly Flat[]): number {
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const span = Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  return Math.min(40, Math.max(8, span / 110));
}

function outlines({ sheet, piece, places }: PlanInput, { flat }: SheetPiece, to: Projector): Entity[] {
  const outline = outlineOf(sheet, piece);
  const line = (outline?.points ?? []).flatMap((id) => {
    const place = places.get(id);
    return place ? [to(place)] : [];
  });
  if (!outline || line.length < 3) return [];
  const entities: Entity[] = [{ type: 'line', layer: 'OUTLINE', points: line, closed: true }];
  // A plan of what is not flat is no pattern: an allowance round it would be cut from by mistake.
  const hem = flat ? (sheet.shop?.hem ?? 0) + (sheet.shop?.trim ?? 0) : 0;
  if (hem > 0) entities.push({ type: 'line', layer: 'ALLOWANCE', points: withAllowance(line, hem), closed: true });
  return entities;
}

function edges({ sheet, piece, places }: PlanInput, to: Projector): Entity[] {
  return sheet.runs
    .filter((run) => run.piece === piece)
    .flatMap((run): Entity[] => {
      const line = runPlaces(run, places).map(to);
      const fasteners = stationsOn(run, sheet, places).map(
        ({ place }): Entity => ({ type: 'circle', layer: 'FASTENER', at: to(place), radius: 6 }),
      );
      return line.length < 2 ? fasteners : [{ type: 'line', layer: 'EDGE', points: line, closed: false }, ...fasteners];
    });
}

const LAYER_OF: Partial<Record<SheetPoint['role'], Layer>> = { mark: 'MARK', obstruction: 'OBSTRUCTION' };

function pointMarks({ places }: PlanInput, points: readonly SheetPoint[], letter: number, to: Projector): Entity[] {
  return points.flatMap(({ id, label, role }): Entity[] => {
    const [x, y] = to(places.get(id));
    const at: Flat = [x + letter / 2, y + letter / 2];
    return [
      { type: 'circle', layer: LAYER_OF[role] ?? 'POINT', at: [x, y], radius: letter / 4 },
      { type: 'text', layer: 'TEXT', at, text: label, height: letter, anchor: 'start' },
    ];
  });
}

/** Things in the way, as far as each reaches at most whichever way round it stands, and what must stay free round it. */
function obstructions({ sheet, piece, places }: PlanInput, letter: number, to: Projector): Entity[] {
  return sheet.obstructions
    .filter((thing) => thing.piece === piece)
    .flatMap(({ id, label, point }): Entity[] => {
      const place = places.get(point ?? '');
      if (!place) return [];
      const at = to(place);
      const { most, clearance } = extentOf(sheet, id);
      const below: Flat = [at[0], at[1] - most - letter * 1.5];
      const name: Entity = {
        type: 'text',
        layer: 'OBSTRUCTION',
        at: below,
        text: label,
        height: letter,
        anchor: 'middle',
      };
      const ring = (radius: number): Entity => ({ type: 'circle', layer: 'OBSTRUCTION', at, radius });
      return [name, ...(most > 0 ? [ring(most)] : []), ...(clearance > 0 ? [ring(most + clearance)] : [])];
    });
}

/** Every taped straight, a thin line with its value, on a layer of its own. */
function dimensions({ sheet, piece, places }: PlanInput, letter: number, to: Projector): Entity[] {
  return sheet.readings
    .filter((reading) => reading.piece === piece && reading.kind === 'straight' && reading.value !== null)
    .flatMap((reading): Entity[] => {
      const [a, b] = reading.points.map((id) => places.get(id));
      if (!a || !b) return [];
      const [from, until] = [to(a), to(b)];
      const at: Flat = [(from[0] + until[0]) / 2, (from[1] + until[1]) / 2];
      const text = lengthText(reading.value ?? 0, sheet);
      return [
        { type: 'line', layer: 'DIMENSION', points: [from, until], closed: false },
        { type: 'text', layer: 'DIMENSION', at, text, height: letter * 0.8, anchor: 'middle' },
      ];
    });
}

const lengthText = (mm: number, { system, fraction }: Pick<Sheet, 'system' | 'fraction'>): string =>
  system === 'metric'
    ? formatLength(mm, { system: 'metric', unit: 'mm' })
    : formatLength(mm, { system: 'imperial', denominator: fraction, feet: 'never' });

function legendOf({ sheet, piece, words }: PlanInput, { flat }: SheetPiece, face: Face): string[] {
  const { shop, runs } = sheet;
  const lines = [...new Set(runs.filter((run) => run.piece === piece).flatMap(({ line }) => line ?? []))];
  const allowance = (shop?.hem ?? 0) + (shop?.trim ?? 0);
  return [
    words.seen[face],
    lines.length > 0 ? words.measuredTo(lines.map((line) => words.lines[line]).join(', ')) : words.lineUnknown,
    ...(flat && allowance > 0 ? [words.allowance(lengthText(allowance, sheet))] : []),
  ];
}
