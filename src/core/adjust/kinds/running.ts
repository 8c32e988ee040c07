import { ix } from '../array.ts';
import { arcsThrough } from './girth.ts';
import { baselineOf, clear, type Kind, needs } from './kind.ts';
import { station } from './line.ts';
import { chord } from './straight.ts';

/**
 * Cumulative reading along a run, from its start to a point (the points between may be listed). On a straight run with
 * its two ends as baseline: the difference of stations; without a baseline: the distance from the start. On a run of
 * unknown shape: a one-sided check like a girth.
 */
export const running: Kind = {
  unusable: (reading) => needs(reading, 2, false) ?? baselineOf(reading, [0, 2]),
  rows: (reading) => (reading.shape === 'unknown' ? 0 : 1),
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs, points, reading } = prepared;
    clear(jacobian, slot, refs.length);
    const last = points - 1;
    if (refs.length > points) {
      const a = ix(refs, points);
      const b = ix(refs, points + 1);
      const slots = [slot + 3 * points, slot + 3 * points + 3] as const;
      const to = station(x, [ix(refs, last), a, b], false, 1, jacobian, [slot + 3 * last, ...slots]);
      const from = station(x, [ix(refs, 0), a, b], false, -1, jacobian, [slot, ...slots]);
      computed[row] = to - from;
    } else if (reading.shape === 'arc') {
      computed[row] = arcsThrough(prepared, x, jacobian, slot);
    } else {
      computed[row] = chord(x, ix(refs, 0), ix(refs, last), jacobian, slot, slot + 3 * last, true);
    }
  },
};
