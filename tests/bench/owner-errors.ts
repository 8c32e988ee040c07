/** How far what a cleared packet says lies from the truth, as a share of twice what the piece allows. */
import { type defaultLimits, judge, solutionOf } from '../../src/core/check/index.ts';
import { FACT_KINDS, type Sheet } from '../../src/core/job/index.ts';
import { apart } from '../core/check/build.ts';
import type { Measured, Place } from '../core/check/measured.ts';

/**
 * Distances of each point the cloth depends on to its neighbours, which need no common frame; and what stands for itself: heights,
 * and sizes that fix no point, as they are counted.
 */
export function errorsOf(
  sheet: Sheet,
  measured: Measured,
  truth: ReadonlyMap<string, Place>,
  limits: typeof defaultLimits,
): { share: number; worst: string } {
  const judgement = judge(sheet).pieces.get(measured.piece.id);
  const solution = judgement ? solutionOf(judgement.adjustment) : null;
  const slots = new Map(measured.piece.points.map(({ id, slot }) => [id, slot ?? '']));
  const roles = new Map(measured.piece.points.map(({ id, role }) => [id, role]));
  const allowed = (id: string): number => {
    const role = roles.get(id);
    return 2 * limits.ownerFactor * limits.tolerance[role === 'corner' || role === 'mount' ? 'corner' : 'line'];
  };
  let [share, worst] = [0, ''];
  const note = (error: number, limit: number, what: string): void => {
    if (error / limit <= share) return;
    [share, worst] = [error / limit, `${what} ${error.toFixed(0)} mm`];
  };
  const places = new Map(solution?.points.map(({ id, position }) => [id, position]));
  for (const { id, needed, neighbours = [] } of judgement?.network.points ?? [])
    for (const other of needed ? neighbours : []) {
      const [a, b] = [places.get(id), places.get(other)];
      const [trueA, trueB] = [truth.get(slots.get(id) ?? ''), truth.get(slots.get(other) ?? '')];
      if (a && b && trueA && trueB)
        note(Math.abs(apart(a, b) - apart(trueA, trueB)), allowed(id), `${slots.get(id)}-${slots.get(other)}`);
    }
  const inNetwork = new Set(judgement?.network.readings.map(({ id }) => id));
  for (const { id, kind, slot, value, needed, points } of sheet.readings) {
    if (!needed || slot === null || value === null || FACT_KINDS.has(kind)) continue;
    if (inNetwork.has(id) && kind !== 'height') continue;
    note(Math.abs(value - measured.length(slot)), allowed(points[0] ?? ''), slot);
  }
  return { share, worst };
}
