import { sayPhotos } from '../../../text/photos.ts';
import { StateMark } from '../marks.tsx';
import { useDoubt } from './use-doubt.ts';

/** What speaks against a picture at first sight. It is kept all the same. */
export function PhotoDoubt({ sha256 }: { sha256: string }) {
  const doubt = useDoubt(sha256);
  const words = sayPhotos();
  return (
    <div role="status">{doubt && <StateMark mark="doubt">{`${words.doubts[doubt]} ${words.kept}`}</StateMark>}</div>
  );
}
