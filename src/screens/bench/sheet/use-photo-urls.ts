import { useEffect, useState } from 'preact/hooks';
import { store } from '../../model/services.ts';

/** Addresses of stored pictures by hash, without those that are not on this device; null until all were read and decoded. */
export function usePhotoUrls(hashes: readonly string[]): ReadonlyMap<string, string> | null {
  const [urls, setUrls] = useState<ReadonlyMap<string, string> | null>(null);
  useEffect(() => {
    let gone = false;
    const made = new Map<string, string>();
    const letGo = (): void => {
      for (const url of made.values()) URL.revokeObjectURL(url);
    };
    const read = async (): Promise<void> => {
      for (const hash of hashes) {
        const photo = await store()
          .getPhoto(hash)
          .catch(() => null);
        if (photo) made.set(hash, URL.createObjectURL(new Blob([photo.bytes], { type: photo.mime })));
      }
      // A page that is printed at once must not have white patches where its pictures still load.
      await Promise.all([...made.values()].map(decoded));
      if (gone) letGo();
      else setUrls(made);
    };
    void read();
    return () => {
      gone = true;
      letGo();
    };
  }, [hashes.join()]);
  return urls;
}

function decoded(url: string): Promise<unknown> {
  const image = new Image();
  image.src = url;
  return image.decode().catch(() => undefined);
}
