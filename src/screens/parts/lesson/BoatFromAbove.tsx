import './lesson.css';
import type { ComponentChildren } from 'preact';

/** Parts of a boat that can be shown on the picture from above. */
const PARTS = {
  port: <path class="lit line" d="M80 8Q36 44 36 92V150" />,
  starboard: <path class="lit line" d="M80 8Q124 44 124 92V150" />,
  bow: <circle class="lit" cx={80} cy={16} r={9} />,
  stern: <path class="lit line" d="M38 150H122" />,
  transom: <path class="lit line" d="M38 150H122" />,
  aft: <path class="lit line" d="M80 112V144M72 136l8 8 8-8" />,
  forward: <path class="lit line" d="M80 60V28M72 36l8-8 8 8" />,
  amidships: <path class="lit line" d="M38 84H122" />,
  centreline: <path class="lit line" d="M80 10V148" />,
  gunwale: <path class="lit line" d="M38 150V92Q38 46 80 10Q122 46 122 92V150" />,
  sheer: <path class="lit line" d="M38 150V92Q38 46 80 10Q122 46 122 92V150" />,
  coaming: <path class="lit line" d="M52 144V84H108V144Z" />,
  windshield: <path class="lit line" d="M50 82Q80 66 110 82" />,
  hardtop: <path class="lit" d="M54 78H106V112H54Z" opacity="0.7" />,
  helm: <circle class="lit" cx={95} cy={92} r={6} />,
  cockpit: <path class="lit" d="M54 84H106V142H54Z" opacity="0.7" />,
  foredeck: <path class="lit" d="M80 16Q50 44 47 76Q80 60 113 76Q110 44 80 16Z" opacity="0.7" />,
  cleat: (
    <>
      <path class="lit line" d="M46 64v12M114 64v12M44 132v12M116 132v12" />
    </>
  ),
  stanchion: (
    <>
      {[34, 56, 80].map((y, i) => (
        <g key={y}>
          <circle class="lit" cx={62 - i * 11} cy={y} r={3} />
          <circle class="lit" cx={98 + i * 11} cy={y} r={3} />
        </g>
      ))}
    </>
  ),
  outboard: <path class="lit line" d="M100 110H146M138 102l8 8-8 8M60 110H14M22 102l-8 8 8 8" />,
} satisfies Record<string, ComponentChildren>;

export type BoatPart = keyof typeof PARTS;
export const isBoatPart = (word: string): word is BoatPart => Object.hasOwn(PARTS, word);

interface Props {
  lit: readonly BoatPart[];
  alt: string;
  /** At the left and at the right side. */
  left?: string;
  right?: string;
}

/** A small boat seen from above, its bow at the top, with what is spoken of in orange. */
export function BoatFromAbove({ lit, alt, left, right }: Props) {
  return (
    <svg class="explained boat" viewBox="-50 -16 260 178" role="img" aria-label={alt}>
      <path class="hull" d="M38 150V92Q38 46 80 10Q122 46 122 92V150Z" />
      <path class="ink" d="M54 142V84H106V142ZM50 82Q80 66 110 82" />
      <circle class="ink" cx={95} cy={92} r={4} />
      {lit.map((part) => (
        <g key={part}>{PARTS[part]}</g>
      ))}
      <path class="ink" d="M72 2l8-9 8 9" />
      {left && (
        <text x={28} y={110} text-anchor="end">
          {left}
        </text>
      )}
      {right && (
        <text x={132} y={110}>
          {right}
        </text>
      )}
    </svg>
  );
}
