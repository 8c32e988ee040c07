import { useState } from 'preact/hooks';
import type { Finding } from '../../../core/check/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { sayShop } from '../../../text/shop.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { valueText } from '../../model/words.ts';
import { findingText } from '../../parts/FindingLine.tsx';
import { StateMark } from '../../parts/marks.tsx';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';
import { readingValue } from '../names.ts';
import { isSelected, toggle } from '../state/selection.ts';

/** What a rule says; touched, everything it speaks of lights up. A doubt can be taken on with a reason. */
export function FindingRow({ finding, job, lit }: { finding: Finding; job: OpenJob; lit: boolean }) {
  const [accepting, setAccepting] = useState(false);
  const words = sayBench().findings;
  const { accepted, severity } = finding;
  const mayAccept = severity === 'doubt' && accepted === null;
  return (
    <li class={`bench-row ${lit ? 'lit' : ''}`} data-row={`finding:${finding.id}`}>
      <button
        type="button"
        class="bench-pick"
        aria-pressed={isSelected('finding', finding.id)}
        onClick={() => toggle('finding', finding.id)}
      >
        <StateMark mark={accepted ? 'good' : severity}>
          {accepted ? words.acceptedMark : say().general.severities[severity]}: {findingText(finding, job.sheet)}
        </StateMark>
      </button>
      <SisterNumbers finding={finding} job={job} />
      {accepted && <p class="small">{words.accepted(accepted.reason, whoText(accepted.who), dateText(accepted.at))}</p>}
      {mayAccept && !accepting && (
        <div>
          <button type="button" class="button plain" onClick={() => setAccepting(true)}>
            {words.accept}
            <span class="sr-only">: {findingText(finding, job.sheet)}</span>
          </button>
        </div>
      )}
      {mayAccept && accepting && (
        <ReasonPicker
          question={words.acceptWhy}
          reasons={words.acceptReasons}
          onCancel={() => setAccepting(false)}
          onReason={(reason) => {
            setAccepting(false);
            void act('finding.accept', { finding: finding.id, basis: finding.basis, reason });
          }}
        />
      )}
    </li>
  );
}

/** Both numbers, which the dock is not told. */
function SisterNumbers({ finding, job }: { finding: Finding; job: OpenJob }) {
  const reading = job.sheet.readings.find(({ id }) => finding.subjects.some((subject) => subject.id === id));
  if (finding.rule !== 'unlike-sister' || !reading?.expected) return null;
  const there = valueText(reading.expected.value, reading.kind, job.sheet);
  return (
    <p class="small bench-under">
      {sayShop().sister.both(readingValue(reading, job.sheet), there, reading.expected.from)}
    </p>
  );
}
