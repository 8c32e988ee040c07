import { signal } from '@preact/signals';
import type { JobSummary } from '../../../device/store/index.ts';
import { sayJobs } from '../../../text/jobs.ts';
import { type JobOrder, type Looker, ORDERS, orderJobs, searchJobs } from '../../model/find-jobs.ts';
import { jobTitle } from '../../model/job-words.ts';
import { setPutAway } from '../../model/jobs.ts';
import { openJob } from '../../model/open-job.ts';
import { store } from '../../model/services.ts';

/** What the person looks for. It stays while they go into a job and come back. */
const search = signal('');
const order = signal<JobOrder>('latest');
/** Jobs put away are in the list too. */
const withAway = signal(false);
/** Every row offers to be put away. */
const tidying = signal(false);
/** Put away while the person looks on: they stay where they were, with the way back beside them. */
const justMoved = signal<ReadonlySet<string>>(new Set());
const failed = signal(false);

/** Reads the order this device was left in. */
async function ready(): Promise<void> {
  order.value =
    (await store()
      .settings.get('jobs.order')
      .catch(() => null)) ?? 'latest';
}

/** The list is left: what was put away is away. */
function leave(): void {
  justMoved.value = new Set();
  tidying.value = false;
  failed.value = false;
}

/** Whoever comes back from a job far down the list is put where they were. */
function comeBack(list: HTMLElement | null, rows: readonly JobSummary[]): void {
  const id = openJob.peek()?.id;
  const at = rows.findIndex((job) => job.id === id);
  if (at > SCREENFUL) list?.children[at]?.scrollIntoView({ block: 'center' });
}
const SCREENFUL = 4;

interface Found {
  rows: readonly JobSummary[];
  /** How many more would be found among those put away. */
  away: number;
}

let last: { key: readonly unknown[]; found: Found } | null = null;

/** What is shown of the list, in its order. Worked out once for as long as nothing changes. */
function find(list: readonly JobSummary[], looker: Looker, all: boolean): Found {
  const key = [list, looker, all, search.value, order.value, withAway.value, justMoved.value];
  if (last && key.every((part, i) => part === last?.key[i])) return last.found;
  const matching = searchJobs(list, search.value);
  const isSeen = (job: JobSummary): boolean => all || !job.archived || withAway.value || justMoved.value.has(job.id);
  const seen = matching.filter(isSeen);
  const found = { rows: orderJobs(seen, order.value, looker), away: matching.length - seen.length };
  last = { key, found };
  return found;
}

interface Props {
  list: readonly JobSummary[];
  looker: Looker;
  narrow: boolean;
  all: boolean;
  /** The list begins anew. */
  onChange: () => void;
}

function FindJobs({ list, looker, narrow, all, onChange }: Props) {
  const words = sayJobs();
  const { rows, away } = find(list, looker, all);
  return (
    <div class="stack job-finder">
      <div class="row">
        <label class="field">
          <span class="sr-only">{words.search}</span>
          <input
            type="search"
            placeholder={words.searchShort}
            value={search.value}
            autocomplete="off"
            onInput={(event) => {
              search.value = event.currentTarget.value;
              onChange();
            }}
          />
        </label>
        {!narrow && <Order onChange={onChange} />}
      </div>
      {!narrow && <Shelf list={list} />}
      <p class="small" aria-live="polite">
        {words.found(rows.length, list.length)} {search.value !== '' && away > 0 && !narrow && words.away(away)}
      </p>
    </div>
  );
}

function Order({ onChange }: Pick<Props, 'onChange'>) {
  const words = sayJobs();
  const choose = (value: string): void => {
    const chosen = ORDERS.find((candidate) => candidate === value) ?? 'latest';
    order.value = chosen;
    onChange();
    // Not kept is no harm: it is asked for again the next time.
    void store()
      .settings.set('jobs.order', chosen)
      .catch(() => undefined);
  };
  return (
    <label class="field">
      <span class="sr-only">{words.order}</span>
      <select value={order.value} onChange={(event) => choose(event.currentTarget.value)}>
        {ORDERS.map((key) => (
          <option key={key} value={key}>
            {words.orders[key]}
          </option>
        ))}
      </select>
    </label>
  );
}

/** The switches for jobs that are put away. */
function Shelf({ list }: Pick<Props, 'list'>) {
  const words = sayJobs();
  const away = list.filter((job) => job.archived).length;
  return (
    <div class="row">
      <button
        type="button"
        class="button plain"
        aria-pressed={tidying.value}
        onClick={() => {
          tidying.value = !tidying.value;
        }}
      >
        {words.tidy}
      </button>
      {away > 0 && (
        <button
          type="button"
          class="button plain"
          aria-pressed={withAway.value}
          onClick={() => {
            withAway.value = !withAway.value;
          }}
        >
          {words.showAway(away)}
        </button>
      )}
      {failed.value && <p role="alert">{words.notMoved}</p>}
    </div>
  );
}

/** Puts one job away, or takes it back: one tap, and the row stays. */
function PutAway({ job }: { job: JobSummary }) {
  const words = sayJobs();
  if (!tidying.value && !job.archived) return null;
  const move = async (): Promise<void> => {
    justMoved.value = new Set(justMoved.value).add(job.id);
    failed.value = false;
    await setPutAway(job.id, !job.archived).catch(() => {
      failed.value = true;
    });
  };
  return (
    <button type="button" class="button job-move" onClick={() => void move()}>
      {job.archived ? words.takeBack : words.putAway}
      <span class="sr-only"> {jobTitle(job)}</span>
    </button>
  );
}

/** All of it, for the list that loads it later. */
export const finder = { ready, leave, comeBack, find, FindJobs, Shelf, PutAway };
