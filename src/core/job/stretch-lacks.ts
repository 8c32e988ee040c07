import type { Fastener, Stretch } from './sheet.ts';
import {
  type Closure,
  FASTENER_OF,
  type FastenerType,
  SCREWED_CLOSURES,
  SLIDING_CLOSURES,
  SPACED_CLOSURES,
} from './words.ts';

/**
 * What a stretch of an edge may still lack.
 * type: what closes it. presence: whether that is there. stations: where its fasteners are. ends: where a zip, a track or a
 * boltrope begins and ends. pulls: which way. count: how many are planned. into: what they are screwed into. setter: who sets them.
 */
export type StretchLack = 'type' | 'presence' | 'stations' | 'ends' | 'pulls' | 'count' | 'into' | 'setter';

/**
 * What a stretch lacks, in the order in which it is asked: only what the answers before make necessary. Fasteners that are
 * there speak for their own type and presence. What is there is measured, what is planned is counted; nothing wants nothing.
 */
export function lacksOfStretch(stretch: Stretch, fasteners: readonly Fastener[]): StretchLack[] {
  const { closes, presence, into, setter, pulls, count } = stretch;
  if (closes === 'nothing') return [];
  const bare = fasteners.length === 0;
  const planned = presence === 'planned';
  if (closes === null) {
    const untold: StretchLack[] = bare ? ['type'] : [];
    if (presence === null && bare) untold.push('presence');
    return bare && !planned ? [...untold, 'stations'] : untold;
  }
  const slides = SLIDING_CLOSURES.has(closes);
  const counted = SPACED_CLOSURES.has(closes) || closes === 'strap';
  const own = fasteners.filter(({ type }) => isOfClosure(type, closes));
  const lacks: StretchLack[] = [];
  if (presence === null && own.length === 0) lacks.push('presence');
  if (slides && pulls === null) lacks.push('pulls');
  if (planned && SCREWED_CLOSURES.has(closes) && into === null) lacks.push('into');
  if (planned && setter === null) lacks.push('setter');
  if (planned && counted && count === null) lacks.push('count');
  if (!planned && counted && own.length === 0) lacks.push('stations');
  if (!planned && slides && own.length < 2) lacks.push('ends');
  return lacks;
}

const SPACED_TYPES = new Set([...SPACED_CLOSURES].map((closure) => FASTENER_OF[closure]));

/** Whether a fastener may be one of those that close a stretch so. What is set one beside the next may have been called otherwise. */
export const isOfClosure = (type: FastenerType, closes: Closure): boolean =>
  SPACED_CLOSURES.has(closes) ? SPACED_TYPES.has(type) : FASTENER_OF[closes] === type;
