/** The consistency checker: what is missing, impossible or doubtful in a sheet, and what that leaves standing. */
export { rules } from './catalogue.ts';
export { Finding, RuleKey, Severity, type Subject } from './finding.ts';
export { type Gate, gates } from './gates.ts';
export { defaultLimits, type Limits } from './limits.ts';
export type { Rule } from './rule.ts';
export { type CheckOptions, check } from './runner.ts';
export { defaultInstruments, type Instruments, sigmaOf } from './sigma.ts';
