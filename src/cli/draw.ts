import { judge, type ShownShape, shownPlaces, shownShape } from '../core/check/index.ts';
import { type Place, sketchPiece } from '../core/cloth/index.ts';
import type { Entry, Sheet } from '../core/job/index.ts';
import {
  type Drawing,
  dxfOf,
  fastenersCsv,
  fittingsCsv,
  makePlan,
  pointsCsv,
  stateOfPiece,
  svgOf,
  tilePages,
  tilesFor,
} from '../core/packet/drawing/index.ts';
import { tiles as tileWords, drawing as words } from '../text/en/drawing.ts';
import type { Call } from './arguments.ts';
import { labelsOf } from './labels.ts';

/** ending: what a file's name gets where there is more than one. */
export interface DrawnFile {
  ending: string;
  text: string;
}
type Drawn = { ok: true; files: readonly DrawnFile[] } | { ok: false; message: string };

/** A piece of a job as a file that other programs open, or as sheets in real size. */
export function drawn({ sheet, entries }: { sheet: Sheet; entries: readonly Entry[] }, call: Call): Drawn {
  const { findings, pieces } = judge(sheet);
  const shapeOf = (piece: string): ShownShape | null => {
    const judgement = pieces.get(piece);
    return judgement ? shownShape(judgement, findings) : null;
  };
  const placesOf = (piece: string): ReadonlyMap<string, Place> =>
    sketchPiece(sheet, piece, shownPlaces(shapeOf(piece))).places;
  if (call.as === 'points') return one(pointsCsv(sheet, { shapeOf, placesOf }));
  if (call.as === 'fasteners') return one(fastenersCsv(sheet, { shapeOf, placesOf }));
  if (call.as === 'fittings') return one(fittingsCsv(sheet));
  const named = sheet.pieces.filter(({ name }) => call.piece === null || name === call.piece);
  const [piece, ...others] = named;
  if (!piece || others.length > 0) return { ok: false, message: whichPiece(sheet, call.piece) };
  const { solved: adjusted = false, bent = false, without = [] } = shapeOf(piece.id) ?? {};
  const names = without.map(labelsOf(sheet).reading);
  const of = stateOfPiece(entries, sheet, piece.id);
  const places = placesOf(piece.id);
  const plan = makePlan({ sheet, piece: piece.id, places, adjusted, bent, without: names, of, words });
  if (!plan) return { ok: false, message: `${piece.name} has no points to draw.` };
  if (call.as === 'tiles') return tiled(plan, call);
  return one(call.as === 'svg' ? svgOf(plan) : dxfOf(plan, call.units, words.unit(call.units)));
}

const one = (text: string): Drawn => ({ ok: true, files: [{ ending: '', text }] });

function tiled(plan: Drawing, { paper }: Call): Drawn {
  const offer = tilesFor(plan, paper);
  if (!offer.ok) return { ok: false, message: tileWords.refused(offer) };
  const pages = tilePages(plan, offer.tiling, tileWords);
  return { ok: true, files: pages.map(({ name, svg }) => ({ ending: `-${name}.svg`, text: svg })) };
}

function whichPiece({ pieces }: Sheet, asked: string | null): string {
  if (pieces.length === 0) return 'The job has no piece.';
  const names = pieces.map(({ name }) => name).join(', ');
  return asked === null ? `Say which piece with --piece: ${names}.` : `There is no one piece ${asked}, only: ${names}.`;
}
