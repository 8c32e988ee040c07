import { useState } from 'preact/hooks';
import { type RemovedPhoto, removedPhotos } from '../../../core/job/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { sayWithdraw } from '../../../text/withdraw.ts';
import { actAll, deed, type OpenJob } from '../../model/open-job.ts';
import { usePhotoUrl } from './use-photo-url.ts';
import { WithdrawPhoto } from './WithdrawPhoto.tsx';

interface Props {
  job: OpenJob;
  /** Which of them. */
  of: (photo: RemovedPhoto['payload']) => boolean;
  onGone: (message: string) => void;
}

/** Pictures that were removed: each can come back, or go for good. */
export function RemovedPhotos({ job, of, onGone }: Props) {
  const removed = removedPhotos(job.entries).filter(({ payload }) => of(payload));
  const words = sayPhotos();
  if (removed.length === 0) return null;
  return (
    <section class="stack">
      <p class="quiet">
        {words.removed(removed.length)} {words.removedHow}
      </p>
      {removed.map((photo) => (
        <Removed key={photo.entry.id} photo={photo} job={job} onGone={onGone} />
      ))}
    </section>
  );
}

function Removed({ photo, job, onGone }: { photo: RemovedPhoto; job: OpenJob; onGone: (message: string) => void }) {
  const { payload, undos } = photo;
  const [withdrawing, setWithdrawing] = useState(false);
  const url = usePhotoUrl(payload.sha256);
  const words = sayPhotos();
  return (
    <div class="stack">
      <div class="row">
        {url && url !== 'missing' && <img class="thumb" src={url} alt={words.which(1, 1)} />}
        <button type="button" class="button" onClick={() => void actAll(undos.map((entry) => deed('undo', { entry })))}>
          {words.bringBack}
        </button>
        {!withdrawing && (
          <button type="button" class="button plain" onClick={() => setWithdrawing(true)}>
            {sayWithdraw().open}
          </button>
        )}
      </div>
      {withdrawing && (
        <WithdrawPhoto
          job={job}
          photo={payload.photo}
          sha256={payload.sha256}
          onClose={() => setWithdrawing(false)}
          onGone={onGone}
        />
      )}
    </div>
  );
}
