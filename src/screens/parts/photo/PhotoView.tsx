import { useState } from 'preact/hooks';
import type { Sheet, SheetPhoto } from '../../../core/job/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { type LitOnPhoto, Overlay, useShownWidth } from './Overlay.tsx';
import { usePhotoUrl } from './use-photo-url.ts';

interface Props {
  photo: SheetPhoto;
  sheet: Sheet;
  title: string;
  lit?: LitOnPhoto;
  /** Opens it larger, under this name. */
  larger?: { name: string; open: () => void };
}

/** A picture with its marks and lines, to look at. */
export function PhotoView({ photo, sheet, title, lit, larger }: Props) {
  const url = usePhotoUrl(photo.sha256);
  const [figure, setFigure] = useState<HTMLElement | null>(null);
  const shown = useShownWidth(figure);
  if (url === 'missing') return <p class="quiet">{sayPhotos().missing}</p>;
  const picture = url && <img src={url} alt={sayPhotos().alt(title)} width={photo.width} height={photo.height} />;
  return (
    <figure class="photo-frame" ref={setFigure}>
      {larger ? (
        <button type="button" class="photo" aria-label={larger.name} onClick={larger.open}>
          {picture}
        </button>
      ) : (
        picture
      )}
      <Overlay photo={photo} sheet={sheet} shown={shown} lit={lit} />
    </figure>
  );
}
