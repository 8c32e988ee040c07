import type { PaperStep } from '../../core/guide/again/index.ts';
import type { Sheet } from '../../core/job/index.ts';

/** What goes on paper. drawn: the piece as it is drawn before anything was measured. second: readings that are read twice. */
export interface PaperContent {
  readonly sheet: Sheet;
  readonly piece: string;
  readonly name: string;
  readonly steps: readonly PaperStep[];
  readonly drawn: Sheet;
  readonly second: ReadonlySet<string>;
}
