import { useEffect, useState } from 'preact/hooks';
import type { Finding, PieceChanges } from '../../../core/check/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { dateText, jobTitle } from '../../model/job-words.ts';
import { jobs, readJobs } from '../../model/jobs.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { valueText } from '../../model/words.ts';
import { findingText } from '../../parts/FindingLine.tsx';
import { differenceText } from '../engine-words.ts';
import { readingTitle } from '../names.ts';
import { type Against, compared, statesOf } from '../state/compare.ts';
import { Section } from './Section.tsx';
import { ShapeOverShape } from './ShapeOverShape.tsx';

/** One state of the job beside another, or this boat beside a sister: what changed, by how much, what that settled. */
export function CompareSection({ job, piece }: { job: OpenJob; piece: string }) {
  const [against, setAgainst] = useState<Against | null>(null);
  const changes = useChanges(job, against);
  const words = sayBench().compare;
  const own = changes === 'working' || changes === 'gone' ? null : changes?.find((one) => one.piece === piece);
  return (
    <Section at="compare">
      <ChooseState job={job} onChoose={setAgainst} />
      {changes === 'working' && <p class="quiet">{words.working}</p>}
      {changes === 'gone' && <p>{words.gone}</p>}
      {own && <Changes changes={own} job={job} />}
    </Section>
  );
}

function useChanges(job: OpenJob, against: Against | null): PieceChanges[] | 'working' | 'gone' | null {
  const [changes, setChanges] = useState<PieceChanges[] | 'working' | 'gone' | null>(null);
  useEffect(() => {
    let isOver = false;
    setChanges(against && 'working');
    if (against && job.judged)
      void compared(job, against).then((made) => {
        if (!isOver) setChanges(made ?? 'gone');
      });
    return () => {
      isOver = true;
    };
  }, [job, against]);
  return changes;
}

/** States of this job first, then jobs with a piece of the same kind. */
function ChooseState({ job, onChoose }: { job: OpenJob; onChoose: (against: Against | null) => void }) {
  const words = sayBench().compare;
  useEffect(() => void readJobs().catch(() => undefined), []);
  const kinds = new Set(job.sheet.pieces.map(({ kind }) => kind));
  const boats = (jobs.value ?? []).filter(
    ({ id, pieces }) => id !== job.id && pieces.some(({ kind }) => kinds.has(kind)),
  );
  const choices: { name: string; against: Against }[] = [
    ...statesOf(job).map((state) => ({ name: stateName(state), against: state })),
    ...boats.map((boat) => ({ name: words.job(jobTitle(boat)), against: { as: 'job' as const, job: boat.id } })),
  ];
  return (
    <label class="field">
      <span>{words.with}</span>
      <select onChange={(event) => onChoose(choices[Number(event.currentTarget.value)]?.against ?? null)}>
        <option value="-1">{words.nothing}</option>
        {choices.map(({ name }, i) => (
          <option key={`${i} ${name}`} value={i}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}

function stateName(state: Against): string {
  const words = sayBench().compare;
  if (state.as === 'job') return state.job;
  return (state.as === 'asked' ? words.asked : words.cleared)(dateText(state.at), state.who);
}

function Changes({ changes, job }: { changes: PieceChanges; job: OpenJob }) {
  const words = sayBench().compare;
  const { readings, came, gone, fit } = changes;
  if (readings.length + came.length + gone.length === 0 && (fit?.rms ?? 0) < 0.5) return <p>{words.none}</p>;
  return (
    <>
      <ChangedReadings changes={changes} job={job} />
      <Said heading={words.went} findings={gone} job={job} />
      <Said heading={words.came} findings={came} job={job} />
      <h3>{words.shape}</h3>
      {fit ? <ShapeOverShape fit={fit} changes={changes} job={job} /> : <p>{words.noShape}</p>}
    </>
  );
}

function ChangedReadings({ changes, job }: { changes: PieceChanges; job: OpenJob }) {
  const words = sayBench().compare;
  const { sheet } = job;
  if (changes.readings.length === 0) return null;
  return (
    <>
      <h3>{words.readings}</h3>
      <table class="bench-table">
        <thead>
          <tr>
            {[words.reading, words.before, words.after, words.difference].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {changes.readings.map(({ reading, before, after }) => {
            const kind = sheet.readings.find(({ id }) => id === reading)?.kind ?? 'straight';
            const shown = (value: number | null) => (value === null ? words.noValue : valueText(value, kind, sheet));
            return (
              <tr key={reading}>
                <th scope="row">{readingTitle(sheet, reading)}</th>
                <td class="number">{shown(before)}</td>
                <td class="number">{shown(after)}</td>
                <td class="number">
                  {before !== null && after !== null && differenceText(after - before, kind === 'lean', sheet)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </>
  );
}

function Said({ heading, findings, job }: { heading: string; findings: readonly Finding[]; job: OpenJob }) {
  if (findings.length === 0) return null;
  return (
    <>
      <h3>{heading}</h3>
      <ul class="stack">
        {findings.map((finding) => (
          <li key={finding.id}>{findingText(finding, job.sheet)}</li>
        ))}
      </ul>
    </>
  );
}
