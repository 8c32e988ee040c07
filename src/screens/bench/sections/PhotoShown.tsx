import { useState } from 'preact/hooks';
import type { SheetPhoto } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { PhotoDoubt } from '../../parts/photo/PhotoDoubt.tsx';
import { PhotoView } from '../../parts/photo/PhotoView.tsx';
import { RemovePhoto } from '../../parts/photo/RemovePhoto.tsx';
import type { Lit } from '../state/lit.ts';
import { largePhoto, selected } from '../state/selection.ts';
import { OnPhoto } from './OnPhoto.tsx';
import { jumpTo } from './Section.tsx';

interface Props {
  photo: SheetPhoto;
  job: OpenJob;
  title: string;
  lit: Lit;
  onGone: (message: string) => void;
}

/** A picture in the list, with all that is on it; a tap shows it where the plan is, as large as there is room. */
export function PhotoShown({ photo, job, title, lit, onGone }: Props) {
  const [removing, setRemoving] = useState(false);
  const words = sayBench().photos;
  const open = (): void => {
    largePhoto.value = photo.id;
    selected.value = { on: 'photo', id: photo.id };
    requestAnimationFrame(() => jumpTo('photo'));
  };
  return (
    <div class={`bench-row stack ${lit.photos.has(photo.id) ? 'lit' : ''}`} data-row={`photo:${photo.id}`}>
      <PhotoView photo={photo} sheet={job.sheet} title={title} lit={lit} larger={{ name: words.large(title), open }} />
      <PhotoDoubt sha256={photo.sha256} />
      <OnPhoto photo={photo} sheet={job.sheet} />
      <div class="row spread">
        <p class="small quiet">{say().general.signedBy(whoText(photo.who), dateText(photo.at))}</p>
        {!removing && (
          <button type="button" class="button plain" onClick={() => setRemoving(true)}>
            {words.remove}
          </button>
        )}
      </div>
      {removing && <RemovePhoto job={job} photo={photo} onClose={() => setRemoving(false)} onGone={onGone} />}
    </div>
  );
}
