import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import { roomsReady } from '../../text/rooms.ts';

type Words = 'first' | 'links';
type Load<P> = () => Promise<ComponentType<P>>;

interface Props<P> {
  load: Load<P>;
  props: P;
  /** What stands in its place until it has come; a word that it is coming, unless told otherwise. */
  waiting?: JSX.Element | null;
  /** It says only what the first screens say, or what is said of links: no other words are waited for. */
  words?: Words;
}

/** What has come already, so that it is there at once the next time. */
const come = new WeakMap<object, unknown>();
const coming = new Set<Promise<unknown>>();

/** Brings a part before it is asked for, or when it is. */
export async function bring<P>(load: Load<P>, words?: Words): Promise<ComponentType<P>> {
  const [part] = await wanted(Promise.all([load(), words === 'first' ? null : roomsReady(words)]));
  come.set(load, part);
  return part;
}

/** Something that the screen cannot be read without. */
export async function wanted<T>(work: Promise<T>): Promise<T> {
  coming.add(work);
  return await work.finally(() => coming.delete(work));
}

/** What has come is drawn, and may want something more; ms. */
const DRAWN = 150;

/** Resolves when the screen can be read: what can wait begins then. */
export async function quiet(): Promise<void> {
  do {
    await Promise.allSettled([...coming]);
    await new Promise((resolve) => setTimeout(resolve, DRAWN));
  } while (coming.size > 0);
}

/** A part of the app that is not in the first load; it is in the offline store all the same. Give each use a key of its own:
 * without one the part that was loaded first stays on the screen.  */
export function Later<P extends object>({ load, props, waiting, words }: Props<P>) {
  const [Part, setPart] = useState(() => (come.get(load) ?? null) as ComponentType<P> | null);
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    if (Part) return;
    void bring(load, words).then(
      (part) => setPart(() => part),
      () => setMissing(true),
    );
  }, []);
  if (Part) return <Part {...props} />;
  if (missing) return <NotCome whole={waiting === undefined} />;
  return waiting === undefined ? <p class="page quiet">{say().general.loading}</p> : waiting;
}

/** Loaded anew, not asked for again: some browsers remember that a part could not be had for as long as the page stands. */
function NotCome({ whole }: { whole: boolean }) {
  return (
    <div class={whole ? 'page' : 'stack'} role="alert">
      <p>{say().general.notCome}</p>
      <button type="button" class="button main" onClick={() => location.reload()}>
        {say().general.loadAgain}
      </button>
    </div>
  );
}
