import { useEffect, useState } from 'preact/hooks';
import { store } from '../../model/services.ts';

/** An address for a stored picture while it is shown; null until it is read, 'missing' when it is not on this device. */
export function usePhotoUrl(sha256: string): string | 'missing' | null {
  const [url, setUrl] = useState<string | 'missing' | null>(null);
  useEffect(() => {
    let made: string | null = null;
    let gone = false;
    const read = async (): Promise<void> => {
      const photo = await store()
        .getPhoto(sha256)
        .catch(() => null);
      if (gone) return;
      if (photo) made = URL.createObjectURL(new Blob([photo.bytes], { type: photo.mime }));
      setUrl(made ?? 'missing');
    };
    void read();
    return () => {
      gone = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [sha256]);
  return url;
}
