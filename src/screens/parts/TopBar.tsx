import type { ComponentChildren } from 'preact';
import { say } from '../../text/index.ts';
import { type Route, routeHash } from '../model/route.ts';

interface Props {
  back?: Route;
  title: string;
  /** In small beneath the title. */
  under?: ComponentChildren;
  children?: ComponentChildren;
}

/** The line at the top: the way back, where this is, and what can be done from here. */
export function TopBar({ back, title, under, children }: Props) {
  return (
    <header class="top no-print">
      {back && (
        <a class="button plain" href={routeHash(back)}>
          <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
            <path d="M12 3l-7 7 7 7" fill="none" stroke="currentColor" stroke-width="2.5" />
          </svg>
          <span class="sr-only">{say().general.back}</span>
        </a>
      )}
      <div class="titled">
        <h1>{title}</h1>
        {under}
      </div>
      {children}
    </header>
  );
}
