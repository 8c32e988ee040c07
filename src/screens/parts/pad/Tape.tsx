import type { Sheet } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { type TapeNumber, tapeAround } from './tape-marks.ts';

const WIDTH = 300;
/** Where the blade begins below the pointer, and ends. */
const TOP = 8;
const BOTTOM = 44;
/** How far graduations reach down: whole, half, quarter, eighth, finer. */
const REACH = [19, 15, 12, 9, 6];
const NUMBER_LINE = 40;

/** The tape as it would look at a reading: a little of it on both sides, the reading's own mark in orange. */
export function Tape({ mm, sheet }: { mm: number | null; sheet: Pick<Sheet, 'system' | 'fraction'> }) {
  const { hook, mark, ticks, numbers } = tapeAround(mm, sheet, WIDTH);
  return (
    <svg class="tape" viewBox={`0 0 ${WIDTH} ${BOTTOM + 1}`} role="img" aria-label={say().dock.tapeDrawing}>
      <path class="tape-body" d={`M${WIDTH + 2} ${TOP}H${hook}V${BOTTOM}H${WIDTH + 2}`} />
      {hook > -5 && <path class="tape-hook" d={`M${hook} ${TOP - 1}V${BOTTOM + 1}`} />}
      {ticks.map(({ x, rank }) => (
        <path key={x} class="tape-tick" d={`M${x} ${TOP}v${REACH[rank]}`} />
      ))}
      {numbers.map((number) => (
        <BladeNumber key={number.x} {...number} />
      ))}
      {mark !== null && <path class="tape-mark" d={`M${mark} ${TOP}v${REACH[0]}M${mark - 6} 0h12l-6 ${TOP}z`} />}
    </svg>
  );
}

/** A number of the blade; a whole foot or metre stands in a dark field. */
function BladeNumber({ x, text, beside, whole }: TapeNumber) {
  const half = text.length * 5.5;
  return (
    <>
      <text class="tape-number" x={x} y={NUMBER_LINE}>
        {text}
      </text>
      {beside !== '' && whole && (
        <rect
          class="tape-whole"
          x={x + half + 3}
          y={NUMBER_LINE - 12.5}
          width={beside.length * 6.4 + 5}
          height={14.5}
        />
      )}
      {beside !== '' && (
        <text class={whole ? 'tape-beside whole' : 'tape-beside'} x={x + half + 5} y={NUMBER_LINE - 1}>
          {beside}
        </text>
      )}
    </>
  );
}
