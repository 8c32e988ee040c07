import { askedFromNow } from '../../../core/guide/amend/index.ts';
import type { SheetPoint } from '../../../core/job/index.ts';
import { uuid } from '../../../device/clock.ts';
import { sayWalk } from '../../../text/walk.ts';
import { findingsOn } from '../../model/findings.ts';
import { actAll } from '../../model/open-job.ts';
import { go } from '../../model/route.ts';
import { hidden } from '../../model/second-looks.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { Banner } from '../../parts/marks.tsx';
import { Answered } from './EntryParts.tsx';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';
import { Takes } from './Takes.tsx';

/** A reading at a mark that is not there any more: it stays as it was read, and can be asked for from the mark that is. */
export function MovedStep({ job, piece, step, head, moves, mark }: StepProps<'reading'> & { mark: SheetPoint }) {
  const { reading } = step;
  const { sheet } = job;
  const words = sayWalk().moved;
  const speaking = findingsOn(job, 'reading', reading.id);
  const now = sheet.points.find(({ id }) => id === mark.replacedBy)?.label ?? '?';
  const askAgain = async (): Promise<void> => {
    const { deeds, reading: asked } = askedFromNow(sheet, reading, uuid);
    if (deeds.length > 0) await actAll(deeds);
    const found = sheet.readings.find(({ id }) => id === asked);
    go({ at: 'step', job: job.id, piece, step: found?.slot ?? asked });
  };
  return (
    <StepLayout foot={<div class="row spread">{moves}</div>}>
      {head}
      <Banner tone="note">
        <p>{words.before(mark.label)}</p>
        <button type="button" class="button" onClick={() => void askAgain()}>
          {words.fromNew(now)}
        </button>
      </Banner>
      {speaking.map((finding) => (
        <FindingLine key={finding.id} finding={finding} sheet={sheet} />
      ))}
      <Answered reading={reading} />
      {!hidden.value.has(reading.id) && (
        <Takes reading={reading} sheet={sheet} disagreement={speaking.find((f) => f.rule === 'takes-disagree')} />
      )}
      <div class="step-drawing">
        <PieceDrawing
          judgement={job.pieces.get(piece)}
          sheet={sheet}
          piece={piece}
          width={360}
          height={240}
          asked={reading}
        />
      </div>
    </StepLayout>
  );
}
