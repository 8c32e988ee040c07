import type { Context } from './context.ts';
import type { Finding, RuleKey, Severity, Subject } from './finding.ts';

/** A finding before the runner names it. basis: ids in any order. */
export interface Draft {
  readonly severity: Severity;
  readonly piece: string | null;
  readonly slot: string | null;
  readonly subjects: readonly Subject[];
  readonly numbers: Finding['numbers'];
  readonly basis: readonly string[];
}

/** One thing that is looked for. Pure: the same context gives the same drafts. */
export interface Rule {
  readonly key: RuleKey;
  find(context: Context): Draft[];
}
