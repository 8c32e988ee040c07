import { useEffect, useState } from 'preact/hooks';
import { lookAt, type PictureDoubt } from '../../../device/photos/index.ts';
import { store } from '../../model/services.ts';

/** A picture never changes, so each is looked at once a visit. Nothing of it is stored. */
const seen = new Map<string, Promise<PictureDoubt | null>>();

async function look(sha256: string): Promise<PictureDoubt | null> {
  const photo = await store().getPhoto(sha256);
  return photo ? lookAt(new Blob([photo.bytes], { type: photo.mime })) : null;
}

/** What speaks against a stored picture at first sight. */
export function useDoubt(sha256: string): PictureDoubt | null {
  const [doubt, setDoubt] = useState<PictureDoubt | null>(null);
  useEffect(() => {
    let gone = false;
    const looked = seen.get(sha256) ?? look(sha256).catch(() => null);
    seen.set(sha256, looked);
    void looked.then((found) => {
      if (!gone) setDoubt(found);
    });
    return () => {
      gone = true;
    };
  }, [sha256]);
  return doubt;
}
