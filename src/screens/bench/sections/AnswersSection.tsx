import type { SheetQuestion } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { StateMark } from '../../parts/marks.tsx';
import { choiceText, questionTitle } from '../names.ts';
import type { Lit } from '../state/lit.ts';
import { AskTick } from './AskTick.tsx';
import { Section } from './Section.tsx';

/** What was answered about the use of the piece. */
export function AnswersSection({ job, piece, lit }: { job: OpenJob; piece: string; lit: Lit }) {
  const questions = job.sheet.questions.filter((question) => question.piece === piece);
  return (
    <Section at="answers">
      {questions.length === 0 && <p class="quiet">{sayBench().answers.none}</p>}
      <ul class="list">
        {questions.map((question) => (
          <AnswerRow key={question.slot} question={question} job={job} lit={lit.questions.has(question.slot)} />
        ))}
      </ul>
    </Section>
  );
}

function AnswerRow({ question, job, lit }: { question: SheetQuestion; job: OpenJob; lit: boolean }) {
  const { sheet } = job;
  const title = questionTitle(sheet, question.piece, question.slot);
  const { choice, text } = question;
  const unsure = choice === 'could-not-tell';
  return (
    <li class={`bench-row bench-answer ${lit ? 'lit' : ''}`} data-row={`question:${question.slot}`}>
      <p class="quiet">{title}</p>
      <p>
        {choice === null && <StateMark mark="open">{sayBench().answers.open}</StateMark>}
        {choice !== null && unsure && <StateMark mark="doubt">{choiceText(sheet, question, choice)}</StateMark>}
        {choice !== null && !unsure && <strong>{choiceText(sheet, question, choice)}</strong>}
        {text !== '' && <span class="bench-said"> {text}</span>}
      </p>
      <AskTick sheet={sheet} piece={question.piece} on="question" id={question.slot} name={title} />
    </li>
  );
}
