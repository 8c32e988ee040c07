import type { ComponentChildren } from 'preact';
import type { JobSummary } from '../../../device/store/index.ts';
import { say } from '../../../text/index.ts';
import { copyState } from '../../model/copy-state.ts';
import { dateText, jobTitle, pieceName } from '../../model/job-words.ts';
import { type Route, routeHash } from '../../model/route.ts';
import { actor } from '../../model/services.ts';
import { StateMark } from '../marks.tsx';

interface Props {
  job: JobSummary;
  to: Route;
  /** It is the job on the screen. */
  here?: boolean;
  /** What can be done with it besides opening it. */
  children?: ComponentChildren;
}

/** A job in a list: what it is, how far it is, and whether anybody else has it. */
export function JobRow({ job, to, here = false, children }: Props) {
  const { title, under } = linesOf(job);
  return (
    <li class={here ? 'here' : ''}>
      <a class="item" href={routeHash(to)} aria-current={here ? 'page' : undefined}>
        <span class="grow">
          <strong class="job-name">{title}</strong>
          {job.demo && <span class="demo-mark">{say().dock.jobs.demoMark}</span>}
          <span class="job-under quiet small">{under}</span>
          <JobMarks job={job} />
        </span>
      </a>
      {children}
    </li>
  );
}

function linesOf(job: JobSummary): { title: string; under: string } {
  const title = jobTitle(job);
  const more = [job.customer, job.boat].filter((name) => name !== '' && !title.includes(name));
  const pieces = job.pieces.map(pieceName).join(', ') || say().dock.jobs.noPiece;
  return { title, under: [...more, pieces, job.lastAt ? dateText(job.lastAt) : ''].filter(Boolean).join(' · ') };
}

function JobMarks({ job }: { job: JobSummary }) {
  const words = say().dock.jobs;
  const { standing, pieces } = job;
  const away = job.archived && <StateMark mark="note">{words.putAway}</StateMark>;
  if (standing?.waiting)
    return (
      <span class="job-marks small">
        {away}
        <StateMark mark="open">{words.waiting}</StateMark>
      </span>
    );
  return (
    <span class="job-marks small">
      {away}
      {standing && standing.asked > 0 && <StateMark mark="doubt">{words.asked(standing.asked)}</StateMark>}
      {standing && standing.voided > 0 && (
        <StateMark mark="doubt">{words.voided(standing.voided, pieces.length)}</StateMark>
      )}
      {standing && standing.cleared > 0 && (
        <StateMark mark="good">{words.cleared(standing.cleared, pieces.length)}</StateMark>
      )}
      {/* An owner is told in measurements how far a job is, once it is open: another number here would be another thing. */}
      {standing && standing.steps > 0 && actor.value.role !== 'owner' && (
        <StateMark mark={standing.done === standing.steps ? 'good' : 'open'}>
          {words.steps(standing.done, standing.steps)}
        </StateMark>
      )}
      {!job.demo && <CopyMark job={job} />}
    </span>
  );
}

function CopyMark({ job }: { job: JobSummary }) {
  const words = say().dock.jobs;
  const state = copyState(job);
  if (state === 'same')
    return <StateMark mark="good">{job.lastCopy?.how === 'received' ? words.asReceived : words.copied}</StateMark>;
  return <StateMark mark="doubt">{state === 'none' ? words.notSent : words.changedSince}</StateMark>;
}
