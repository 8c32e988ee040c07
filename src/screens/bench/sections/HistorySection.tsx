import { useMemo, useState } from 'preact/hooks';
import { type Entry, inForceCheck } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { historyText } from '../history-words.ts';
import { orderOf } from '../state/answers-since.ts';
import { entrySubjects } from '../state/entry-subjects.ts';
import type { Lit } from '../state/lit.ts';
import { isSelected, toggle } from '../state/selection.ts';
import { Section } from './Section.tsx';

const LATEST = 12;

/** Who did what when, the newest first by what each had seen, never by a clock. */
export function HistorySection({ job, lit, kept }: { job: OpenJob; lit: Lit; kept: Lit }) {
  const [all, setAll] = useState(false);
  const words = sayBench().history;
  const newest = useMemo(() => [...orderOf(job.entries).ordered].reverse(), [job.entries]);
  const inForce = useMemo(() => inForceCheck(job.entries), [job.entries]);
  // What is selected shows its history, however long ago it was.
  const shown = all ? newest : newest.filter((entry, index) => index < LATEST || kept.entries.has(entry.id));
  return (
    <Section at="history">
      <ul class="list">
        {shown.map((entry) => (
          <HistoryLine
            key={entry.id}
            entry={entry}
            job={job}
            lit={lit.entries.has(entry.id)}
            takenBack={!inForce(entry.id)}
          />
        ))}
      </ul>
      {newest.length > LATEST && (
        <button type="button" class="button" onClick={() => setAll(!all)} aria-expanded={all}>
          {all ? words.fewer : words.all(newest.length)}
        </button>
      )}
    </Section>
  );
}

function HistoryLine(props: { entry: Entry; job: OpenJob; lit: boolean; takenBack: boolean }) {
  const { entry, job, lit } = props;
  const text = (
    <span>
      {props.takenBack ? <s>{historyText(entry, job)}</s> : historyText(entry, job)}{' '}
      <span class="small quiet">
        {say().general.signedBy(whoText(entry.who), dateText(entry.at))}
        {props.takenBack && ` · ${sayBench().history.takenBack}`}
      </span>
    </span>
  );
  const linked = entrySubjects(entry, job.sheet).some(({ on }) => on !== 'piece');
  return (
    <li class={`bench-row ${lit ? 'lit' : ''}`}>
      {linked ? (
        <button
          type="button"
          class="bench-pick"
          aria-pressed={isSelected('entry', entry.id)}
          onClick={() => toggle('entry', entry.id)}
        >
          {text}
        </button>
      ) : (
        <p class="bench-line-text">{text}</p>
      )}
    </li>
  );
}
