import type { Sheet } from '../job/index.ts';
import type { Finding, RuleKey } from './finding.ts';
import { inWalkingOrder } from './walk.ts';

/** Whether a gate is open, and what stands in the way, in walking order. */
export interface Gate {
  readonly clear: boolean;
  readonly standing: Finding[];
}

/**
 * The two gates of a job, or of one piece of it (with what belongs to no piece).
 * leave: nothing impossible or missing, and every doubt accepted with a reason, while the boat is still there.
 * cut: the same, and everything the shop asked again is answered. An open ask does not hold anybody at the dock who
 * measured what the guide wanted; it is shown there as an open step. Notes never stand in the way.
 */
export function gates(sheet: Sheet, findings: readonly Finding[], piece?: string): { leave: Gate; cut: Gate } {
  const standing = inWalkingOrder(sheet, findings).filter(
    (finding) =>
      (piece === undefined || finding.piece === null || finding.piece === piece) &&
      (finding.severity === 'stop' || (finding.severity === 'doubt' && finding.accepted === null)),
  );
  return { leave: gate(standing.filter((finding) => finding.rule !== 'asked-again')), cut: gate(standing) };
}

const gate = (standing: Finding[]): Gate => ({ clear: standing.length === 0, standing });

const CONTRADICTS: ReadonlySet<RuleKey> = new Set(['reading-doubted', 'takes-disagree']);

/** Readings of a piece that contradict others and were taken on with a reason: the shape is bent by them. */
export const contradictionsTakenOn = (findings: readonly Finding[], piece: string): Finding[] =>
  findings.filter((finding) => finding.piece === piece && finding.accepted !== null && CONTRADICTS.has(finding.rule));
