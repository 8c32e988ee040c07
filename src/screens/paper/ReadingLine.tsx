import type { PaperStep } from '../../core/guide/again/index.ts';
import { sayGuide } from '../../text/guide.ts';
import { sayShop } from '../../text/shop.ts';
import { readingInstruction } from '../dock/step-words.ts';
import { pointLabel, readingName, wordsOfPiece } from '../model/words.ts';
import { Box } from './PaperEdges.tsx';
import type { PaperContent } from './paper-content.ts';

type ReadingStep = Extract<PaperStep['step'], { on: 'reading' }>;

/** Names of the columns; above the first reading of every page. */
export function ReadingHead({ content }: { content: PaperContent }) {
  const words = sayShop().paper.columns;
  const { system, fraction } = content.sheet;
  return (
    <div class={`paper-reading head ${system}`}>
      <span>{words.number}</span>
      <span>{words.reading}</span>
      {system === 'imperial' ? (
        <>
          <span>{words.feet}</span>
          <span>{words.inches}</span>
          <span>{words.fraction(fraction)}</span>
        </>
      ) : (
        <span>{words.millimetres}</span>
      )}
      <span>{words.second}</span>
      <span>{words.without}</span>
    </div>
  );
}

/** One reading: what to tape, room for what the tape says, and for a second look where nothing else would show a slip. */
export function ReadingLine({ number, step, content }: { number: string; step: ReadingStep; content: PaperContent }) {
  const words = sayShop().paper;
  const { reading } = step;
  const { system } = content.sheet;
  return (
    <div class={`paper-reading ${system}`}>
      <span class="paper-number">{number}</span>
      <span class="paper-what">
        <strong>{readingName(reading, content.sheet)}</strong> <Told step={step} content={content} />
      </span>
      {reading.kind === 'lean' ? (
        <span class="paper-write wide">{words.degrees}</span>
      ) : system === 'imperial' ? (
        <>
          <span class="paper-write" />
          <span class="paper-write" />
          <span class="paper-write" />
        </>
      ) : (
        <span class="paper-write" />
      )}
      {content.second.has(reading.id) ? <span class="paper-write second" /> : <span class="paper-none">–</span>}
      <span class="paper-without">
        <Box label={words.noneHere} />
        <Box label={words.couldNot} />
      </span>
    </div>
  );
}

/** How to tape it. Ends of a taut tape are told once, in the list of points. */
function Told({ step: { reading }, content: { sheet } }: { step: ReadingStep; content: PaperContent }) {
  const { hook, taut, spot } = sayGuide();
  const { sentences, mistake } = readingInstruction(reading, sheet);
  const own = reading.slot !== null && wordsOfPiece(sheet, reading.piece)?.readings?.[reading.slot];
  const [from, to] = reading.points.map((id) => pointLabel(sheet, id));
  const how =
    reading.kind === 'straight' && !own && from && to
      ? `${hook(spot(from, []))} ${taut(spot(to, []))}`
      : sentences.join(' ');
  return (
    <small>
      {how}
      {mistake && ` ${mistake}`}
    </small>
  );
}
