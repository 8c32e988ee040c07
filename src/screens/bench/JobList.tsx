import { useState } from 'preact/hooks';
import type { JobSummary } from '../../device/store/index.ts';
import { sayBench } from '../../text/bench.ts';
import { say } from '../../text/index.ts';
import { jobs } from '../model/jobs.ts';
import { routeHash } from '../model/route.ts';
import { dateText } from '../model/words.ts';

/** With more jobs than this a search is quicker than reading. */
const FEW = 6;
/** More than these are found by search, so that a device with thousands opens at once. */
const MOST = 100;

/** The jobs on this device, the newest first. */
export function JobList({ current }: { current?: string }) {
  const [search, setSearch] = useState('');
  const words = sayBench().inbox;
  const list = jobs.value;
  if (!list) return <p class="quiet">{say().general.loading}</p>;
  if (list.length === 0) return <p>{words.empty}</p>;
  const found = newestFirst(list).filter((job) => matches(job, search));
  return (
    <div class="stack">
      {list.length > FEW && (
        <label class="field">
          <span>{words.search}</span>
          <input type="search" value={search} onInput={(event) => setSearch(event.currentTarget.value)} />
        </label>
      )}
      {(search !== '' || found.length > MOST) && (
        <p class="small" aria-live="polite">
          {found.length === 0 ? words.nothing : words.found(Math.min(found.length, MOST), list.length)}
        </p>
      )}
      <ul class="list">
        {found.slice(0, MOST).map((job) => (
          <JobRow key={job.id} job={job} here={job.id === current} />
        ))}
      </ul>
    </div>
  );
}

function JobRow({ job, here }: { job: JobSummary; here: boolean }) {
  const words = sayBench().inbox;
  const pieces = job.pieces.map(({ name }) => name).join(', ') || words.noPieces;
  return (
    <li class={here ? 'here' : ''}>
      <a class="item" href={routeHash({ at: 'judge', job: job.id })} aria-current={here ? 'page' : undefined}>
        <span class="grow">
          <strong>{titleOf(job)}</strong> {job.demo && <span class="demo-mark">{words.demo}</span>}
          <span class="bench-under">{pieces}</span>
          <span class="bench-under small quiet">
            {[job.lastAt && dateText(job.lastAt), words.entries(job.entries)].filter(Boolean).join(' · ')}
          </span>
        </span>
      </a>
    </li>
  );
}

/** Customer and boat; the job's own name where neither is known. */
const titleOf = ({ customer, boat, name }: JobSummary): string =>
  [customer, boat].filter(Boolean).join(' · ') || name || sayBench().inbox.unnamed;

const newestFirst = (list: readonly JobSummary[]): JobSummary[] =>
  [...list].sort((a, b) => Date.parse(b.lastAt ?? '') - Date.parse(a.lastAt ?? '') || (a.id < b.id ? 1 : -1));

function matches({ name, customer, boat, pieces }: JobSummary, search: string): boolean {
  const text = [name, customer, boat, ...pieces.map((piece) => piece.name)].join(' ').toLocaleLowerCase();
  return search
    .toLocaleLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
