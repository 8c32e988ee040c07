import type { Finding } from '../../core/check/index.ts';
import type { Sheet } from '../../core/job/index.ts';
import { sayFindings } from '../../text/findings.ts';
import { sayWalk } from '../../text/walk.ts';
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

/** To look again, and at what: neither what was read nor by how much it is off. */
function blindText(finding: Finding, sheet: Sheet): string {
  const words = sayWalk().again;
  const readings = finding.subjects.map(({ on }) => on === 'reading');
  const names = subjectNames(finding, sheet).filter((_, i) => readings[i]);
  if (finding.rule === 'missing-second-look') return findingText(finding, sheet);
  if (finding.severity === 'note') return words.nothingToDo(names);
  if (finding.rule !== 'takes-disagree') return words.pleaseAt(names);
  return lookDue(finding.subjects[0]?.id ?? '') ? words.onceMore(names) : words.toShop(names);
}

export function FindingLine({ finding, sheet }: { finding: Finding; sheet: Sheet }) {
  const text = isBlind(finding) ? blindText(finding, sheet) : findingText(finding, sheet);
  return (
    <p class="finding">
      <StateMark mark={finding.accepted ? 'good' : finding.severity}>{text}</StateMark>
    </p>
  );
}
