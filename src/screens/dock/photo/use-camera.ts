import { useState } from 'preact/hooks';
import { uuid } from '../../../device/clock.ts';
import { takePicture } from '../../../device/photos/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { actAll, deed } from '../../model/open-job.ts';
import { store } from '../../model/services.ts';

/** Where pictures are taken: the picture asked for by a slot, a reading or an edge; step: its place in the walk. */
export interface TakenAt {
  job: string;
  piece: string;
  step: string;
  slot: string | null;
  reading?: string;
  run?: string;
}

export interface Camera {
  busy: boolean;
  message: string;
  /** To be called before the camera opens: the system may end this page while it is in front. */
  ready(): void;
  /** The id of the new picture; null when it could not be read. */
  add(file: File): Promise<string | null>;
}

export function useCamera({ job, piece, step, slot, reading, run }: TakenAt): Camera {
  const [busy, setBusy] = useState(false);
  const [message, setMessage] = useState('');
  const ready = (): void => {
    void store()
      .settings.set('place', { job, piece, step })
      .catch(() => undefined);
  };
  const add = async (file: File): Promise<string | null> => {
    setBusy(true);
    setMessage('');
    const taken = await takePicture(file);
    setBusy(false);
    if (!taken.ok) {
      setMessage(sayPhotos().unreadable);
      return null;
    }
    const { bytes, sha256, mime, width, height, size } = taken.picture;
    const photo = uuid();
    const where = { ...(reading === undefined ? {} : { reading }), ...(run === undefined ? {} : { run }) };
    const payload = { photo, sha256, mime, size, width, height, piece, slot, placeKept: false, ...where };
    await actAll([deed('photo.add', payload)], [{ sha256, mime, size, bytes }]);
    return photo;
  };
  return { busy, message, ready, add };
}
