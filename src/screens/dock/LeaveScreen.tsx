import { useState } from 'preact/hooks';
import type { Finding } from '../../core/check/index.ts';
import { uuid } from '../../device/clock.ts';
import { say } from '../../text/index.ts';
import { sayWalk } from '../../text/walk.ts';
import { dateText, whoText } from '../model/job-words.ts';
import { act, type OpenJob } from '../model/open-job.ts';
import { go, type Route, routeHash } from '../model/route.ts';
import { lookDue, looksDue } from '../model/second-looks.ts';
import { pointLabel } from '../model/words.ts';
import { FindingLine } from '../parts/FindingLine.tsx';
import { GateLine } from '../parts/GateLine.tsx';
import { ReasonPicker } from '../parts/ReasonPicker.tsx';
import { SwapHint } from '../parts/SwapHint.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { RoundTheBoat } from './RoundTheBoat.tsx';

/** What stands in the way of leaving, in walking order, each a tap away from being settled. */
export function LeaveScreen({ job }: { job: OpenJob }) {
  const words = say().dock.leave;
  const { standing } = job.gates.leave;
  const must = standing.filter((finding) => finding.severity === 'stop');
  // What an owner is led through by itself is one line, not one for each.
  const worth = standing.filter((finding) => finding.severity === 'doubt' && !isLookDue(finding));
  const accepted = job.findings.filter((finding) => finding.accepted !== null);
  const notes = job.findings.filter((finding) => finding.severity === 'note');
  return (
    <div class="page">
      <TopBar back={{ at: 'job', job: job.id }} title={words.heading} />
      <GateLine job={job} />
      <NoGuide job={job} />
      <SwapHint job={job} />
      <Group heading={words.must} findings={must} job={job} />
      <LooksDue job={job} />
      <NextTapes job={job} />
      <Group heading={words.worth} findings={worth} job={job} acceptable />
      <Group heading={words.accepted} findings={accepted} job={job} />
      <RoundTheBoat job={job} />
      <Group heading={words.notes} findings={notes} job={job} />
      <a class="button main wide" href={routeHash({ at: 'send', job: job.id })}>
        {say().dock.job.send}
      </a>
    </div>
  );
}

const isLookDue = ({ subjects }: Finding): boolean =>
  subjects.some(({ on, id }) => on === 'reading' && lookDue(id) !== null);

/** What an owner has read once only, or in two ways: led there from here, and free to send without it. */
function LooksDue({ job }: { job: OpenJob }) {
  const words = sayWalk().again;
  const due = looksDue.value.length;
  if (due === 0) return null;
  return (
    <section class="stack" data-testid="looks-due">
      <h2>{words.heading}</h2>
      <p>{words.due(due)}</p>
      <a class="button wide" href={routeHash({ at: 'owner', job: job.id, page: 'again' })}>
        {words.begin}
      </a>
    </section>
  );
}

/** The few tapes that would most help, from the engine: taken on, they become steps of the walk. */
function NextTapes({ job }: { job: OpenJob }) {
  const words = say().dock.leave;
  const tapes = job.sheet.pieces.flatMap((piece) =>
    (job.pieces.get(piece.id)?.advice?.set ?? []).map((tape) => ({ ...tape, piece: piece.id })),
  );
  if (tapes.length === 0) return null;
  const take = async (tape: { from: string; to: string; piece: string }): Promise<void> => {
    const reading = { id: uuid(), slot: null, kind: 'straight' as const, points: [tape.from, tape.to], needed: false };
    await act('reading.add', { piece: tape.piece, reading });
    go({ at: 'step', job: job.id, piece: tape.piece, step: reading.id });
  };
  return (
    <section class="stack">
      <h2>{words.tapes}</h2>
      <p class="quiet small">{words.tapesHow}</p>
      <div class="row">
        {tapes.map((tape) => (
          <button key={`${tape.from}${tape.to}`} type="button" class="button" onClick={() => void take(tape)}>
            {words.addTape(`${pointLabel(job.sheet, tape.from)}–${pointLabel(job.sheet, tape.to)}`)}
          </button>
        ))}
      </div>
    </section>
  );
}

interface GroupProps {
  heading: string;
  findings: readonly Finding[];
  job: OpenJob;
  acceptable?: boolean;
}

function Group({ heading, findings, job, acceptable }: GroupProps) {
  if (findings.length === 0) return null;
  return (
    <section class="stack">
      <h2>{heading}</h2>
      <ul class="list">
        {findings.map((finding) => (
          <FindingRow key={finding.id} finding={finding} job={job} acceptable={acceptable ?? false} />
        ))}
      </ul>
    </section>
  );
}

/** To the step that settles it, or the thing in the way; a point nothing is asked about has none, but its piece can ask. */
function GoThere({ job, piece, finding }: { job: OpenJob; piece: string; finding: Finding }) {
  const { slot, rule } = finding;
  const bare = rule === 'point-floats' || rule === 'shape-unknown';
  const thing = thingOf(finding);
  if (slot === null && !bare && thing === undefined) return null;
  const to = { job: job.id, piece };
  const place: Route =
    thing !== undefined
      ? { at: 'things', ...to, thing }
      : slot === null
        ? ({ at: 'walk', ...to } as const)
        : ({ at: 'step', ...to, step: slot } as const);
  return (
    <a class="button" href={routeHash(place)}>
      {say().dock.leave.goThere}
    </a>
  );
}

/** What no guide would ask for is not missed by anybody. */
function NoGuide({ job }: { job: OpenJob }) {
  return (
    <>
      {job.sheet.pieces
        .filter(({ kind }) => kind === 'free')
        .map(({ id, name }) => (
          <p key={id} class="quiet small">
            {sayWalk().change.noGuide(name)}
          </p>
        ))}
    </>
  );
}

function FindingRow({ finding, job, acceptable }: { finding: Finding; job: OpenJob; acceptable: boolean }) {
  const [accepting, setAccepting] = useState(false);
  const words = say().dock.leave;
  if (accepting)
    return (
      <li>
        <ReasonPicker
          question={words.acceptWhy}
          reasons={words.acceptReasons}
          onCancel={() => setAccepting(false)}
          onReason={(reason) => void act('finding.accept', { finding: finding.id, basis: finding.basis, reason })}
        />
      </li>
    );
  return (
    <li class="stack leave-row">
      <FindingLine finding={finding} sheet={job.sheet} />
      {finding.accepted && (
        <p class="quiet small">
          {words.acceptedBy(finding.accepted.reason, whoText(finding.accepted.who), dateText(finding.accepted.at))}
        </p>
      )}
      <div class="row">
        {finding.piece && <GoThere job={job} piece={finding.piece} finding={finding} />}
        {String(finding.numbers.about).startsWith('detail.') && (
          <a class="button" href={routeHash({ at: 'details', job: job.id })}>
            {words.goThere}
          </a>
        )}
        {acceptable && (
          <button type="button" class="button plain" onClick={() => setAccepting(true)}>
            {words.accept}
          </button>
        )}
      </div>
    </li>
  );
}

/** The thing in the way a finding is dealt with at, or their list (null); undefined where a step is the place. */
function thingOf({ subjects, rule }: Finding): string | null | undefined {
  if (rule === 'fastener-on-obstruction') return undefined;
  const thing = subjects.find(({ on }) => on === 'obstruction');
  return thing?.id ?? (LISTED.has(rule) ? null : undefined);
}

const LISTED: ReadonlySet<Finding['rule']> = new Set(['missing-treatment', 'missing-cord-exit']);
