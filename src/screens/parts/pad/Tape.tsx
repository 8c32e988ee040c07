import type { Sheet } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';

const WIDTH = 360;
const HEIGHT = 34;

/** The tape as it would look at a reading: a few inches (or centimetres) round it, the reading's own mark in orange. */
export function Tape({ mm, sheet }: { mm: number | null; sheet: Pick<Sheet, 'system' | 'fraction'> }) {
  const imperial = sheet.system === 'imperial';
  const unit = imperial ? 25.4 : 10;
  const parts = imperial ? Math.min(sheet.fraction, 16) : 10;
  const span = imperial ? 4 : 10;
  const at = (mm ?? 0) / unit;
  const left = Math.max(0, at - span / 2);
  const x = (value: number): number => ((value - left) / span) * WIDTH;
  const first = Math.floor(left);
  const ticks = Array.from({ length: (span + 1) * parts + 1 }, (_, i) => first + i / parts);
  return (
    <svg class="tape" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={say().dock.tapeDrawing}>
      <rect x="0" y="0" width={WIDTH} height={HEIGHT} class="tape-body" />
      {ticks.map((value, i) => (
        <line key={value} class="tape-tick" x1={x(value)} x2={x(value)} y1={0} y2={tickLength(i % parts, parts)} />
      ))}
      {ticks
        .filter((_, i) => i % parts === 0)
        .map((value) => (
          <text key={value} class="tape-number" x={x(value) + 3} y={HEIGHT - 5}>
            {value}
          </text>
        ))}
      {mm !== null && <line class="tape-mark" x1={x(at)} x2={x(at)} y1={0} y2={HEIGHT} />}
    </svg>
  );
}

/** Longer ticks for halves, then quarters, then eighths, as on a tape. */
function tickLength(place: number, parts: number): number {
  if (place === 0) return 30;
  if (parts === 10) return place === 5 ? 14 : 8;
  if ((place * 2) % parts === 0) return 19;
  if ((place * 4) % parts === 0) return 14;
  return (place * 8) % parts === 0 ? 10 : 6;
}
