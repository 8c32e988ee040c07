import { PieceKind } from '../../job/index.ts';
import { faultOfShape } from '../plain.ts';
import { AskAgain, longAsk } from './ask.ts';
import { type Link, VERSION } from './link.ts';
import { type FrameFault, readFrame } from './read-frame.ts';
import { JobRequest, longRequest } from './request.ts';
import { lengthen } from './short.ts';

/**
 * Why a link was not taken.
 * foreign: no link of ours, or its very beginning is broken. cut-off: its end is missing. damaged: something in it was changed. newer:
 * made by a later version, or about a piece this one does not know. unreadable: whole, and yet not to be understood.
 */
export type LinkRefusal = FrameFault | 'unreadable';
export type LinkReading =
  | { readonly ok: true; readonly link: Link }
  | { readonly ok: false; readonly why: LinkRefusal };

/**
 * Reads the code of a link, whatever it is given; what a request asks for is judged by `requestFault`. Throws only where a part of the app has
 * to come first and cannot.
 */
export async function readLink(code: string): Promise<LinkReading> {
  const framed = await readFrame(code, VERSION);
  if (!framed.ok) return framed;
  const content = contentOf(framed.text);
  if (content === null) return refuse('unreadable');
  if (content.t === 'r') return readRequest(content);
  if (content.t === 'a') return readAsk(content);
  return refuse('newer');
}

function readRequest(content: Record<string, unknown>): LinkReading {
  const long = longRequest(content);
  if (namesUnknownPiece(long.pieces)) return refuse('newer');
  const parsed = JobRequest.safeParse(long);
  if (!parsed.success) return refuse('unreadable');
  return { ok: true, link: { t: 'request', request: parsed.data } };
}

function namesUnknownPiece(pieces: unknown): boolean {
  if (!Array.isArray(pieces)) return false;
  return pieces.some(
    (piece: { kind?: unknown } | null) => typeof piece?.kind === 'string' && !PieceKind.safeParse(piece.kind).success,
  );
}

function readAsk(content: Record<string, unknown>): LinkReading {
  const parsed = AskAgain.safeParse(longAsk(content));
  return parsed.success ? { ok: true, link: { t: 'ask', ask: parsed.data } } : refuse('unreadable');
}

function contentOf(text: string): Record<string, unknown> | null {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null || Array.isArray(value) || faultOfShape(value)) return null;
    return lengthen(value) as Record<string, unknown>;
  } catch {
    return null;
  }
}

const refuse = (why: LinkRefusal): LinkReading => ({ ok: false, why });
