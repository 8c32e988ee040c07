import { say } from '../../../text/index.ts';
import { act } from '../../model/open-job.ts';
import { questionWords } from '../step-words.ts';
import type { StepProps } from './StepScreen.tsx';

/** A choice from a closed set, with "could not tell" beside it. One tap answers and goes on. */
export function QuestionStep({ job, piece, step, onward }: StepProps<'question'>) {
  const { question } = step;
  const words = questionWords(job.sheet, piece, question.slot);
  const answer = (choice: string): void => {
    void act('question.answer', { piece, slot: question.slot, choice, text: '' }).then(onward);
  };
  const choices = [...question.choices, 'could-not-tell'];
  return (
    <div class="stack">
      <p class="quiet">{words?.help}</p>
      <div class="choices">
        {choices.map((choice) => (
          <button
            key={choice}
            type="button"
            class="button choice"
            aria-pressed={question.choice === choice}
            onClick={() => answer(choice)}
          >
            {words?.choices[choice] ?? (choice === 'could-not-tell' ? say().guide.couldNotTell : choice)}
          </button>
        ))}
      </div>
      {question.choice !== null && (
        <button type="button" class="button main" onClick={onward}>
          {say().dock.step.goOn}
        </button>
      )}
    </div>
  );
}
