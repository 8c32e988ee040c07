import { signal } from '@preact/signals';

/** What of a piece is changed or added. */
const CHANGES = ['points', 'reading', 'edge', 'picture'] as const;
export type Change = (typeof CHANGES)[number];

/** What an owner is told beside the steps. */
const OWNER_PAGES = ['before', 'practice', 'marks', 'again'] as const;
export type OwnerPage = (typeof OWNER_PAGES)[number];

/** Where the person is. It lives in the address, so that back, reload and a restart land at the same place. */
export type Route =
  | { at: 'jobs' }
  | { at: 'new' }
  | { at: 'keep' }
  | { at: 'shop' }
  | { at: 'paper'; kind: string }
  | { at: 'sheet'; job: string; piece: string }
  | { at: 'job'; job: string }
  | { at: 'walk'; job: string; piece: string }
  | { at: 'step'; job: string; piece: string; step: string; photos?: true }
  | { at: 'table'; job: string; piece: string; table: string; cell?: string }
  | { at: 'change'; job: string; piece: string; what: Change }
  | { at: 'details'; job: string }
  | { at: 'things'; job: string; piece: string; thing: string | null }
  | { at: 'owner'; job: string; page: OwnerPage }
  | { at: 'leave'; job: string }
  | { at: 'send'; job: string }
  | { at: 'link'; code: string }
  | { at: 'inbox' }
  | { at: 'judge'; job: string }
  /** Asking somebody to measure; with a job: the link to one that was asked for. */
  | { at: 'request'; job: string | null }
  | { at: 'print'; job: string; piece: string; as: 'sheet' | 'tiles' };

/** Reads an address; anything it does not know is the list of jobs. */
export function parseRoute(hash: string): Route {
  const parts = hash.replace(/^#\/?/, '').split('/').map(decode);
  const [at, job, piece, step] = parts;
  if (at === 'new') return { at };
  if (at === 'keep' || at === 'shop') return { at };
  if (at === 'r') return { at: 'link', code: job ?? '' };
  if (at === 'paper' && job) return piece ? { at: 'sheet', job, piece } : { at, kind: job };
  if (at === 'bench' && job === 'ask') return { at: 'request', job: piece || null };
  if (at === 'bench' && job && step && (piece === 'sheet' || piece === 'tiles'))
    return { at: 'print', job, piece: step, as: piece };
  if (at === 'bench') return job ? { at: 'judge', job } : { at: 'inbox' };
  if (at === 'details' && job) return { at, job };
  const page = OWNER_PAGES.find((one) => one === piece);
  if (at === 'owner' && job && page) return { at, job, page };
  if (at === 'leave' && job) return { at, job };
  if (at === 'send' && job) return { at, job };
  if (at === 'things' && job && piece) return { at, job, piece, thing: step || null };
  if (at === 'job' && job) {
    if (piece && step) return withinPiece(parts, { job, piece, step });
    if (piece) return { at: 'walk', job, piece };
    return { at: 'job', job };
  }
  return { at: 'jobs' };
}

function withinPiece(parts: readonly string[], { job, piece, step }: Record<'job' | 'piece' | 'step', string>): Route {
  const [, , , , name, cell] = parts;
  const what = CHANGES.find((change) => change === name);
  if (step === 'change' && what) return { at: 'change', job, piece, what };
  if (step === 'table' && name) return { at: 'table', job, piece, table: name, ...(cell ? { cell } : {}) };
  return { at: 'step', job, piece, step, ...(name === 'photos' ? { photos: true } : {}) };
}

export function routeHash(route: Route): string {
  switch (route.at) {
    case 'jobs':
      return '#/';
    case 'inbox':
      return '#/bench';
    case 'link':
      return `#/r/${route.code}`;
    case 'judge':
      return `#/bench/${route.job}`;
    case 'request':
      return `#/bench/ask${route.job === null ? '' : `/${route.job}`}`;
    case 'print':
      return `#/bench/${route.job}/${route.as}/${route.piece}`;
    case 'new':
    case 'keep':
    case 'shop':
      return `#/${route.at}`;
    case 'paper':
      return `#/paper/${route.kind}`;
    case 'sheet':
      return `#/paper/${route.job}/${route.piece}`;
    case 'details':
    case 'leave':
    case 'send':
      return `#/${route.at}/${route.job}`;
    case 'owner':
      return `#/owner/${route.job}/${route.page}`;
    case 'things':
      return `#/things/${route.job}/${route.piece}${route.thing === null ? '' : `/${route.thing}`}`;
    case 'job':
      return `#/job/${route.job}`;
    case 'walk':
      return `#/job/${route.job}/${route.piece}`;
    case 'step':
      return `#/job/${route.job}/${route.piece}/${encodeURIComponent(route.step)}${route.photos ? '/photos' : ''}`;
    case 'change':
      return `#/job/${route.job}/${route.piece}/change/${route.what}`;
    case 'table': {
      const { job, piece, table, cell } = route;
      return `#/job/${job}/${piece}/table/${encodeURIComponent(table)}${cell ? `/${cell}` : ''}`;
    }
  }
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}

export const route = signal<Route>({ at: 'jobs' });

export function followAddress(): void {
  const read = (): void => {
    route.value = parseRoute(location.hash);
    window.scrollTo(0, 0);
  };
  addEventListener('hashchange', read);
  read();
}

export function go(to: Route, how: 'push' | 'replace' = 'push'): void {
  const hash = routeHash(to);
  if (how === 'push') location.hash = hash;
  else location.replace(hash);
}
