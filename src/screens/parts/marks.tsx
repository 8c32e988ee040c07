import type { ComponentChildren } from 'preact';
import { say } from '../../text/index.ts';

export type Mark = 'stop' | 'doubt' | 'note' | 'good' | 'open';

const shapes: Record<Mark, string> = {
  stop: 'M7 2h6l5 5v6l-5 5H7l-5-5V7zM6 10h8',
  doubt: 'M1 10c4-7 14-7 18 0-4 7-14 7-18 0zM10 7.5a2.5 2.5 0 1 0 .01 0',
  note: 'M4 3h12v14H4zM7 7h6M7 10h6M7 13h4',
  good: 'M3 10.5l4.5 4.5L17 5',
  open: 'M10 3a7 7 0 1 0 .01 0',
};

/** A state: sign, word and colour together, never colour alone. */
export function StateMark({ mark, children }: { mark: Mark; children?: ComponentChildren }) {
  return (
    <span class={`state ${mark}`}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <path d={shapes[mark]} fill="none" stroke="currentColor" stroke-width="2" stroke-linecap="round" />
      </svg>
      {children ?? say().dock.states[mark]}
    </span>
  );
}

export function Banner({ tone, children }: { tone: 'stop' | 'doubt' | 'good' | 'note'; children: ComponentChildren }) {
  return (
    <div class={`banner ${tone} stack`} role={tone === 'stop' ? 'alert' : 'status'}>
      {children}
    </div>
  );
}
