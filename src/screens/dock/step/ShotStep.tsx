import { useState } from 'preact/hooks';
import type { SheetPhoto } from '../../../core/job/index.ts';
import { uuid } from '../../../device/clock.ts';
import { takePicture } from '../../../device/photos/index.ts';
import { say } from '../../../text/index.ts';
import { act, actAll, deed } from '../../model/open-job.ts';
import { store } from '../../model/services.ts';
import { pointLabel } from '../../model/words.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { Banner } from '../../parts/marks.tsx';
import { PhotoView } from '../../parts/PhotoView.tsx';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';
import { shotWords } from '../step-words.ts';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';

/** Below this mean brightness (0 to 255) a picture is mostly night. Our own trials, no source. */
const DARK = 35;
/** Below this variance of the Laplacian on a small copy edges are smeared. Our own trials, no source. */
const BLURRED = 20;

/** Take a picture of something, then tap where its points are. */
export function ShotStep({ job, piece, step, onward, head, moves }: StepProps<'shot'>) {
  const { shot } = step;
  const words = shotWords(job.sheet, piece, shot.slot);
  const photos = job.sheet.photos.filter((photo) => shot.photos.includes(photo.id));
  const [without, setWithout] = useState(false);
  const camera = useCamera(job.id, piece, shot.slot);
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
        <div class="row spread">
          {moves}
          <button type="button" class="button plain" onClick={() => setWithout(true)}>
            {t.step.noPhoto}
          </button>
        </div>
      }
    >
      {head}
      <p>{words?.how}</p>
      {camera.message && <Banner tone="doubt">{camera.message}</Banner>}
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
      {photos.map((photo) => (
        <MarkPhoto key={photo.id} photo={photo} job={job} points={shot.points} title={words?.title ?? ''} />
      ))}
      {/* The place is written before the camera opens: the system may end this page while it is in front. */}
      <label class={`button wide ${photos.length === 0 ? 'main' : ''}`} onPointerDown={camera.ready}>
        {camera.busy ? t.photo.reading : photos.length === 0 ? t.photo.take : t.photo.another}
        <input
          class="sr-only"
          type="file"
          accept="image/*"
          capture="environment"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (file) void camera.add(file);
          }}
        />
      </label>
      {shot.answer && photos.length === 0 && (
        <p class="banner">{t.step.answered(t.step.noPhoto, shot.answer.reason)}</p>
      )}
      {(photos.length > 0 || shot.answer) && (
        <button type="button" class="button main wide" onClick={onward} data-testid="next">
          {t.step.goOn}
        </button>
      )}
    </StepLayout>
  );
}

function useCamera(job: string, piece: string, slot: string) {
  const [busy, setBusy] = useState(false);
  const [message, setMessage] = useState('');
  const ready = (): void => {
    void store()
      .settings.set('place', { job, piece, step: slot })
      .catch(() => undefined);
  };
  const add = async (file: File): Promise<void> => {
    setBusy(true);
    setMessage('');
    const taken = await takePicture(file);
    setBusy(false);
    if (!taken.ok) {
      setMessage(say().dock.photo.unreadable);
      return;
    }
    const { bytes, sha256, mime, width, height, size, brightness, sharpness } = taken.picture;
    const payload = { photo: uuid(), sha256, mime, size, width, height, piece, slot, placeKept: false };
    await actAll([deed('photo.add', payload)], [{ sha256, mime, size, bytes }]);
    if (brightness < DARK) setMessage(say().dock.photo.dark);
    else if (sharpness < BLURRED) setMessage(say().dock.photo.blurred);
  };
  return { busy, message, ready, add };
}

/** The next point without a mark is asked for; a chip takes a mark away again. */
function MarkPhoto(props: {
  photo: SheetPhoto;
  job: StepProps<'shot'>['job'];
  points: readonly string[];
  title: string;
}) {
  const { photo, job, points, title } = props;
  const words = say().dock.photo;
  const marked = new Map(photo.marks.map((mark) => [mark.point, mark]));
  const next = points.find((id) => !marked.has(id)) ?? null;
  const place = (x: number, y: number): void => {
    void act('photo.mark', { photo: photo.id, x, y, point: next, text: '' });
  };
  return (
    <section class="stack">
      <p class="mark-ask">{next ? words.mark(pointLabel(job.sheet, next)) : words.allMarked}</p>
      {next ? (
        <PhotoView photo={photo} sheet={job.sheet} title={title} onPlace={place} />
      ) : (
        <PhotoView photo={photo} sheet={job.sheet} title={title} />
      )}
      <div class="row">
        {photo.marks.map((mark) => {
          const label = mark.point ? pointLabel(job.sheet, mark.point) : '·';
          return (
            <button
              key={mark.id}
              type="button"
              class="button"
              aria-label={`${label} ${words.unmark}`}
              onClick={() => void act('undo', { entry: mark.id })}
            >
              {label} ✕
            </button>
          );
        })}
      </div>
    </section>
  );
}
