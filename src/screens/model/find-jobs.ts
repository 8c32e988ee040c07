import type { JobSummary, Setting } from '../../device/store/index.ts';
import { copyState } from './copy-state.ts';
import { jobTitle, pieceName } from './job-words.ts';

export type JobOrder = Setting<'jobs.order'>;
export const ORDERS = ['latest', 'need', 'customer', 'boat'] as const satisfies readonly JobOrder[];

/** Who looks: at the dock what is to be measured comes first, at the bench what is to be decided. */
export type Looker = 'dock' | 'bench';

/** Letters that are not a plain letter with a mark on it. */
const PLAIN: Readonly<Record<string, string>> = {
  ø: 'o',
  æ: 'ae',
  œ: 'oe',
  ß: 'ss',
  đ: 'd',
  ð: 'd',
  ł: 'l',
  þ: 'th',
  ı: 'i',
};

/** Text as it is searched: without case, accents and marks between words. */
export function folded(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\p{M}'’ʼ`]+/gu, '')
    .toLowerCase()
    .replace(/[øæœßđðłþı]/g, (letter) => PLAIN[letter] ?? letter)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

const haystacks = new WeakMap<JobSummary, string>();

function haystackOf(job: JobSummary): string {
  const known = haystacks.get(job);
  if (known !== undefined) return known;
  const made = folded([jobTitle(job), job.customer, job.boat, ...job.pieces.map(pieceName)].join(' '));
  haystacks.set(job, made);
  return made;
}

/** The jobs in which every word of the search occurs: in customer, boat, name or a piece. */
export function searchJobs(list: readonly JobSummary[], search: string): JobSummary[] {
  const words = folded(search).split(' ').filter(Boolean);
  return list.filter((job) => words.every((word) => haystackOf(job).includes(word)));
}

const names = new Intl.Collator(undefined, { sensitivity: 'base', numeric: true });

/** In another order than the list's own, which is latest first; jobs that are alike in it stay as they were. */
export function orderJobs(list: readonly JobSummary[], order: JobOrder, looker: Looker): JobSummary[] {
  if (order === 'latest') return [...list];
  if (order === 'need')
    return byKey(
      list,
      (job) => needOf(job, looker),
      (a, b) => a - b,
    );
  return byKey(list, (job) => job[order], byName);
}

function byKey<K>(list: readonly JobSummary[], keyOf: (job: JobSummary) => K, compare: (a: K, b: K) => number) {
  return list
    .map((job) => ({ job, key: keyOf(job) }))
    .sort((a, b) => compare(a.key, b.key))
    .map(({ job }) => job);
}

/** What has no name comes last. */
function byName(a: string, b: string): number {
  return a === '' || b === '' ? Number(a === '') - Number(b === '') : names.compare(a, b);
}

const NEEDS: Readonly<Record<Looker, readonly JobNeed[]>> = {
  dock: ['asked', 'send', 'measure', 'void', 'wait', 'nothing', 'demo'],
  bench: ['void', 'wait', 'send', 'asked', 'measure', 'nothing', 'demo'],
};

/** asked: the shop waits for the dock. send: something was measured or said that nobody else has. wait: to be decided. */
type JobNeed = 'asked' | 'void' | 'send' | 'measure' | 'wait' | 'nothing' | 'demo';

/** How soon a job needs something from who looks; the least first. */
const needOf = (job: JobSummary, looker: Looker): number => NEEDS[looker].indexOf(kindOfNeed(job));

function kindOfNeed(job: JobSummary): JobNeed {
  const { standing, demo, pieces } = job;
  if (demo) return 'demo';
  if (!standing || standing.steps === 0) return 'measure';
  if (standing.asked > 0) return 'asked';
  if (standing.voided > 0) return 'void';
  if (standing.cleared < pieces.length && standing.done < standing.steps) return 'measure';
  if (copyState(job) !== 'same') return 'send';
  return standing.cleared < pieces.length ? 'wait' : 'nothing';
}
