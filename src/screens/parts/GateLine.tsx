import type { Finding, Gate } from '../../core/check/index.ts';
import { say } from '../../text/index.ts';
import { Banner } from './marks.tsx';

/** One line that says it all: clear, or what is still to do. */
export function GateLine({ gate }: { gate: Gate }) {
  const words = say().dock.leave;
  if (gate.clear)
    return (
      <Banner tone="good">
        <p>
          <strong>{words.clear}</strong>
        </p>
        <p class="small">{words.clearRules}</p>
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
  'missing-run': 'run',
};

function countParts(standing: readonly Finding[]): string[] {
  const counts = new Map<Counted, number>();
  for (const finding of standing) {
    const key = counted[finding.rule] ?? 'other';
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return [...counts].map(([key, count]) => say().dock.leave.counts[key](count));
}
