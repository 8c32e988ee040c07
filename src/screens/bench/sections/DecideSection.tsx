import { useEffect, useState } from 'preact/hooks';
import { type Finding, gates, takenOnAs } from '../../../core/check/index.ts';
import { heads, type SheetPiece } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { actor, choosePerson, person } from '../../model/services.ts';
import { Banner, StateMark } from '../../parts/marks.tsx';
import { asking, beginAsk } from '../state/ask-draft.ts';
import type { Lit } from '../state/lit.ts';
import { clearanceOf, Standing, Voided } from './Clearances.tsx';
import { FindingRow } from './FindingRow.tsx';
import { Section } from './Section.tsx';
import { SendBack } from './SendBack.tsx';

/** The decision on a piece: one button when it can be pressed, otherwise what stands in the way. */
export function DecideSection({ job, piece, lit }: { job: OpenJob; piece: SheetPiece; lit: Lit }) {
  const words = sayBench();
  const { clear, standing } = gates(job.sheet, job.findings, piece.id).cut;
  const last = clearanceOf(job.sheet, piece.id);
  const stands = last !== null && last.voidedBy.length === 0;
  return (
    <Section at="decide">
      {last && (stands ? <Standing clearance={last} job={job} /> : <Voided clearance={last} job={job} />)}
      {stands && <SendBack job={job} />}
      <WhoDecides />
      {!clear && <InTheWay job={job} standing={standing} lit={lit} />}
      {clear && !stands && job.judged && (
        <ClearButton key={piece.id} job={job} piece={piece.id} again={last !== null} />
      )}
      {asking.value?.piece !== piece.id && (
        <button type="button" class="button" onClick={() => beginAsk(job, piece.id)} data-testid="ask-again">
          {words.ask.begin}
        </button>
      )}
    </Section>
  );
}

/** The engine has the shape and how sure it is; a piece it cannot compute is judged by rules only. */
const basisOf = (job: OpenJob, piece: string): 'engine' | 'rules' =>
  job.pieces.get(piece)?.adjustment.state === 'solved' ? 'engine' : 'rules';

/** Pressed once it says what it means; pressed again it is written. A change in between asks anew. */
function ClearButton({ job, piece, again }: { job: OpenJob; piece: string; again: boolean }) {
  const [asked, setAsked] = useState(false);
  const words = sayBench().decide;
  useEffect(() => setAsked(false), [job.entries.length]);
  if (!asked)
    return (
      <>
        <StateMark mark="good">{words.open}</StateMark>
        <button type="button" class="button main wide" onClick={() => setAsked(true)} data-testid="clear">
          {again ? words.clearAgain : words.clear}
        </button>
      </>
    );
  return (
    <Banner tone="note">
      <p>{words.meaning[takenOnAs(job.findings, piece, job.pieces.get(piece)) ?? basisOf(job, piece)]}</p>
      <div class="row">
        <button
          type="button"
          class="button main"
          onClick={() => void act('piece.clear', { piece, judged: heads(job.entries), basis: basisOf(job, piece) })}
          data-testid="clear-sure"
        >
          {words.sure}
        </button>
        <button type="button" class="button plain" onClick={() => setAsked(false)}>
          {say().general.cancel}
        </button>
      </div>
    </Banner>
  );
}

/** Every decision bears a name; asked for where the device does not know it, and there to be mended until one goes away. */
function WhoDecides() {
  const [unknown] = useState(actor.value.name === '');
  const words = sayBench().decide;
  if (!unknown) return null;
  return (
    <label class="field">
      <span>{words.who}</span>
      <input
        value={person.value.name}
        maxLength={80}
        autocomplete="name"
        onInput={({ currentTarget }) => void choosePerson({ ...person.value, name: currentTarget.value.trimStart() })}
      />
      {actor.value.name === '' && <span class="small">{words.nameless}</span>}
    </label>
  );
}

function InTheWay({ job, standing, lit }: { job: OpenJob; standing: readonly Finding[]; lit: Lit }) {
  return (
    <div class="stack">
      <p>
        <strong>{sayBench().decide.inWay(standing.length)}</strong>
      </p>
      <ul class="list">
        {standing.map((finding) => (
          <FindingRow key={finding.id} finding={finding} job={job} lit={lit.findings.has(finding.id)} />
        ))}
      </ul>
    </div>
  );
}
