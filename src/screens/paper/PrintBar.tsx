import type { ComponentChildren } from 'preact';
import type { Route } from '../model/route.ts';
import { TopBar } from '../parts/TopBar.tsx';

interface Props {
  words: { title: string; how: string; print: string; making: string };
  back: Route;
  /** The pages are there to be printed. */
  ready: boolean;
  /** What is chosen before printing. */
  children?: ComponentChildren;
}

/** Above the pages, and not on them: what they are, and the button that prints them. */
export function PrintBar({ words, back, ready, children }: Props) {
  return (
    <div class="page paper-bar no-print">
      <TopBar back={back} title={words.title} />
      <p class="quiet">{words.how}</p>
      {children}
      <button
        type="button"
        class="button main wide"
        disabled={!ready}
        onClick={() => window.print()}
        data-testid="print"
      >
        {words.print}
      </button>
      {!ready && <p class="quiet">{words.making}</p>}
    </div>
  );
}
