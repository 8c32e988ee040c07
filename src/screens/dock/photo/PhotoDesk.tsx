import './desk.css';
import { useState } from 'preact/hooks';
import type { SheetPhoto } from '../../../core/job/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { Banner } from '../../parts/marks.tsx';
import { RemovedPhotos } from '../../parts/photo/RemovedPhotos.tsx';
import { usePhotoUrl } from '../../parts/photo/use-photo-url.ts';
import { OpenPhoto } from './OpenPhoto.tsx';
import { type TakenAt, useCamera } from './use-camera.ts';

interface Props {
  job: OpenJob;
  at: TakenAt;
  photos: readonly SheetPhoto[];
  /** The points that should be marked on one of them. */
  points: readonly string[];
  title: string;
}

/** The pictures taken at one place of the walk: one open to be marked, the others small beside it, and the camera. */
export function PhotoDesk({ job, at, photos, points, title }: Props) {
  const [chosen, setChosen] = useState<string | null>(null);
  const [gone, setGone] = useState('');
  const camera = useCamera(at);
  const words = sayPhotos();
  const open = photos.find((photo) => photo.id === chosen) ?? photos.at(-1);
  const marked = new Set(photos.flatMap((photo) => photo.marks.map((mark) => mark.point)));
  const add = async (file: File): Promise<void> => {
    const made = await camera.add(file);
    if (made !== null) setChosen(made);
  };
  return (
    <>
      {camera.message && <Banner tone="doubt">{camera.message}</Banner>}
      {gone && <Banner tone="note">{gone}</Banner>}
      {photos.length > 1 && (
        <ul class="row photo-strip" aria-label={words.choose}>
          {photos.map((photo, i) => (
            <li key={photo.id}>
              <Thumb
                photo={photo}
                name={words.which(i + 1, photos.length)}
                isOpen={photo === open}
                onOpen={() => setChosen(photo.id)}
              />
            </li>
          ))}
        </ul>
      )}
      {open && (
        <OpenPhoto
          key={open.id}
          job={job}
          photo={open}
          title={title}
          points={points}
          unmarked={points.filter((point) => !marked.has(point))}
          onGone={setGone}
        />
      )}
      {/* The place is written before the camera opens: the system may end this page while it is in front. */}
      <label class={`button wide ${photos.length === 0 ? 'main' : ''}`} onPointerDown={camera.ready}>
        {camera.busy ? words.reading : photos.length === 0 ? words.take : words.another}
        <input
          class="sr-only"
          type="file"
          accept="image/*"
          capture="environment"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (file) void add(file);
          }}
        />
      </label>
      {photos.length > 0 && <p class="quiet small">{words.onlySees}</p>}
      <RemovedPhotos
        job={job}
        of={({ piece, slot, reading, run }) =>
          piece === at.piece && slot === at.slot && reading === at.reading && run === at.run
        }
        onGone={setGone}
      />
    </>
  );
}

function Thumb(props: { photo: SheetPhoto; name: string; isOpen: boolean; onOpen: () => void }) {
  const url = usePhotoUrl(props.photo.sha256);
  return (
    <button type="button" class="thumb" aria-label={props.name} aria-pressed={props.isOpen} onClick={props.onOpen}>
      {url && url !== 'missing' ? <img src={url} alt="" /> : <span class="small">{props.name}</span>}
    </button>
  );
}
