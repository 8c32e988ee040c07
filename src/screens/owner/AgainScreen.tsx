import { useEffect } from 'preact/hooks';
import { sayOwner } from '../../text/owner.ts';
import type { OpenJob } from '../model/open-job.ts';
import { routeHash } from '../model/route.ts';
import { looksDue } from '../model/second-looks.ts';
import { SwapHint } from '../parts/SwapHint.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { beginLooks, nextLook } from './led.ts';

/** Between the round and the looks after it: why everything that matters is read once more, and that it is nobody's fault. */
export function AgainScreen({ job }: { job: OpenJob }) {
  useEffect(beginLooks, []);
  const words = sayOwner().again;
  const next = nextLook();
  const all = looksDue.value;
  const thirds = next?.look === 3;
  return (
    <div class="page owner-page">
      <TopBar
        back={{ at: 'job', job: job.id }}
        title={next === null ? words.done : thirds ? words.third : words.second}
      />
      <div class="owner-read stack">
        {next === null && <p>{words.nothing}</p>}
        {next !== null && (thirds ? words.thirdHow : words.secondHow).map((text) => <p key={text}>{text}</p>)}
        {thirds && <SwapHint job={job} />}
        {next !== null && <p class="quiet">{words.left(all.filter(({ look }) => look === next.look).length)}</p>}
      </div>
      <div class="owner-foot stack">
        {next && (
          <a class="button main wide" href={routeHash(next.at)} data-testid="look-again">
            {words.begin}
          </a>
        )}
        <a class="button wide" href={routeHash(next ? { at: 'job', job: job.id } : { at: 'leave', job: job.id })}>
          {next ? words.later : words.goOn}
        </a>
      </div>
    </div>
  );
}
