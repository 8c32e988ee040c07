import type { Route } from '../model/route.ts';
import { Later } from '../parts/Later.tsx';
import { WithJob } from '../parts/WithJob.tsx';

type At = Extract<Route, { at: 'shop' | 'paper' | 'sheet' }>;

/** The shop's settings and its paper: what is not needed at the dock while a boat is measured. */
export function ShopRoom({ at }: { at: At }) {
  switch (at.at) {
    case 'shop':
      return <Later key="settings" load={() => import('./ShopScreen.tsx').then((m) => m.ShopScreen)} props={{}} />;
    case 'paper':
      return (
        <Later
          key={at.kind}
          load={() => import('../paper/GuidePaper.tsx').then((m) => m.GuidePaper)}
          props={{ kind: at.kind }}
        />
      );
    case 'sheet':
      return (
        <WithJob
          key={at.job}
          id={at.job}
          back={{ at: 'jobs' }}
          show={(job) => (
            <Later
              key={at.piece}
              load={() => import('../paper/PiecePaper.tsx').then((m) => m.PiecePaper)}
              props={{ job, piece: at.piece }}
            />
          )}
        />
      );
  }
}
