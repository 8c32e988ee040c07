import { useState } from 'preact/hooks';
import type { SheetPhoto } from '../../../core/job/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { sayWithdraw } from '../../../text/withdraw.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { WithdrawPhoto } from './WithdrawPhoto.tsx';

interface Props {
  job: OpenJob;
  photo: SheetPhoto;
  onClose: () => void;
  onGone: (message: string) => void;
}

/** Two ways out: removed it can come back, withdrawn it cannot. */
export function RemovePhoto({ job, photo, onClose, onGone }: Props) {
  const [forGood, setForGood] = useState(false);
  const words = sayPhotos();
  if (forGood)
    return <WithdrawPhoto job={job} photo={photo.id} sha256={photo.sha256} onClose={onClose} onGone={onGone} />;
  return (
    <section class="stack photo-panel" aria-label={words.remove}>
      <p>{words.removeHow}</p>
      <div class="row">
        <button
          type="button"
          class="button main"
          onClick={() => {
            onClose();
            void act('undo', { entry: photo.entry });
          }}
        >
          {words.removeNow}
        </button>
        <button type="button" class="button" onClick={() => setForGood(true)}>
          {sayWithdraw().open}
        </button>
        <button type="button" class="button plain" onClick={onClose}>
          {words.keep}
        </button>
      </div>
    </section>
  );
}
