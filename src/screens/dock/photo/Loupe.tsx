import type { Place } from '../../parts/photo/Overlay.tsx';
import { LOUPE, loupePlace } from './loupe-place.ts';

interface Props {
  url: string;
  place: Place;
  /** Where the picture lies on the screen. */
  picture: { left: number; top: number; width: number; height: number };
}

/** How much larger than the picture beneath. */
const LARGER = 3;

/** What lies under the finger, larger and beside it, with a cross where the mark will be. */
export function Loupe({ url, place, picture }: Props) {
  const [dx, dy] = [place.x * picture.width, place.y * picture.height];
  const seen = { width: document.documentElement.clientWidth, height: window.innerHeight };
  const middle = loupePlace({ x: picture.left + dx, y: picture.top + dy }, seen);
  const half = LOUPE / 2;
  return (
    <div
      class="loupe"
      aria-hidden="true"
      style={{ left: `${middle.x - half}px`, top: `${middle.y - half}px`, width: `${LOUPE}px`, height: `${LOUPE}px` }}
    >
      <img
        src={url}
        alt=""
        style={{
          width: `${picture.width * LARGER}px`,
          height: `${picture.height * LARGER}px`,
          transform: `translate(${half - dx * LARGER}px, ${half - dy * LARGER}px)`,
        }}
      />
      <svg viewBox="-66 -66 132 132" aria-hidden="true">
        <path class="halo" d="M-60 0H-8M8 0H60M0-60V-8M0 8V60" />
        <path class="cross" d="M-60 0H-8M8 0H60M0-60V-8M0 8V60" />
        <circle class="cross" r="2" />
      </svg>
    </div>
  );
}
