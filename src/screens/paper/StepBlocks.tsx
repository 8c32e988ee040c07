import type { PaperStep } from '../../core/guide/again/index.ts';
import { Closure } from '../../core/job/index.ts';
import { sayEdges } from '../../text/edges.ts';
import { sayGuide } from '../../text/guide.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { questionWords, runWords, shotWords } from '../dock/step-words.ts';
import { pointLabel } from '../model/words.ts';
import { Box, Line } from './PaperEdges.tsx';
import type { PaperContent } from './paper-content.ts';

type Of<On extends PaperStep['step']['on']> = Extract<PaperStep['step'], { on: On }>;
interface Props<On extends PaperStep['step']['on']> {
  number: string;
  step: Of<On>;
  content: PaperContent;
}

export function QuestionBlock({ number, step, content }: Props<'question'>) {
  const words = questionWords(content.sheet, content.piece, step.key);
  const { choices } = step.question;
  return (
    <div class="paper-step">
      <span class="paper-number">{number}</span>
      <div>
        <strong>{words?.title ?? step.key}</strong> <small>{words?.help}</small>
        <p class="paper-choices">
          {choices.map((choice) => (
            <Box key={choice} label={words?.choices[choice] ?? choice} />
          ))}
          <Box label={sayGuide().couldNotTell} />
        </p>
        {step.question.words && (
          <p class="paper-fill">
            {sayShop().paper.inWords}: <Line long />
          </p>
        )}
      </div>
    </div>
  );
}

export function ShotBlock({ number, step, content }: Props<'shot'>) {
  const words = shotWords(content.sheet, content.piece, step.key);
  const labels = step.shot.points.map((id) => pointLabel(content.sheet, id));
  return (
    <div class="paper-step">
      <span class="paper-number">{number}</span>
      <p>
        <Box label={sayShop().paper.photo} /> <strong>{words?.title ?? step.key}</strong> <small>{words?.how}</small>{' '}
        {labels.length > 0 && <small>{sayShop().paper.inPicture(labels.join(', '))}</small>}
      </p>
    </div>
  );
}

/** Parts of an edge that are closed in different ways. */
const STRETCHES = 3;

/** An edge: its line, and for each stretch what closes it. */
export function RunBlock({ number, step, content }: Props<'run'>) {
  const words = sayShop().paper;
  const { lines, manners } = say().general;
  const { names: edges, line, manner } = sayEdges();
  const told = runWords(content.sheet, content.piece, step.key);
  const labels = step.run.points.map((id) => pointLabel(content.sheet, id)).join(' – ');
  return (
    <div class="paper-step">
      <span class="paper-number">{number}</span>
      <div>
        <strong>{told?.title ?? labels}</strong> <small>{told?.how ?? labels}</small>
        <p class="paper-choices">
          {line}{' '}
          {Object.entries(lines).map(([key, of]) => (
            <Box key={key} label={of} />
          ))}
        </p>
        <p class="paper-choices">
          {manner}{' '}
          {Object.entries(manners).map(([key, how]) => (
            <Box key={key} label={how} />
          ))}
        </p>
        <table class="paper-stretches">
          <thead>
            <tr>
              <th scope="col">{words.stretch.fromTo}</th>
              <th scope="col">{words.stretch.closes}</th>
              <th scope="col">{words.stretch.presence}</th>
              <th scope="col">{words.stretch.into}</th>
              <th scope="col">{words.stretch.pulls}</th>
            </tr>
          </thead>
          <tbody>
            {Array.from({ length: STRETCHES }, (_, row) => (
              <tr key={row}>
                <td />
                <td />
                <td>
                  <Box label={edges.presence.there} /> <Box label={words.stretch.planned} />
                </td>
                <td />
                <td />
              </tr>
            ))}
          </tbody>
        </table>
        <small>{words.stretch.closures(Closure.options.map((closure) => edges.closures[closure]).join(', '))}</small>
      </div>
    </div>
  );
}

/** Rows beyond what is known of an edge. */
const SPARE = 6;
const FEWEST = 36;

/** A numbered line for the place of each fastener. */
export function FastenerRows({ step, content }: Omit<Props<'run'>, 'number'>) {
  const words = sayShop().paper;
  const count = Math.max(FEWEST, step.run.stations.length + SPARE);
  const unit = content.sheet.system === 'metric' ? 'mm' : 'in';
  return (
    <div class="paper-step">
      <span />
      <div>
        <small>{words.fasteners(unit)}</small>
        <ol class="paper-fasteners">
          {Array.from({ length: count }, (_, index) => (
            <li key={index}>
              <span class="paper-number">{index + 1}</span>
              <Line />
            </li>
          ))}
        </ol>
      </div>
    </div>
  );
}
