import * as z from 'zod/mini';
import { Id, Slot, Who } from '../job/index.ts';

/** Permanent keys of the rules: file name, text key and test name are the same word. Never reused. */
export const RuleKey = z.enum([
  'missing-reading',
  'unmeasured-reading',
  'missing-photo',
  'missing-mark',
  'missing-answer',
  'missing-run',
  'implausible-value',
  'takes-disagree',
  'impossible-triangle',
  'box-diagonals',
  'impossible-tetrahedron',
  'girth-short',
  'run-backwards',
  'run-sum',
  'fastener-gap',
  'port-starboard',
  'disputed',
  'unsure-choice',
  'choice-conflict',
  'carried',
  'asked-again',
  'reading-doubted',
  'point-floats',
  'two-shapes',
  'reading-unchecked',
  'point-loose',
  'slip-unseen',
  'shape-unknown',
  'not-measured-again',
  'unlike-sister',
  'cleat-covered',
  'fastener-on-obstruction',
  'missing-cord-exit',
  'missing-treatment',
  'missing-second-look',
]);
export type RuleKey = z.infer<typeof RuleKey>;

/**
 * stop: the piece cannot be cut from this; near-zero false alarms; cannot be accepted.
 * doubt: look again, or accept it with a reason. note: worth knowing, holds nothing up.
 */
export const Severity = z.enum(['stop', 'doubt', 'note']);
export type Severity = z.infer<typeof Severity>;

/**
 * What a finding speaks of. Shots and questions are named by their slot, which is unique inside a piece only, so
 * their piece is a subject too. A detail is the name of a field ('line', 'presence', 'customer').
 */
const Subject = z.object({
  on: z.enum(['reading', 'point', 'run', 'shot', 'question', 'take', 'piece', 'entry', 'detail', 'obstruction']),
  id: z.string(),
});
export type Subject = z.infer<typeof Subject>;

/**
 * What a rule says about a sheet.
 * id: rule and sorted subject ids, the same whenever the same thing is found again. numbers: millimetres unless the
 * rule says otherwise. basis: what it rests on (sorted ids of takes or entries); an acceptance holds only while this is
 * the same. slot: the step where a person deals with it. accepted: who took the doubt on, and why.
 */
export const Finding = z.object({
  id: z.string(),
  rule: RuleKey,
  severity: Severity,
  piece: z.nullable(Id),
  subjects: z.array(Subject),
  numbers: z.record(z.string(), z.union([z.number(), z.string(), z.null()])),
  basis: z.string(),
  slot: z.nullable(Slot),
  accepted: z.nullable(z.object({ reason: z.string(), who: Who, at: z.string() })),
});
export type Finding = z.infer<typeof Finding>;
