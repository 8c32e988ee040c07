export { adjust } from './adjust.ts';
export type * from './model.ts';
export { READING_KINDS } from './model.ts';
export { type Random, seededRandom } from './random.ts';
export type * from './result.ts';
export { defaultSigma, SIGMA_RULES } from './sigma.ts';
export { SLIP_SHARES, type SlipKind } from './slips/kinds.ts';
export { nameSlips } from './slips/name.ts';
export type { Explanation, SlipReport, SupposedSlip } from './slips/report.ts';
