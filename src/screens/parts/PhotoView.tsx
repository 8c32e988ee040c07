import { useEffect, useState } from 'preact/hooks';
import type { Sheet, SheetPhoto } from '../../core/job/index.ts';
import { say } from '../../text/index.ts';
import { store } from '../model/services.ts';
import { pointLabel } from '../model/words.ts';

interface Props {
  photo: SheetPhoto;
  sheet: Sheet;
  title: string;
  /** Called with the place tapped, as fractions of width and height; leave out where nothing is to be marked. */
  onPlace?: (x: number, y: number) => void;
  lit?: ReadonlySet<string>;
}

/** A picture with its marks. Tapped, or steered by the arrow keys and Enter, it places a mark. */
export function PhotoView({ photo, sheet, title, onPlace, lit }: Props) {
  const url = usePhotoUrl(photo.sha256);
  const [cursor, setCursor] = useState<{ x: number; y: number } | null>(null);
  if (url === 'missing') return <p class="quiet">{say().dock.photo.missing}</p>;
  const onKey = (event: KeyboardEvent): void => {
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    const from = cursor ?? { x: 0.5, y: 0.5 };
    if (step) setCursor({ x: clamp(from.x + (step[0] ?? 0) * 0.02), y: clamp(from.y + (step[1] ?? 0) * 0.02) });
    else if (event.key === 'Enter' && cursor) onPlace?.(cursor.x, cursor.y);
    else return;
    event.preventDefault();
  };
  const onTap = (event: MouseEvent & { currentTarget: HTMLElement }): void => {
    const box = event.currentTarget.getBoundingClientRect();
    if (event.detail === 0) return;
    onPlace?.(clamp((event.clientX - box.left) / box.width), clamp((event.clientY - box.top) / box.height));
  };
  const picture = (
    <>
      {url && <img src={url} alt={say().dock.photo.alt(title)} width={photo.width} height={photo.height} />}
      <Marks photo={photo} sheet={sheet} cursor={cursor} lit={lit} />
    </>
  );
  if (!onPlace) return <figure class="photo">{picture}</figure>;
  return (
    <button type="button" class="photo" onClick={onTap} onKeyDown={onKey} aria-label={say().dock.photo.markHere}>
      {picture}
    </button>
  );
}

const clamp = (value: number): number => Math.min(1, Math.max(0, value));

function Marks(props: {
  photo: SheetPhoto;
  sheet: Sheet;
  cursor: { x: number; y: number } | null;
  lit?: ReadonlySet<string> | undefined;
}) {
  const { photo, sheet, cursor, lit } = props;
  const [w, h] = [photo.width, photo.height];
  const unit = Math.max(w, h) / 40;
  return (
    <svg class="photo-marks" viewBox={`0 0 ${w} ${h}`} aria-hidden="true">
      {photo.marks.map((mark) => (
        <g
          key={mark.id}
          class={mark.point && lit?.has(mark.point) ? 'lit' : ''}
          transform={`translate(${mark.x * w} ${mark.y * h})`}
        >
          <circle class="halo" r={unit} stroke-width={unit / 3} />
          <circle class="ring" r={unit} stroke-width={unit / 6} />
          <text x={unit * 1.4} y={unit * 0.6} font-size={unit * 1.8} stroke-width={unit / 3}>
            {mark.point ? pointLabel(sheet, mark.point) : mark.text || '·'}
          </text>
        </g>
      ))}
      {cursor && <circle class="cursor" cx={cursor.x * w} cy={cursor.y * h} r={unit / 2} />}
    </svg>
  );
}

/** An address for a stored picture while it is shown; 'missing' when it is not on this device. */
function usePhotoUrl(sha256: string): string | 'missing' | null {
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
