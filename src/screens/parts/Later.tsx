import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../../text/index.ts';

interface Props<P> {
  load: () => Promise<ComponentType<P>>;
  props: P;
}

/** A part of the app that is not in the first load; it is in the offline store all the same. Give each use a key of its own:
 * without one the part that was loaded first stays on the screen.  */
export function Later<P extends object>({ load, props }: Props<P>) {
  const [Part, setPart] = useState<ComponentType<P> | null>(null);
  useEffect(() => {
    void load().then((part) => setPart(() => part));
  }, []);
  return Part ? <Part {...props} /> : <p class="page quiet">{say().general.loading}</p>;
}
