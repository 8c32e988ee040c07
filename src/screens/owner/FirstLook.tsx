import type { Step } from '../../core/guide/index.ts';
import type { Sheet, SheetReading } from '../../core/job/index.ts';
import { sayLessons, sayOwner } from '../../text/owner.ts';
import { StepLayout } from '../dock/step/StepLayout.tsx';
import type { FirstProps } from '../dock/step/step-props.ts';
import { questionWords, runWords, shotWords } from '../dock/step-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';
import { BoatFromAbove } from '../parts/lesson/BoatFromAbove.tsx';
import { Lesson } from '../parts/lesson/Lesson.tsx';
import { lessonsOf, sidesOf } from '../parts/lesson/lessons-of.ts';
import { PlainText, WordsHere } from '../parts/lesson/PlainWords.tsx';
import { Framing } from './Framing.tsx';
import { ownerInstruction } from './owner-words.ts';

/** Before an answer is asked for: where on the boat, what to do in plain words, how it is held right and wrong. */
export function FirstLook({ job, piece, step, head, moves, look, enter }: FirstProps) {
  const words = sayOwner().look;
  return (
    <StepLayout
      foot={
        <>
          <div class="row spread beside">{moves}</div>
          <button type="button" class="button main wide" onClick={enter} data-testid="enter">
            {step.on === 'shot' ? words.camera : step.on === 'run' ? words.run : words.type}
          </button>
        </>
      }
    >
      {head}
      {look && <p class="state note">{look.fromOtherEnd ? sayOwner().again.otherEnd : sayOwner().again.fresh}</p>}
      {step.on === 'shot' ? (
        <Framing job={job} piece={piece} shot={step.shot} />
      ) : (
        <div class="look-drawing">
          <Where job={job} piece={piece} step={step} />
        </div>
      )}
      <Told job={job} step={step} />
      <Held job={job} step={step} />
      <Sides job={job} step={step} />
    </StepLayout>
  );
}

interface Props {
  job: OpenJob;
  step: Step;
}

function Where({ job, piece, step }: Props & { piece: string }) {
  const common = { judgement: job.pieces.get(piece), sheet: job.sheet, piece, width: 360, height: 210 };
  const along = step.on === 'reading' ? pointsAlong(step.reading, job.sheet) : null;
  if (along) return <PieceDrawing {...common} askedEdge={along} askedPoints={along} values="none" />;
  if (step.on === 'reading') return <PieceDrawing {...common} asked={step.reading} values="none" />;
  return <PieceDrawing {...common} askedEdge={pointsOf(step)} askedPoints={pointsOf(step)} values="none" />;
}

/** The way a tape takes that lies on the surface: never drawn as if it went straight across. */
function pointsAlong({ kind, points, via = [], run }: SheetReading, { runs }: Sheet): readonly string[] | null {
  if (kind !== 'girth') return null;
  const [from, to] = points;
  const edge = runs.find(({ id }) => id === run)?.points;
  return edge ?? (from && to && via.length > 0 ? [from, ...via, to] : null);
}

const pointsOf = (step: Step): readonly string[] =>
  step.on === 'reading'
    ? step.reading.points
    : step.on === 'run'
      ? step.run.points
      : step.on === 'shot'
        ? step.shot.points
        : [];

const kindOf = ({ sheet }: OpenJob, piece: string) => sheet.pieces.find(({ id }) => id === piece)?.kind;

/** What to do, with every word of the trade explained at a tap; then the usual slip. */
function Told({ job, step }: Props) {
  const { sheet } = job;
  if (step.on === 'reading') {
    const { text, mistake } = ownerInstruction(step.reading, sheet);
    const kind = kindOf(job, step.reading.piece);
    return (
      <>
        <PlainText class="look-text" text={text} kind={kind} />
        {mistake && <PlainText class="quiet" text={sayOwner().look.hint(mistake)} kind={kind} />}
      </>
    );
  }
  const how =
    step.on === 'run'
      ? runWords(sheet, step.run.piece, step.key)?.how
      : step.on === 'shot'
        ? shotWords(sheet, step.shot.piece, step.key)?.how
        : undefined;
  const piece = step.on === 'run' ? step.run.piece : step.on === 'shot' ? step.shot.piece : '';
  return how ? <PlainText class="look-text" text={how} kind={kindOf(job, piece)} /> : null;
}

function Held({ job, step }: Props) {
  if (step.on === 'shot' || step.on === 'question') return null;
  const lessons = step.on === 'reading' ? lessonsOf(step.reading, job.sheet) : (['one-end', 'mark'] as const);
  return (
    <section class="stack">
      <h2>{sayLessons().heading}</h2>
      {lessons.map((lesson) => (
        <Lesson key={lesson} lesson={lesson} />
      ))}
    </section>
  );
}

/** Which side is port, where a step's points lie on one. */
function Sides({ job, step }: Props) {
  const sides = sidesOf(pointsOf(step), job.sheet);
  if (sides.size === 0) return null;
  const words = sayLessons().sides;
  const port = sides.get('port');
  const starboard = sides.get('starboard');
  return (
    <section class="stack">
      <h2>{words.heading}</h2>
      <p>
        {words.facing} {words.port} {words.starboard}
      </p>
      <BoatFromAbove
        lit={[...sides.keys()]}
        alt={words.boatAlt}
        left={port ? port.join(', ') : ''}
        right={starboard ? starboard.join(', ') : ''}
      />
      {port && <p class="small">{words.here(port.join(', '), words.portSide)}</p>}
      {starboard && <p class="small">{words.here(starboard.join(', '), words.starboardSide)}</p>}
    </section>
  );
}

/** At the head of every step: the way back to the look before it, and the trade's words where the step's own screen has them. */
export function StepWords({ job, step, again }: Props & { again: (() => void) | null }) {
  const { sheet } = job;
  const texts: (string | undefined)[] = [];
  if (step.on === 'question') {
    const words = questionWords(sheet, step.question.piece, step.key);
    texts.push(words?.title, words?.help, ...Object.values(words?.choices ?? {}));
  }
  return (
    <>
      {again && (
        <button type="button" class="button plain how-again" onClick={again}>
          {sayOwner().look.again}
        </button>
      )}
      {step.on === 'question' && (
        <WordsHere texts={texts.filter((text) => text !== undefined)} kind={kindOf(job, step.question.piece)} />
      )}
    </>
  );
}
