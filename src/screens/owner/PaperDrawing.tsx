import '../parts/lesson/lesson.css';
import type { PracticeSide } from '../../core/job/index.ts';
import { sayOwner } from '../../text/owner.ts';

/** The tape on the sheet, a little beside the edge so that both are seen; hook and reading end. */
const TAPES: Readonly<Record<PracticeSide, { tape: string; hook: string }>> = {
  long: { tape: 'M40 122H200', hook: 'M40 114v16' },
  short: { tape: 'M212 14V110', hook: 'M204 14h16' },
  diagonal: { tape: 'M40 14L200 110', hook: 'M34 22l12-16' },
};

export function PaperDrawing({ side }: { side: PracticeSide }) {
  const { tape, hook } = TAPES[side];
  return (
    <svg
      class="explained paper-drawing"
      viewBox="20 0 210 134"
      role="img"
      aria-label={sayOwner().practice.drawing[side]}
    >
      <rect class="paper" x={40} y={14} width={160} height={96} />
      <path class="tape" d={tape} />
      <path class="hook" d={hook} />
    </svg>
  );
}
