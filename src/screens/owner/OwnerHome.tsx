import { useEffect, useState } from 'preact/hooks';
import type { Setting } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';
import { sayOwner } from '../../text/owner.ts';
import { stepTitle } from '../dock/step-words.ts';
import { dateText, jobTitle, pieceName } from '../model/job-words.ts';
import { jobs, readJobs } from '../model/jobs.ts';
import type { OpenJob } from '../model/open-job.ts';
import { type Route, routeHash } from '../model/route.ts';
import { looksDue } from '../model/second-looks.ts';
import { actor, store } from '../model/services.ts';
import { againText, measurementsText, othersText } from '../model/tally-words.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';
import { Later } from '../parts/Later.tsx';
import { StateMark } from '../parts/marks.tsx';
import { SwapHint } from '../parts/SwapHint.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { progressOf, whereToGoOn } from './progress.ts';

const loadJob = () => import('../dock/JobScreen.tsx').then((m) => m.JobScreen);

/** The owner's first screen: how far along, how long it still takes, and one button that goes on. */
export function OwnerHome({ job }: { job: OpenJob }) {
  const [place, setPlace] = useState<Setting<'place'> | null>(null);
  const [more, setMore] = useState(false);
  useEffect(() => {
    void readJobs().catch(() => undefined);
    void store()
      .settings.get('place')
      .then(setPlace, () => undefined);
  }, [job.id]);
  const { sheet } = job;
  if (more || sheet.pieces.length === 0) return <Later key="all" load={loadJob} props={{ job }} />;
  const words = sayOwner().home;
  const { steps, tally, left } = progressOf(sheet, job.findings);
  const { whole } = tally;
  const measurements = measurementsText(tally);
  const next = whereToGoOn(sheet, place?.job === job.id ? place : null);
  const looks = looksDue.value.length;
  const asked = steps.filter((step) => step.state === 'asked-again').length;
  const shown = next?.piece ?? sheet.pieces[0]?.id ?? '';
  return (
    <div class="page">
      <TopBar back={{ at: 'jobs' }} title={jobTitle(sheet.details)} />
      {sheet.demo && <p class="demo-mark">{say().general.demoMark}</p>}
      {sheet.request?.shop && <p>{words.asks(sheet.request.shop)}</p>}
      <section class="stack">
        <div class="row spread">
          <h2>{measurements}</h2>
          <span>{left.minutes > 0 ? words.left(left.minutes) : ''}</span>
        </div>
        <progress class="walk-progress" max={whole.all} value={whole.done}>
          {measurements}
        </progress>
        <p class="quiet small">{[...othersText(tally), againText(tally)].filter(Boolean).join(' · ')}</p>
        <p class="quiet">{next || looks > 0 ? words.stopping : words.allDone}</p>
      </section>
      {asked > 0 && <p class="state doubt">{words.asked(asked)}</p>}
      <SwapHint job={job} />
      {next && (
        <a
          class="button main wide"
          href={routeHash({ at: 'step', job: job.id, piece: next.piece, step: next.step.key })}
        >
          {whole.done === 0 ? words.start : words.goOn(stepTitle(next.step, sheet))}
        </a>
      )}
      {looks > 0 && (
        <a class={`button wide ${next ? '' : 'main'}`} href={routeHash({ at: 'owner', job: job.id, page: 'again' })}>
          {words.again(looks)}
        </a>
      )}
      <PieceDrawing judgement={job.pieces.get(shown)} sheet={sheet} piece={shown} width={360} height={190} />
      <Ways job={job} finished={next === null && looks === 0} />
      <button type="button" class="button plain" onClick={() => setMore(true)}>
        {words.more}
      </button>
    </div>
  );
}

/** Everything else, in the order it is wanted. */
function Ways({ job, finished }: { job: OpenJob; finished: boolean }) {
  const words = sayOwner().home;
  const { sheet } = job;
  const practised = sheet.practice.some(({ who }) => who.name === actor.value.name && who.role === actor.value.role);
  const copy = jobs.value?.find(({ id }) => id === job.id)?.lastCopy;
  // What the shop's link brought is no copy of anything measured.
  const sent = copy?.heads.some((head) => job.entries.some(({ id, who }) => id === head && who.role !== 'bench'));
  return (
    <ul class="list">
      <Way to={{ at: 'owner', job: job.id, page: 'before' }} label={words.before} />
      <Way to={{ at: 'owner', job: job.id, page: 'practice' }} label={words.practice}>
        {practised && <StateMark mark="good">{words.practised}</StateMark>}
      </Way>
      <Way to={{ at: 'owner', job: job.id, page: 'marks' }} label={words.marks} />
      {sheet.pieces.map((piece) => (
        <Way key={piece.id} to={{ at: 'walk', job: job.id, piece: piece.id }} label={words.steps(pieceName(piece))} />
      ))}
      <Way to={{ at: 'leave', job: job.id }} label={words.check} strong={finished && !job.gates.leave.clear} />
      <Way to={{ at: 'send', job: job.id }} label={words.send} strong={finished}>
        {copy && sent && <span class="quiet small">{words.lastSent(dateText(copy.at))}</span>}
      </Way>
    </ul>
  );
}

interface WayProps {
  to: Route;
  label: string;
  strong?: boolean;
  children?: preact.ComponentChildren;
}

const Way = ({ to, label, strong, children }: WayProps) => (
  <li>
    <a class={strong ? 'button main wide' : 'item'} href={routeHash(to)}>
      <span class={strong ? '' : 'grow'}>{label}</span>
      {children}
    </a>
  </li>
);
