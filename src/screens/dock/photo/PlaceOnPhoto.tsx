import { useRef, useState } from 'preact/hooks';
import type { Sheet, SheetPhoto } from '../../../core/job/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { Overlay, type Place, useShownWidth } from '../../parts/photo/Overlay.tsx';
import { usePhotoUrl } from '../../parts/photo/use-photo-url.ts';
import { Loupe } from './Loupe.tsx';
import { usePointing } from './use-pointing.ts';

interface Props {
  photo: SheetPhoto;
  sheet: Sheet;
  title: string;
  /** The line being drawn, or the one end of a reference that is there. */
  path?: readonly Place[] | undefined;
  /** The mark that is moved: its ring is lit and the arrows begin there. */
  held?: SheetPhoto['marks'][number] | undefined;
  /** Null where there is nothing to place. */
  onPlace: ((at: Place) => void) | null;
}

/** A picture with all that is on it, on which places are pointed out with a loupe beside the finger. */
export function PlaceOnPhoto({ photo, sheet, title, path, held, onPlace }: Props) {
  const url = usePhotoUrl(photo.sha256);
  const element = useRef<HTMLButtonElement>(null);
  const [frame, setFrame] = useState<HTMLElement | null>(null);
  const shown = useShownWidth(frame);
  const pointing = usePointing(element, held ?? null, onPlace ?? (() => undefined));
  const { pressed, cross, on } = pointing;
  const words = sayPhotos();
  if (url === 'missing') return <p class="quiet">{words.missing}</p>;
  const box = cross ? (element.current?.getBoundingClientRect() ?? null) : null;
  const size = { width: photo.width, height: photo.height };
  return (
    <>
      <div class="photo-frame held" ref={setFrame}>
        {onPlace ? (
          <button
            type="button"
            class="photo placing"
            ref={element}
            aria-label={`${words.alt(title)}. ${words.markHere}`}
            onPointerDown={on.down}
            onPointerMove={on.move}
            onPointerUp={on.up}
            onPointerCancel={on.cancel}
            onContextMenu={(event) => event.preventDefault()}
            onKeyDown={on.key}
          >
            {url && <img src={url} alt="" {...size} draggable={false} />}
          </button>
        ) : (
          url && <img src={url} alt={words.alt(title)} {...size} />
        )}
        <Overlay photo={photo} sheet={sheet} shown={shown} path={path} held={held?.id} />
      </div>
      {url && pressed && <Loupe url={url} place={pressed.place} picture={pressed.picture} />}
      {url && cross && box && <Loupe url={url} place={cross} picture={box} />}
      {(held || cross) && <FineMoves nudge={pointing.nudge} put={pointing.put} ready={cross !== null} />}
    </>
  );
}

/** The arrow keys, for a thumb. */
function FineMoves(props: { nudge: (dx: number, dy: number) => void; put: () => void; ready: boolean }) {
  const { fine } = sayPhotos();
  const moves = [
    ['◀', fine.left, -1, 0],
    ['▲', fine.up, 0, -1],
    ['▼', fine.down, 0, 1],
    ['▶', fine.right, 1, 0],
  ] as const;
  return (
    <fieldset class="row fine-moves">
      <legend class="sr-only">{fine.name}</legend>
      {moves.map(([sign, name, dx, dy]) => (
        <button key={name} type="button" class="button" aria-label={name} onClick={() => props.nudge(dx, dy)}>
          {sign}
        </button>
      ))}
      <button type="button" class="button main grow" disabled={!props.ready} onClick={props.put}>
        {fine.place}
      </button>
    </fieldset>
  );
}
