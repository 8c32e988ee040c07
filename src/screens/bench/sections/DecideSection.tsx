import { useEffect, useState } from 'preact/hooks';
import { type Finding, gates } from '../../../core/check/index.ts';
import { heads, type SheetPiece } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { actor } from '../../model/services.ts';
import { findingText } from '../../parts/FindingLine.tsx';
import { Banner, StateMark } from '../../parts/marks.tsx';
import { asking, beginAsk } from '../state/ask-draft.ts';
import { isSelected, toggle } from '../state/selection.ts';
import { clearanceOf, Standing, Voided } from './Clearances.tsx';
import { Section } from './Section.tsx';

/** The decision on a piece: one button when it can be pressed, otherwise what stands in the way. */
export function DecideSection({ job, piece }: { job: OpenJob; piece: SheetPiece }) {
  const words = say().bench;
  const { clear, standing } = gates(job.sheet, job.findings, piece.id).cut;
  const last = clearanceOf(job.sheet, piece.id);
  const stands = last !== null && last.voidedBy.length === 0;
  return (
    <Section at="decide">
      {last && (stands ? <Standing clearance={last} /> : <Voided clearance={last} job={job} />)}
      {!clear && <InTheWay job={job} standing={standing} />}
      {clear && !stands && <ClearButton key={piece.id} job={job} piece={piece.id} again={last !== null} />}
      {asking.value?.piece !== piece.id && (
        <button type="button" class="button" onClick={() => beginAsk(job, piece.id)} data-testid="ask-again">
          {words.ask.begin}
        </button>
      )}
    </Section>
  );
}

/** Pressed once it says what it means; pressed again it is written. A change in between asks anew. */
function ClearButton({ job, piece, again }: { job: OpenJob; piece: string; again: boolean }) {
  const [asked, setAsked] = useState(false);
  const words = say().bench.decide;
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
      <p>{words.meaning}</p>
      {actor.value.name === '' && <p class="small">{words.nameless}</p>}
      <div class="row">
        <button
          type="button"
          class="button main"
          onClick={() => void act('piece.clear', { piece, judged: heads(job.entries), basis: 'rules' })}
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

function InTheWay({ job, standing }: { job: OpenJob; standing: readonly Finding[] }) {
  return (
    <div class="stack">
      <p>
        <strong>{say().bench.decide.inWay(standing.length)}</strong>
      </p>
      <ul class="list">
        {standing.map((finding) => (
          <li key={finding.id} class="bench-row">
            <button
              type="button"
              class="bench-pick"
              aria-pressed={isSelected('finding', finding.id)}
              onClick={() => toggle('finding', finding.id)}
            >
              <StateMark mark={finding.severity}>
                {say().general.severities[finding.severity]}: {findingText(finding, job.sheet)}
              </StateMark>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
