import { adjust, nameSlips, nextTapes } from '../adjust/index.ts';
import type { Context } from './context.ts';
import { networkOf } from './network.ts';
import { type PieceJudgement, solutionOf } from './piece-judgement.ts';
import { placeThings } from './place-things.ts';

/** The engine on one piece; null where there is nothing to adjust. */
export function judgePiece(context: Context, pieceId: string): PieceJudgement | null {
  const network = networkOf(context, pieceId);
  if (network.readings.length === 0) return null;
  const adjustment = adjust(network);
  const own = context.sheet.readings.filter((reading) => reading.piece === pieceId);
  const complete = own.every((reading) => !reading.needed || reading.state !== 'open' || reading.kind === 'running');
  const byOwner = own.some((reading) => reading.takes.some((take) => take.who.role === 'owner' && !take.struck));
  const solution = solutionOf(adjustment);
  return {
    network,
    adjustment,
    slips: solution?.doubted ? nameSlips(network, adjustment) : null,
    advice: complete && solution ? nextTapes(network, adjustment) : null,
    byOwner,
    complete,
    things: adjustment.state === 'solved' ? placeThings(context, pieceId, adjustment.solution) : new Map(),
  };
}
