import type { ComponentChildren } from 'preact';
import { say } from '../../text/index.ts';
import { type Route, routeHash } from '../model/route.ts';

/** The line at the top: the way back, where this is, and what can be done from here. */
export function TopBar({ back, title, children }: { back?: Route; title: string; children?: ComponentChildren }) {
  return (
    <header class="top no-print">
      {back && (
        <a class="button plain" href={routeHash(back)} aria-label={say().general.back}>
          <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
            <path d="M12 3l-7 7 7 7" fill="none" stroke="currentColor" stroke-width="2.5" />
          </svg>
        </a>
      )}
      <h1>{title}</h1>
      {children}
    </header>
  );
}
