import { type Signal, useSignal, useSignalEffect } from '@preact/signals';
import { useRef } from 'preact/hooks';

/** What was typed and never recorded, by what it was typed for; until the app is closed. Never a take by itself. */
const kept = new Map<string, string>();

/** Keys that came while the reading before was still being written: they belong to the next one. */
let ahead = { text: '', until: 0 };
/** ms in which the next step must come. */
const SOON = 1000;

/** Gives what was typed ahead to whatever is entered next. */
export function typedAhead(text: string): void {
  ahead = { text, until: performance.now() + SOON };
}

function begin(id: string | null): { text: string; left: boolean } {
  const { text, until } = ahead;
  ahead = { text: '', until: 0 };
  const before = kept.get(id ?? '') ?? '';
  return before === '' && performance.now() < until ? { text, left: false } : { text: before, left: before !== '' };
}

/** A text that is there again when a person comes back to what it was typed for; for null it is not kept. */
export function useHalfTyped(id: string | null): { text: Signal<string>; left: boolean } {
  const begun = useRef<ReturnType<typeof begin> | null>(null);
  begun.current ??= begin(id);
  const text = useSignal(begun.current.text);
  useSignalEffect(() => {
    const now = text.value;
    if (id === null) return;
    if (now.trim() === '') kept.delete(id);
    else kept.set(id, now);
  });
  return { text, left: begun.current.left && text.value === begun.current.text };
}
