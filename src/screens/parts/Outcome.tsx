import { say } from '../../text/index.ts';
import { type Route, routeHash } from '../model/route.ts';
import type { TakenIn } from '../model/take-in.ts';
import { Banner } from './marks.tsx';

/** What came of a file, and the way to the job it belongs to. */
export function Outcome({ outcome, open }: { outcome: TakenIn; open: ((job: string) => Route) | null }) {
  return (
    <Banner tone={outcome.ok ? 'good' : 'stop'}>
      {outcome.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {outcome.ok && open && (
        <a class="button" href={routeHash(open(outcome.job))}>
          {say().dock.takeIn.openIt}
        </a>
      )}
    </Banner>
  );
}
