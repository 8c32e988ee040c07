import { type Finding, takenOnAs } from '../../../core/check/index.ts';
import { say } from '../../../text/index.ts';
import { saySheet } from '../../../text/sheet.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import { lengthText } from '../../model/words.ts';
import type { Block } from '../../paper/blocks.tsx';
import { findingText } from '../../parts/FindingLine.tsx';
import { clearanceOf } from '../sections/Clearances.tsx';
import { plain, under } from './block-parts.tsx';
import type { SheetContent } from './sheet-content.ts';

const WEIGHT: Readonly<Record<Finding['severity'], number>> = { stop: 0, doubt: 1, note: 2 };

/** Whether it may be cut, what stands against it, what was taken on and why, and what the shop adds. */
export function decisionBlocks(content: SheetContent): Block[] {
  const words = saySheet();
  const { job, piece } = content;
  const own = job.findings
    .filter((finding) => finding.piece === null || finding.piece === piece.id)
    .sort((a, b) => WEIGHT[a.severity] - WEIGHT[b.severity]);
  const standing = own.filter(({ accepted }) => accepted === null);
  const accepted = own.filter((finding) => finding.accepted !== null);
  const lines = (findings: readonly Finding[]): Block[] =>
    findings.map((finding) =>
      plain(`finding ${finding.id}`, () => <FindingOnPaper finding={finding} content={content} />),
    );
  return [
    ...under('decision', words.decision, [plain('decided', () => <Decided content={content} />)]),
    ...under(
      'standing',
      words.standing,
      standing.length > 0 ? lines(standing) : [plain('none standing', () => <p>{words.noneStanding}</p>)],
    ),
    ...under('accepted', words.accepted, lines(accepted)),
    ...under('allowances', words.allowances, [plain('allowance', () => <Allowances content={content} />)]),
  ];
}

function Decided({ content: { facts, job, piece } }: { content: SheetContent }) {
  const words = saySheet();
  const last = clearanceOf(job.sheet, piece.id);
  if (!last) return <p>{words.notCleared}</p>;
  if (!facts.isCleared) return <p>{words.voided(whoText(last.who), dateText(last.at))}</p>;
  const over = takenOnAs(job.findings, piece.id, job.pieces.get(piece.id));
  return (
    <p>
      <strong>{facts.cleared}.</strong> {words.basis[over ?? last.basis]}
    </p>
  );
}

function FindingOnPaper({ finding, content: { job } }: { finding: Finding; content: SheetContent }) {
  const { accepted, severity } = finding;
  return (
    <p class="sheet-finding">
      <strong>{say().general.severities[severity]}</strong>
      <span>
        {findingText(finding, job.sheet)}
        {accepted && <em> {saySheet().because(accepted.reason, whoText(accepted.who), dateText(accepted.at))}</em>}
      </span>
    </p>
  );
}

function Allowances({ content: { job } }: { content: SheetContent }) {
  const words = saySheet();
  const { hem = 0, trim = 0, hollow = 0 } = job.sheet.shop ?? {};
  const told = [
    hem > 0 && words.allowance.hem(lengthText(hem, job.sheet)),
    trim > 0 && words.allowance.trim(lengthText(trim, job.sheet)),
    hollow > 0 && words.allowance.hollow(String(Number((hollow * 100).toFixed(1)))),
  ].filter((one) => typeof one === 'string');
  return <p>{told.length > 0 ? `${told.join(' · ')}. ${words.allowanceApart}` : words.noAllowance}</p>;
}
