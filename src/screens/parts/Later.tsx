import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import { roomsReady } from '../../text/rooms.ts';

interface Props<P> {
  load: () => Promise<ComponentType<P>>;
  props: P;
  /** What stands in its place until it has come; a word that it is coming, unless told otherwise. */
  waiting?: JSX.Element | null;
}

/** What has come already, so that it is there at once the next time. */
const come = new WeakMap<object, unknown>();

/** Brings a part before it is asked for, or when it is. */
export async function bring<P>(load: Props<P>['load']): Promise<ComponentType<P>> {
  const [part] = await Promise.all([load(), roomsReady()]);
  come.set(load, part);
  return part;
}

/** A part of the app that is not in the first load; it is in the offline store all the same. Give each use a key of its own:
 * without one the part that was loaded first stays on the screen.  */
export function Later<P extends object>({ load, props, waiting }: Props<P>) {
  const [Part, setPart] = useState(() => (come.get(load) ?? null) as ComponentType<P> | null);
  useEffect(() => {
    if (Part) return;
    void bring(load).then((part) => setPart(() => part));
  }, []);
  if (Part) return <Part {...props} />;
  return waiting === undefined ? <p class="page quiet">{say().general.loading}</p> : waiting;
}
