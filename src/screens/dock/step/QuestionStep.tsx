import { useEffect, useState } from 'preact/hooks';
import type { Finding } from '../../../core/check/index.ts';
import type { Sheet, SheetQuestion } from '../../../core/job/index.ts';
import { sayGuide } from '../../../text/guide.ts';
import { say } from '../../../text/index.ts';
import { findingsOn } from '../../model/findings.ts';
import { act, judged, type OpenJob } from '../../model/open-job.ts';
import { go, routeHash } from '../../model/route.ts';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { questionWords } from '../step-words.ts';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';

/**
 * A choice from a closed set, with "could not tell" beside it. One tap answers and goes on. What was answered for another
 * piece of the job stands first. Where choices do not go together the step says so and stays.
 */
export function QuestionStep({ job, piece, step, onward, head, moves }: StepProps<'question'>) {
  const { question } = step;
  const words = questionWords(job.sheet, piece, question.slot);
  const [own, setOwn] = useOwnWords(question);
  const settled = useSettled();
  const answer = async (choice: string, text: string): Promise<void> => {
    await act('question.answer', { piece, slot: question.slot, choice, text: text.trim() });
    drafts.delete(`${piece} ${question.slot}`);
    await judged();
    if (conflictsOn(null, question).length > 0) return;
    if (opensList(question.slot, choice)) go({ at: 'things', job: job.id, piece, thing: null });
    else onward();
  };
  const conflicts = conflictsOn(job, question);
  const goOn = async (): Promise<void> => {
    if (question.choice !== null && own.trim() !== question.text) await answer(question.choice, own);
    else onward();
  };
  const before = question.choice === null ? answeredBefore(job.sheet, question) : null;
  const named = (choice: string): string =>
    words?.choices[choice] ?? (choice === 'could-not-tell' ? sayGuide().couldNotTell : choice);
  return (
    <StepLayout
      foot={
        <>
          <div class="row spread">{moves}</div>
          {question.choice !== null && (
            <button type="button" class="button main wide" onClick={() => void goOn()}>
              {conflicts.length > 0 ? say().dock.step.goOnAnyway : say().dock.step.goOn}
            </button>
          )}
        </>
      }
    >
      {head}
      <div class="strip" role="status" aria-live="polite">
        {conflicts.map((finding) => (
          <FindingLine key={finding.id} finding={finding} sheet={job.sheet} />
        ))}
      </div>
      {conflicts.length === 0 && <p class="quiet">{words?.help}</p>}
      {question.words && <OwnWords text={own} onText={setOwn} />}
      <div class={settled ? 'choices' : 'choices settling'}>
        {before && (
          <button
            type="button"
            class="button choice"
            onClick={() => void answer(before.choice, own.trim() === '' ? before.text : own)}
          >
            {say().dock.step.asFor(before.of, [named(before.choice), before.text].filter(Boolean).join(', '))}
          </button>
        )}
        {[...question.choices, 'could-not-tell'].map((choice) => (
          <button
            key={choice}
            type="button"
            class="button choice"
            aria-pressed={question.choice === choice}
            onClick={() => void answer(choice, own)}
          >
            {named(choice)}
          </button>
        ))}
      </div>
      {question.choice !== null && opensList(question.slot, question.choice) && (
        <a class="button wide" href={routeHash({ at: 'things', job: job.id, piece, thing: null })}>
          {say().dock.walk.things(job.sheet.obstructions.filter((thing) => thing.piece === piece).length)}
        </a>
      )}
    </StepLayout>
  );
}

/** ms in which nobody has read a question that was just shown: a tap then is the second half of the one before. */
const SETTLES = 350;

function useSettled(): boolean {
  const [settled, setSettled] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(true), SETTLES);
    return () => clearTimeout(timer);
  }, []);
  return settled;
}

/** Words typed before anything was chosen, by piece and slot: they are still there when a person looks elsewhere first. */
const drafts = new Map<string, string>();

function useOwnWords({ piece, slot, text }: SheetQuestion): [string, (text: string) => void] {
  const key = `${piece} ${slot}`;
  const [own, setOwn] = useState(drafts.get(key) ?? text);
  return [
    own,
    (typed) => {
      drafts.set(key, typed);
      setOwn(typed);
    },
  ];
}

const conflictsOn = (job: OpenJob | null, { piece, slot }: SheetQuestion): Finding[] =>
  findingsOn(job, 'question', slot).filter((finding) => finding.rule === 'choice-conflict' && finding.piece === piece);

/** What the piece declared last has for the same question, where its answer is one of the choices here. */
function answeredBefore(sheet: Sheet, question: SheetQuestion): { of: string; choice: string; text: string } | null {
  const others = sheet.pieces.filter(({ id }) => id !== question.piece).reverse();
  for (const { id, name } of others) {
    const same = sheet.questions.find(({ piece, slot }) => piece === id && slot === question.slot);
    if (same && same.choice !== null && question.choices.includes(same.choice))
      return { of: name, choice: same.choice, text: question.words ? same.text : '' };
  }
  return null;
}

function OwnWords({ text, onText }: { text: string; onText: (text: string) => void }) {
  return (
    <label class="field">
      <span>{say().dock.step.ownWords}</span>
      <input value={text} maxLength={400} onInput={(event) => onText(event.currentTarget.value)} />
    </label>
  );
}

/** The answer that there is something in the way leads to the list of it. */
const opensList = (slot: string, choice: string): boolean => slot === 'in-the-way' && choice === 'listed';
