import { adjustedPlaces, judge } from '../core/check/index.ts';
import { type Place, sketchPiece } from '../core/cloth/index.ts';
import type { Sheet } from '../core/job/index.ts';
import { dxfOf, fastenersCsv, makePlan, pointsCsv, type StateMark, svgOf } from '../core/packet/drawing/index.ts';
import { drawing as words } from '../text/en/drawing.ts';
import type { Call } from './arguments.ts';

type Drawn = { ok: true; text: string } | { ok: false; message: string };

/** A piece of a job as a file that other programs open. of: the state it is drawn from. */
export function drawn(sheet: Sheet, call: Call, of: StateMark): Drawn {
  const { pieces } = judge(sheet);
  const placesOf = (piece: string): ReadonlyMap<string, Place> => {
    return sketchPiece(sheet, piece, adjustedPlaces(pieces.get(piece))).places;
  };
  if (call.as === 'points') return { ok: true, text: pointsCsv(sheet, pieces, placesOf) };
  if (call.as === 'fasteners') return { ok: true, text: fastenersCsv(sheet, placesOf) };
  const named = sheet.pieces.filter(({ name }) => call.piece === null || name === call.piece);
  const [piece, ...others] = named;
  if (!piece || others.length > 0) return { ok: false, message: whichPiece(sheet, call.piece) };
  const adjusted = pieces.get(piece.id)?.adjustment.state === 'solved';
  const plan = makePlan({ sheet, piece: piece.id, places: placesOf(piece.id), adjusted, of, words });
  if (!plan) return { ok: false, message: `${piece.name} has no points to draw.` };
  return { ok: true, text: call.as === 'svg' ? svgOf(plan) : dxfOf(plan, call.units, words.unit(call.units)) };
}

function whichPiece({ pieces }: Sheet, asked: string | null): string {
  if (pieces.length === 0) return 'The job has no piece.';
  const names = pieces.map(({ name }) => name).join(', ');
  return asked === null ? `Say which piece with --piece: ${names}.` : `There is no one piece ${asked}, only: ${names}.`;
}
