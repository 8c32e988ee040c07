import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { CAUTIONS } from '../../core/guide/cautions.ts';
import type { Sheet } from '../../core/job/index.ts';
import { sayCautions } from '../../text/cautions.ts';
import { sayOwner } from '../../text/owner.ts';
import type { OpenJob } from '../model/open-job.ts';
import { go, route } from '../model/route.ts';
import { ContactLine } from '../parts/ContactLine.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { progressOf } from './progress.ts';
import { tell, told } from './told.ts';

/** What an owner should know before the first step: a page for each thing, once; read again whenever wanted. */
export function Before({ job }: { job: OpenJob }) {
  const [at, setAt] = useState(0);
  const words = sayOwner().before;
  const pages = [Who, Need, Time, Careful, After];
  const Page = pages[at] ?? Who;
  const last = at === pages.length - 1;
  // In place of the first step: it is there as soon as this was read.
  const toStep = route.value.at === 'step';
  const read = async (on: 'work' | 'practice'): Promise<void> => {
    const first = !told.value?.includes(job.id);
    await tell(job.id);
    if (on === 'practice') go({ at: 'owner', job: job.id, page: 'practice' });
    else if (!toStep || !first) go({ at: 'job', job: job.id });
  };
  return (
    <div class="page owner-page">
      <TopBar back={{ at: 'job', job: job.id }} title={words.heading}>
        <span class="number quiet">{words.page(at + 1, pages.length)}</span>
      </TopBar>
      <div class="owner-read stack" aria-live="polite">
        <Page sheet={job.sheet} job={job} />
      </div>
      <div class="owner-foot stack">
        {last ? (
          <>
            <button type="button" class="button main wide" onClick={() => void read('practice')}>
              {words.toPractice}
            </button>
            <button type="button" class="button wide" onClick={() => void read('work')}>
              {toStep ? words.toWork : words.done}
            </button>
          </>
        ) : (
          <button type="button" class="button main wide" onClick={() => setAt(at + 1)}>
            {words.next}
          </button>
        )}
        {at > 0 && (
          <button type="button" class="button plain" onClick={() => setAt(at - 1)}>
            {words.back}
          </button>
        )}
      </div>
    </div>
  );
}

interface PageProps {
  sheet: Sheet;
  job: OpenJob;
}

const Titled = ({ title, children }: { title: string; children: ComponentChildren }) => (
  <>
    <h2>{title}</h2>
    {children}
  </>
);

function Who({ sheet }: PageProps) {
  const words = sayOwner().before.who;
  const { shop = '', contact = '', note = '' } = sheet.request ?? {};
  return (
    <Titled title={words.title}>
      <p>{shop ? words.shop(shop) : words.nobody}</p>
      {note && <p>{words.note(note)}</p>}
      {contact ? (
        <p>
          {words.reach} <ContactLine contact={contact} />
        </p>
      ) : (
        <p>{words.noContact}</p>
      )}
    </Titled>
  );
}

function Need() {
  const words = sayOwner().before.need;
  return (
    <Titled title={words.title}>
      <svg class="explained things" viewBox="0 0 240 70" role="img" aria-label={words.alt}>
        <rect class="paper" x={6} y={12} width={52} height={46} rx={10} />
        <path class="tape" d="M58 50H96" />
        <path class="hook" d="M96 44V56" />
        <rect class="sticker" x={116} y={14} width={46} height={42} />
        <path class="ink" d="M122 38l10 10m0-10-10 10" />
        <text x={146} y={34} text-anchor="middle">
          1
        </text>
        <path class="hull" d="M180 50L220 14L230 24L190 58L176 60Z" />
      </svg>
      <ul class="owner-bullets stack">
        {words.things.map((thing) => (
          <li key={thing}>{thing}</li>
        ))}
      </ul>
    </Titled>
  );
}

function Time({ job }: PageProps) {
  const words = sayOwner().before.time;
  const { minutes, open, marks, looks } = progressOf(job.sheet, job.findings).left;
  const parts = [
    open.reading > 0 && words.readings(open.reading),
    open.shot > 0 && words.shots(open.shot),
    open.question > 0 && words.questions(open.question),
    open.run > 0 && words.runs(open.run),
    looks > 0 && words.looks(looks),
    marks && words.marks,
  ].filter((part) => part !== false);
  return (
    <Titled title={words.title}>
      <p>{words.about(minutes)}</p>
      {parts.length > 0 && <p class="quiet">{words.how(words.and(parts))}</p>}
    </Titled>
  );
}

/** What is dangerous about these pieces, besides what holds for every boat. */
function Careful({ sheet }: PageProps) {
  const words = sayOwner().before.careful;
  const named = new Set(sheet.pieces.flatMap(({ cautions }) => cautions.flatMap(({ keys }) => keys)));
  const always = new Set(['footing', 'engine-off', 'carbon-monoxide']);
  return (
    <Titled title={words.title}>
      <p>
        <strong>{words.always}</strong>
      </p>
      <ul class="owner-bullets stack">
        <li>{words.water}</li>
        {CAUTIONS.filter((caution) => caution !== 'drilling' && (always.has(caution) || named.has(caution))).map(
          (caution) => (
            <li key={caution}>{sayCautions().texts[caution]}</li>
          ),
        )}
        <li>{words.noDrilling}</li>
      </ul>
    </Titled>
  );
}

function After() {
  const words = sayOwner().before.after;
  return (
    <Titled title={words.title}>
      <p>{words.use}</p>
      <p>{words.check}</p>
      <p>{words.privacy}</p>
    </Titled>
  );
}
