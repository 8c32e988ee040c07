import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { JobSummary } from '../../../device/store/index.ts';
import { say } from '../../../text/index.ts';
import type { Looker } from '../../model/find-jobs.ts';
import { jobs, jobsToCome } from '../../model/jobs.ts';
import './jobs.css';

/** With no more jobs than this, reading is quicker than searching. */
const FEW = 6;
/** So many rows are drawn at once; more when asked for. */
const PAGE = 30;
const shown = signal(PAGE);

/** Search, order and putting away come after the list itself. */
type Finder = typeof import('./finder.tsx')['finder'];
let come: Finder | null = null;

interface Props {
  looker: Looker;
  /** What is said when there is no job. */
  empty: string;
  /** Room for one column only: search, and nothing else. */
  narrow?: boolean;
  /** Those put away are in it too. */
  all?: boolean;
  /** A row of its own key. more: what can be done with the job besides. */
  row: (job: JobSummary, more: JSX.Element | null) => JSX.Element;
}

/** The jobs on this device, a page of them at a time: thousands open as quickly as ten. */
export function JobList({ looker, empty, narrow = false, all = false, row }: Props) {
  const list = jobs.value;
  const finder = useFinder((list?.length ?? 0) > 0);
  const rows = finder?.find(list ?? [], looker, all).rows ?? list?.filter((job) => all || !job.archived) ?? [];
  const place = useRef<HTMLUListElement>(null);
  useEffect(() => {
    if (!narrow) finder?.comeBack(place.current, rows);
  }, []);
  if (!list) return <p class="quiet">{say().general.loading}</p>;
  if (list.length === 0 && jobsToCome.value === 0) return <p>{empty}</p>;
  const many = list.length > FEW;
  return (
    <div class="stack">
      {finder && many && <finder.FindJobs list={list} looker={looker} narrow={narrow} all={all} onChange={first} />}
      <ul class="list" ref={place}>
        {rows.slice(0, shown.value).map((job) => row(job, finder && <finder.PutAway job={job} />))}
      </ul>
      <More left={rows.length - shown.value} />
      {finder && !many && !narrow && <finder.Shelf list={list} />}
    </div>
  );
}

function first(): void {
  shown.value = PAGE;
}

function More({ left }: { left: number }) {
  const words = say().dock.jobs;
  return (
    <>
      {jobsToCome.value > 0 && <p class="quiet">{words.toCome(jobsToCome.value)}</p>}
      {left > 0 && (
        <button
          type="button"
          class="button wide"
          onClick={() => {
            shown.value += PAGE;
          }}
        >
          {words.more(Math.min(left, PAGE), left)}
        </button>
      )}
    </>
  );
}

function useFinder(wanted: boolean): Finder | null {
  const [finder, setFinder] = useState(come);
  useEffect(() => {
    if (!wanted || finder) return;
    void import('./finder.tsx').then(async ({ finder: loaded }) => {
      await loaded.ready();
      come = loaded;
      setFinder(loaded);
    });
  }, [wanted]);
  useEffect(() => () => come?.leave(), []);
  return finder;
}
