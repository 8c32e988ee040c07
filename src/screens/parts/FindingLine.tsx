import type { Finding } from '../../core/check/index.ts';
import type { Sheet } from '../../core/job/index.ts';
import { sayFindings } from '../../text/findings.ts';
import { blindText } from '../model/blind-text.ts';
import { findingNumber, subjectNames } from '../model/findings.ts';
import { hidden, lookDue } from '../model/second-looks.ts';
import { StateMark } from './marks.tsx';

/** What a rule says, in one line: what happened and what it means. */
export function findingText(finding: Finding, sheet: Sheet): string {
  return sayFindings()[finding.rule]({
    names: subjectNames(finding, sheet),
    show: (key) => findingNumber(finding, key, sheet),
    numbers: finding.numbers,
  });
}

/** It speaks of what somebody is to read afresh: its numbers would lead them. */
const isBlind = ({ subjects }: Finding): boolean =>
  subjects.some(({ on, id }) => on === 'reading' && hidden.value.has(id));

export function FindingLine({ finding, sheet }: { finding: Finding; sheet: Sheet }) {
  const due = lookDue(finding.subjects[0]?.id ?? '') !== null;
  const text = (isBlind(finding) ? blindText(finding, sheet, due) : null) ?? findingText(finding, sheet);
  return (
    <p class="finding">
      <StateMark mark={finding.accepted ? 'good' : finding.severity}>{text}</StateMark>
    </p>
  );
}
