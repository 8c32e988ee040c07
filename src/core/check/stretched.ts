import { fastenersByStretch, nominalPlaces } from '../geometry/index.ts';
import { type Fastener, type SheetRun, SPACED_CLOSURES, type Stretch } from '../job/index.ts';
import type { Context } from './context.ts';

/** A stretch of an edge and the fasteners that lie in it. */
export interface Stretched {
  readonly stretch: Stretch;
  readonly fasteners: readonly Fastener[];
}

const known = new WeakMap<SheetRun, Stretched[]>();

/** The stretches of an edge in order, each with its fasteners. Kept for the run: several rules ask, and sheets never change. */
export function stretched({ sheet }: Pick<Context, 'sheet'>, run: SheetRun): readonly Stretched[] {
  const before = known.get(run);
  if (before) return before;
  const lists = fastenersByStretch(run, sheet, nominalPlaces(sheet));
  const made = run.stretches.map((stretch, index) => ({ stretch, fasteners: lists[index] ?? [] }));
  known.set(run, made);
  return made;
}

/** Whether two fasteners lie in one stretch, as far as anybody can tell. */
export const together = (parts: readonly Stretched[], a: Fastener | null, b: Fastener | null): boolean =>
  a === null || b === null || parts.some(({ fasteners }) => fasteners.includes(a) && fasteners.includes(b));

/** A row set one beside the next that is on the boat: only such a row should begin and end near its corners. */
export const isRow = ({ stretch: { closes, presence } }: Stretched): boolean =>
  presence !== 'planned' && (closes === null || SPACED_CLOSURES.has(closes));
