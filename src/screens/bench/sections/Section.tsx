import type { ComponentChildren } from 'preact';
import { sayBench } from '../../../text/bench.ts';

export type SectionKey = keyof ReturnType<typeof sayBench>['sections'];

const idOf = (key: SectionKey): string => `bench-${key}`;

/** A part of the bench with its heading; the jump list leads to it. */
export function Section({ at, children }: { at: SectionKey; children: ComponentChildren }) {
  const id = idOf(at);
  return (
    <section id={id} class="bench-section stack" aria-labelledby={`${id}-name`}>
      <h2 id={`${id}-name`} tabIndex={-1}>
        {sayBench().sections[at]}
      </h2>
      {children}
    </section>
  );
}

export function jumpTo(key: SectionKey): void {
  const heading = document.getElementById(`${idOf(key)}-name`);
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}

/** Scrolls to the row of a thing, if a list shows it, no further than needed. */
export function bringRow(on: string, id: string): void {
  document.querySelector(`[data-row="${on}:${CSS.escape(id)}"]`)?.scrollIntoView({ block: 'nearest' });
}
