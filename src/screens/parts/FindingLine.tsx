import type { Finding } from '../../core/check/index.ts';
import type { Sheet } from '../../core/job/index.ts';
import { sayFindings } from '../../text/findings.ts';
import { findingNumber, subjectNames } from '../model/findings.ts';
import { StateMark } from './marks.tsx';

/** What a rule says, in one line: what happened and what it means. */
export function findingText(finding: Finding, sheet: Sheet): string {
  return sayFindings()[finding.rule]({
    names: subjectNames(finding, sheet),
    show: (key) => findingNumber(finding, key, sheet),
    numbers: finding.numbers,
  });
}

export function FindingLine({ finding, sheet }: { finding: Finding; sheet: Sheet }) {
  return (
    <p class="finding">
      <StateMark mark={finding.accepted ? 'good' : finding.severity}>{findingText(finding, sheet)}</StateMark>
    </p>
  );
}
