import { useState } from 'preact/hooks';
import { say } from '../../../text/index.ts';
import { act } from '../../model/open-job.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';
import { PhotoDesk } from '../photo/PhotoDesk.tsx';
import { shotWords } from '../step-words.ts';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';

/** Take pictures of something, then tap where its points are. */
export function ShotStep({ job, piece, step, onward, head, moves }: StepProps<'shot'>) {
  const { shot } = step;
  const words = shotWords(job.sheet, piece, shot.slot);
  const photos = job.sheet.photos.filter((photo) => shot.photos.includes(photo.id));
  const [without, setWithout] = useState(false);
  const t = say().dock;
  if (without)
    return (
      <ReasonPicker
        question={t.step.reason}
        reasons={t.step.reasons.shot}
        onCancel={() => setWithout(false)}
        onReason={(reason) =>
          void act('photo.answer', { piece, slot: shot.slot, answer: 'could-not', reason }).then(onward)
        }
      />
    );
  return (
    <StepLayout
      foot={
        <>
          <div class="row spread">
            {moves}
            <button type="button" class="button plain" onClick={() => setWithout(true)}>
              {t.step.noPhoto}
            </button>
          </div>
          {(photos.length > 0 || shot.answer) && (
            <button type="button" class="button main wide" onClick={onward} data-testid="next">
              {t.step.goOn}
            </button>
          )}
        </>
      }
    >
      {head}
      <p>{words?.how}</p>
      {photos.length === 0 && (
        <div class="shot-drawing">
          <PieceDrawing
            judgement={job.pieces.get(piece)}
            sheet={job.sheet}
            piece={piece}
            width={360}
            height={240}
            askedPoints={shot.points}
          />
        </div>
      )}
      <PhotoDesk
        job={job}
        at={{ job: job.id, piece, step: step.key, slot: shot.slot }}
        photos={photos}
        points={shot.points}
        title={words?.title ?? ''}
      />
      {shot.answer && photos.length === 0 && (
        <p class="banner">{t.step.answered(t.step.noPhoto, shot.answer.reason)}</p>
      )}
    </StepLayout>
  );
}
