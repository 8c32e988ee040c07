import { useState } from 'preact/hooks';
import type { Ask } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { sayBenchLinks } from '../../../text/bench-links.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { Later } from '../../parts/Later.tsx';
import { StateMark } from '../../parts/marks.tsx';
import { historyText } from '../history-words.ts';
import { thingName } from '../names.ts';
import { answersSince } from '../state/answers-since.ts';
import { isSelected, toggle } from '../state/selection.ts';
import { Section } from './Section.tsx';
import { SendBack } from './SendBack.tsx';

/** What the shop asked again, what came of each, and the packet that carries the asking. */
export function AsksSection({ job, piece }: { job: OpenJob; piece: string }) {
  const asks = job.sheet.asks.filter((ask) => ask.piece === piece);
  const open = asks.some((ask) => ask.items.some((item) => item.open));
  return (
    <Section at="asks">
      {asks.length === 0 && <p class="quiet">{sayBench().ask.none}</p>}
      {[...asks].reverse().map((ask) => (
        <AskShown key={ask.id} ask={ask} job={job} />
      ))}
      {open && <SendBack job={job} />}
      {open && <ByLink job={job} />}
    </Section>
  );
}

/** Drawn when it is asked for: what it needs is not loaded before. */
function ByLink({ job }: { job: OpenJob }) {
  const words = sayBenchLinks().again;
  const [shown, setShown] = useState(false);
  return (
    <>
      <button
        type="button"
        class="button"
        aria-expanded={shown}
        onClick={() => setShown(!shown)}
        data-testid="ask-by-link"
      >
        {shown ? words.hide : words.show}
      </button>
      {shown && <Later key={job.entries.length} load={loadByLink} props={{ job }} />}
    </>
  );
}

const loadByLink = () => import('./AskByLink.tsx').then((m) => m.AskByLink);

function AskShown({ ask, job }: { ask: Ask; job: OpenJob }) {
  const words = sayBench().ask;
  return (
    <div class="stack">
      <p>
        <span class="quiet">{words.by(whoText(ask.who), dateText(ask.at))}</span>
        {ask.note !== '' && <strong class="bench-said"> {ask.note}</strong>}
      </p>
      <ul class="list">
        {ask.items.map((item) => (
          <AskLine key={`${item.on}:${item.id}`} ask={ask} item={item} job={job} />
        ))}
      </ul>
    </div>
  );
}

function AskLine({ ask, item, job }: { ask: Ask; item: Ask['items'][number]; job: OpenJob }) {
  const words = sayBench().ask;
  const since = answersSince(job, ask, item);
  return (
    <li class="bench-row stack">
      <button
        type="button"
        class="bench-pick"
        aria-pressed={isSelected(item.on, item.id)}
        onClick={() => toggle(item.on, item.id)}
      >
        <span>{thingName(job.sheet, ask.piece, item.on, item.id)}</span>
        <StateMark mark={item.open ? 'stop' : 'good'}>{item.open ? words.open : words.answered}</StateMark>
      </button>
      {item.note !== '' && <p class="bench-said">{item.note}</p>}
      {since.map((entry) => (
        <p key={entry.id} class="small">
          {words.since(historyText(entry, job))}{' '}
          <span class="quiet">({say().general.signedBy(whoText(entry.who), dateText(entry.at))})</span>
        </p>
      ))}
    </li>
  );
}
