import { contradictionsTakenOn, type Finding } from '../../core/check/index.ts';
import { say } from '../../text/index.ts';
import type { OpenJob } from '../model/open-job.ts';
import { lookDue } from '../model/second-looks.ts';
import { sureText, worstSureness } from '../model/sureness.ts';
import { Banner } from './marks.tsx';

/** One line that says it all: clear, or what is still to do. */
export function GateLine({ job }: { job: OpenJob }) {
  const words = say().dock.leave;
  const gate = job.gates.leave;
  const sure = worstSureness(job);
  if (!job.judged) return <Banner tone="note">{words.checking}</Banner>;
  if (gate.clear && job.sheet.pieces.some(({ id }) => contradictionsTakenOn(job.findings, id).length > 0))
    return (
      <Banner tone="doubt">
        <p>
          <strong>{words.clearTakenOn}</strong>
        </p>
      </Banner>
    );
  if (gate.clear)
    return (
      <Banner tone="good">
        <p>
          <strong>{sure === null ? words.clear : words.clearWithin(sureText(sure, job.sheet))}</strong>
        </p>
        {sure === null && <p class="small">{words.clearRules}</p>}
      </Banner>
    );
  return (
    <Banner tone="stop">
      <p>
        <strong>{words.notYet(words.and(countParts(gate.standing)))}</strong>
      </p>
    </Banner>
  );
}

type Counted = keyof ReturnType<typeof say>['dock']['leave']['counts'];

const counted: Partial<Record<Finding['rule'], Counted>> = {
  'missing-reading': 'reading',
  'unmeasured-reading': 'reading',
  'missing-photo': 'shot',
  'missing-mark': 'shot',
  'missing-answer': 'question',
  'unsure-choice': 'question',
  'choice-conflict': 'question',
  'missing-run': 'run',
  'missing-treatment': 'thing',
  'missing-cord-exit': 'thing',
  'cleat-covered': 'thing',
  'missing-second-look': 'second',
  'reading-unchecked': 'second',
  'reading-doubted': 'second',
  'slip-unseen': 'second',
  'point-floats': 'point',
  'point-loose': 'point',
  'two-shapes': 'shape',
  'shape-unknown': 'shape',
  'unlike-sister': 'second',
};

/** Two looks that differ are one more look to whoever is led through it. */
const lookOf = ({ rule, subjects: [first] }: Finding): boolean =>
  rule === 'takes-disagree' && first !== undefined && lookDue(first.id) !== null;

function countParts(standing: readonly Finding[]): string[] {
  const counts = new Map<Counted, number>();
  for (const finding of standing) {
    const key = lookOf(finding) ? 'second' : (counted[finding.rule] ?? 'other');
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return [...counts].map(([key, count]) => say().dock.leave.counts[key](count));
}
