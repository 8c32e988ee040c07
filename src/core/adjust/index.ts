/**
 * The measuring engine: from readings to coordinates with their uncertainty, or the named reason why not. This file is
 * the room's only public face; the room knows no job, no screen and no clock, and every result is deterministic.
 *
 * Contract
 * - Lengths in mm, angles in rad, frame x forward, y to port, z up. Results are plain data (positions of other shapes in
 *   a Map), so they cross to a worker and back.
 * - `adjust(network, options)` ends as `solved`, `not-enough-readings`, `singular`, `two-shapes` or `did-not-converge`.
 *   All but the last carry a `solution`; a floating point there has no covariance. Pass the last positions as `start`
 *   after each take, and `seekShapes: false` where only the numbers are wanted.
 * - Standard deviations are a priori; multiply by `unitError` for a posteriori ones. `relative95` is the largest
 *   semi-axis (mm, 95 %) relative to marks and neighbours and does not depend on the datum.
 * - Tests: false-alarm rate `jobAlpha` (0.004) shared over all checked readings (Šidák) and `globalAlpha` (0.001);
 *   smallest visible slips are stated for `power` 0.8. Without spares the verdict is `cannot tell`.
 * - `handedness`: `open` where nothing told the shape from its mirror image; declare sides. `two-shapes` is for partial
 *   mirror images, which a tape can tell apart.
 * - `jointOf` gives the variance of any value that depends on several places, with all their covariances; no datum
 *   shows in it.
 * - `nameSlips` explains a doubted adjustment; heavier than `adjust` (tens of ms), meant for a worker.
 * - `nextTapes` ranks the straight readings still to be had and gives a small (greedy) set that clears the job.
 */
export { adjust } from './adjust.ts';
export { fitOver, type ShapeFit } from './fit-over.ts';
export { type Joint, jointOf, type Slopes } from './joint.ts';
export type * from './model.ts';
export { type NextTape, nextTapes, type TapeAdvice } from './next-tapes.ts';
export { seededRandom } from './random.ts';
export type * from './result.ts';
export { defaultSigma } from './sigma.ts';
export type { SlipKind } from './slips/kinds.ts';
export { misreadings } from './slips/misreadings.ts';
export { nameSlips } from './slips/name.ts';
export type { Explanation, SlipReport, SupposedSlip } from './slips/report.ts';
export { chiSquareUpperQuantile } from './statistics.ts';
