import { CAUTIONS } from '../../../core/guide/index.ts';
import type { Obstruction } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { sayCautions } from '../../../text/cautions.ts';
import { sayEdges } from '../../../text/edges.ts';
import { say } from '../../../text/index.ts';
import { isolated } from '../../../text/isolated.ts';
import { saySheet } from '../../../text/sheet.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import type { Block } from '../../paper/blocks.tsx';
import { choiceText, questionTitle } from '../names.ts';
import { placeText, sizesText } from '../sections/ThingsSection.tsx';
import { plain } from './block-parts.tsx';
import type { SheetContent } from './sheet-content.ts';

/** What is in the way, and what the cloth does about it. */
export function thingBlocks(content: SheetContent): Block[] {
  const things = content.job.sheet.obstructions.filter(({ piece }) => piece === content.piece.id);
  if (things.length === 0) return [plain('no things', () => <p>{saySheet().noThings}</p>)];
  return things.map((thing) => plain(thing.id, () => <Thing thing={thing} content={content} />));
}

function Thing({ thing, content: { job } }: { thing: Obstruction; content: SheetContent }) {
  const words = sayBench().things;
  const { names } = sayEdges();
  const { kind, label, treatment, needed, note } = thing;
  const told = [
    treatment ? names.treatments[treatment] : words.untreated,
    needed !== null && words.needed[needed],
    isolated(note),
  ].filter((fact): fact is string => typeof fact === 'string' && fact !== '');
  return (
    <p class="sheet-line">
      <strong>{words.name(names.obstructions[kind], label)}:</strong> <strong>{told.join(' · ')}.</strong>{' '}
      {placeText(thing, job)}
      {sizesText(job.sheet, thing)}
    </p>
  );
}

/** Questions with an answer, two beside each other. */
export function answerBlocks({ job: { sheet }, piece }: SheetContent): Block[] {
  const questions = sheet.questions.filter((question) => question.piece === piece.id);
  const pairs = Array.from({ length: Math.ceil(questions.length / 2) }, (_, i) => questions.slice(i * 2, i * 2 + 2));
  return pairs.map((pair, i) =>
    plain(`answers ${i}`, () => (
      <div class="sheet-answers">
        {pair.map((question) => (
          <p key={question.slot}>
            {questionTitle(sheet, piece.id, question.slot)}{' '}
            <strong>
              {question.choice === null ? sayBench().answers.open : choiceText(sheet, question, question.choice)}
            </strong>{' '}
            {isolated(question.text)}
          </p>
        ))}
      </div>
    )),
  );
}

export function cautionBlocks({ piece }: SheetContent): Block[] {
  const keys = new Set(piece.cautions.flatMap((caution) => caution.keys));
  return CAUTIONS.filter((caution) => keys.has(caution)).map((caution) =>
    plain(`caution ${caution}`, () => <p class="sheet-caution">{sayCautions().texts[caution]}</p>),
  );
}

export function noteBlocks({ job: { sheet } }: SheetContent): Block[] {
  const onPhotos = new Set(sheet.photos.map(({ id }) => id));
  const written = sheet.notes.filter(({ on }) => on === null || !onPhotos.has(on));
  return [
    ...(sheet.details.note === '' ? [] : [plain('job note', () => <p class="sheet-line">{sheet.details.note}</p>)]),
    ...written.map((note) =>
      plain(note.id, () => (
        <p class="sheet-line">
          {isolated(note.text)} <small>{say().general.signedBy(whoText(note.who), dateText(note.at))}</small>
        </p>
      )),
    ),
  ];
}
