import { useEffect, useState } from 'preact/hooks';
import type { Link } from '../../../core/packet/link/index.ts';
import { StoreFailure } from '../../../device/store/index.ts';
import { say } from '../../../text/index.ts';
import { sayLinks } from '../../../text/links.ts';
import { type AskTaken, takeAsk } from '../../model/open-link.ts';
import { go, routeHash } from '../../model/route.ts';
import { Banner } from '../../parts/marks.tsx';
import { TopBar } from '../../parts/TopBar.tsx';

type Ask = Extract<Link, { t: 'ask' }>['ask'];

/** What the shop asks again goes into its job, and the person to the first step it is about. */
export function AskedAgain({ ask }: { ask: Ask }) {
  const [came, setCame] = useState<AskTaken | StoreFailure | null>(null);
  useEffect(() => {
    void takeAsk(ask).then(
      (taken) => {
        if (taken.what === 'taken' && taken.first && taken.setAside === 0) goTo(ask.job, taken.first);
        else setCame(taken);
      },
      (error: unknown) => setCame(error instanceof StoreFailure ? error : new StoreFailure('unknown', error)),
    );
  }, []);
  const words = sayLinks();
  if (came === null) return <p class="page quiet">{words.reading}</p>;
  return (
    <div class="page">
      <TopBar back={{ at: 'jobs' }} title={words.ask.title} />
      {came instanceof StoreFailure ? (
        <Banner tone="stop">
          <p>{say().store.failures[came.code]}</p>
        </Banner>
      ) : (
        <Came ask={ask} came={came} />
      )}
    </div>
  );
}

function goTo(job: string, { piece, step }: NonNullable<Extract<AskTaken, { what: 'taken' }>['first']>): void {
  go({ at: 'step', job, piece, step: step.key }, 'replace');
}

function Came({ ask, came }: { ask: Ask; came: AskTaken }) {
  const words = sayLinks();
  if (came.what === 'not-here')
    return (
      <>
        <Banner tone="doubt">
          <p>{words.ask.notHere}</p>
          <p>{words.ask.notHereDo}</p>
        </Banner>
        <p class="quiet">{words.refused.untouched}</p>
        <a class="button main wide" href={routeHash({ at: 'jobs' })}>
          {words.refused.toJobs}
        </a>
      </>
    );
  const { first, setAside } = came;
  return (
    <>
      {setAside > 0 && <Banner tone="doubt">{words.ask.setAside}</Banner>}
      {first === null && <p>{words.ask.answered}</p>}
      {first && (
        <button type="button" class="button main wide" onClick={() => goTo(ask.job, first)}>
          {words.ask.goThere}
        </button>
      )}
      <a class={`button wide ${first ? '' : 'main'}`} href={routeHash({ at: 'job', job: ask.job })}>
        {words.ask.open}
      </a>
    </>
  );
}
