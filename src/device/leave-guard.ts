import { effect, type ReadonlySignal } from '@preact/signals';

/**
 * While something is at risk, leaving the page makes the browser ask first; the words are the browser's own. The
 * listener is there only then, since one that always is keeps the page out of the browser's back-and-forward cache.
 * iOS does not ask when an app is swiped away: the guard is a help, never the only one. Returns how to stop it.
 */
export function guardLeaving(
  atRisk: ReadonlySignal<boolean>,
  page: Pick<EventTarget, 'addEventListener' | 'removeEventListener'> = window,
): () => void {
  const ask = (event: Event): void => event.preventDefault();
  return effect(() => {
    if (!atRisk.value) return undefined;
    page.addEventListener('beforeunload', ask);
    return () => page.removeEventListener('beforeunload', ask);
  });
}
