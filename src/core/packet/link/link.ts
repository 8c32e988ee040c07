import canonicalize from 'canonicalize';
import { shopFaults } from '../../check/shop-fields.ts';
import { guideOf } from '../../guide/pieces/index.ts';
import { PieceKind } from '../../job/index.ts';
import { faultOfShape } from '../plain.ts';
import { AskAgain, longAsk, shortAsk } from './ask.ts';
import { type FrameFault, lengthOfFrame, readFrame, writeFrame } from './frame.ts';
import { JobRequest, longRequest, shortRequest } from './request.ts';
import { lengthen, shorten } from './short.ts';

/** Raised when an older reader would misread what is written; what it can pass over needs no new number. */
const VERSION = 1;

/** A link, by what it is for. Its `t` is permanent. */
export type Link =
  | { readonly t: 'request'; readonly request: JobRequest }
  | { readonly t: 'ask'; readonly ask: AskAgain };

/**
 * Why a link was not taken.
 * foreign: no link of ours, or its very beginning is broken. cut-off: its end is missing. damaged: something in it was changed. newer:
 * made by a later version, or about a piece this one does not know. unreadable: whole, and yet not to be understood.
 */
export type LinkRefusal = FrameFault | 'unreadable';
export type LinkReading =
  | { readonly ok: true; readonly link: Link }
  | { readonly ok: false; readonly why: LinkRefusal };

/** The link's code, for the end of an address. Null: too much for any link. */
export function writeLink(link: Link): string | null {
  const content = link.t === 'request' ? { t: 'r', ...shortRequest(link.request) } : { t: 'a', ...shortAsk(link.ask) };
  return writeFrame(canonicalize(shorten(content)) ?? '', VERSION);
}

/** Reads the code of a link. Never throws, whatever it is given. */
export function readLink(code: string): LinkReading {
  const framed = readFrame(code, VERSION);
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
  const request = parsed.data;
  if (request.limits && shopFaults(request.limits).length > 0) return refuse('unreadable');
  return { ok: true, link: { t: 'request', request } };
}

function namesUnknownPiece(pieces: unknown): boolean {
  if (!Array.isArray(pieces)) return false;
  return pieces.some((piece: { kind?: unknown } | null) => {
    const known = PieceKind.safeParse(piece?.kind);
    return typeof piece?.kind === 'string' && (!known.success || guideOf(known.data) === undefined);
  });
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

/** What every address of a link has before its code. */
const LINK_FRAGMENT = '#/r/';

/** The address of a link. page: the app's own, without its fragment. */
export const linkAddress = (page: string, code: string): string => `${page}${LINK_FRAGMENT}${code}`;

/** The code of the first link in a text, whatever stands round it; mail may have broken its lines. Null where there is none. */
export function codeInText(text: string): string | null {
  const at = text.indexOf(LINK_FRAGMENT);
  if (at < 0) return null;
  const rest = text.slice(at + LINK_FRAGMENT.length);
  const unbroken = rest.replace(/\s+/g, '');
  const length = lengthOfFrame(unbroken);
  return length === null ? (/^[\w-]*/.exec(rest)?.[0] ?? '') : unbroken.slice(0, length);
}
