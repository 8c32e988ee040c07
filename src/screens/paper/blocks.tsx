import type { JSX } from 'preact';
import type { PaperStep } from '../../core/guide/again/index.ts';
import { sayCautions } from '../../text/cautions.ts';
import { sayShop } from '../../text/shop.ts';
import { wordsOfPiece } from '../model/words.ts';
import { EndBlock, HeadBlock, PointsBlock } from './HeadBlocks.tsx';
import type { PaperContent } from './paper-content.ts';
import { ReadingLine } from './ReadingLine.tsx';
import { FastenerRows, QuestionBlock, RunBlock, ShotBlock } from './StepBlocks.tsx';

/** A part of a sheet that is not torn apart. columns: the heads it stands under, by name. keep: with what follows. */
export interface Block {
  readonly key: string;
  readonly columns: string | null;
  readonly keep: boolean;
  readonly show: () => JSX.Element;
}

/** The sheet from its head to its foot, the steps in the order of the walk. */
export function blocksOf(content: PaperContent): Block[] {
  return [
    { key: 'head', columns: null, keep: false, show: () => <HeadBlock content={content} /> },
    { key: 'points', columns: null, keep: false, show: () => <PointsBlock content={content} /> },
    ...content.steps.flatMap((step, index) => [
      ...before(step, content.steps[index - 1], content),
      ...blocksOfStep(step, content),
    ]),
    { key: 'end', columns: null, keep: false, show: () => <EndBlock content={content} /> },
  ];
}

/** Above a step: what can hurt somebody there, and under which condition it is asked at all, said once for several in a row. */
function before({ number, step, when }: PaperStep, last: PaperStep | undefined, content: PaperContent): Block[] {
  const words = sayShop().paper;
  // Between readings these lines stand under the same column heads.
  const columns = step.on === 'reading' ? 'readings' : null;
  const blocks: Block[] = step.cautions.map((caution) => ({
    key: `${number} ${caution}`,
    columns,
    keep: true,
    show: () => (
      <p class="paper-caution">
        <strong>{sayCautions().heading}:</strong> {sayCautions().texts[caution]}
      </p>
    ),
  }));
  if (!when || JSON.stringify(when) === JSON.stringify(last?.when)) return blocks;
  const question = wordsOfPiece(content.sheet, content.piece)?.questions[when.question];
  const choices = when.is.map((choice) => question?.choices[choice] ?? choice);
  const text = words.onlyIf(question?.title ?? when.question, choices);
  return [...blocks, { key: `${number} when`, columns, keep: true, show: () => <p class="paper-when">{text}</p> }];
}

function blocksOfStep({ number, step }: PaperStep, content: PaperContent): Block[] {
  const plain = { key: number, columns: null, keep: false };
  switch (step.on) {
    case 'reading':
      return [
        { ...plain, columns: 'readings', show: () => <ReadingLine number={number} step={step} content={content} /> },
      ];
    case 'question':
      return [{ ...plain, show: () => <QuestionBlock number={number} step={step} content={content} /> }];
    case 'shot':
      return [{ ...plain, show: () => <ShotBlock number={number} step={step} content={content} /> }];
    case 'run':
      return [
        { ...plain, keep: true, show: () => <RunBlock number={number} step={step} content={content} /> },
        { ...plain, key: `${number} rows`, show: () => <FastenerRows step={step} content={content} /> },
      ];
  }
}
