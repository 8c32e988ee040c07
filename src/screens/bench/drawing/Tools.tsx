import { sayBench } from '../../../text/bench.ts';
import type { PanZoom } from './use-pan-zoom.ts';

interface Props {
  panZoom: PanZoom;
  /** Whether it is looked at so that heights show. */
  slant: boolean;
  /** Null where they do anyway, or the piece is flat. */
  onSlant: ((slant: boolean) => void) | null;
  /** What is moved, and what shows all of it, where that is not a piece. */
  names?: { tools: string; whole: string };
}

/** px a tap moves the drawing. */
const STEP = 80;

/** The same by buttons that fingers, mouse and wheel do. */
export function Tools({ panZoom, slant, onSlant, names }: Props) {
  const words = { ...sayBench().plan, ...names };
  const { look, enlarge, move, whole } = panZoom;
  const isWhole = look.zoom === 1 && look.x === 0 && look.y === 0;
  const moves = [
    [words.left, STEP, 0],
    [words.right, -STEP, 0],
    [words.up, 0, STEP],
    [words.down, 0, -STEP],
  ] as const;
  return (
    <fieldset class="row bench-tools no-print">
      <legend class="sr-only">{words.tools}</legend>
      <button type="button" class="button" onClick={() => enlarge(1.5)}>
        {words.larger}
      </button>
      <button type="button" class="button" disabled={look.zoom === 1} onClick={() => enlarge(1 / 1.5)}>
        {words.smaller}
      </button>
      <button type="button" class="button" disabled={isWhole} onClick={whole}>
        {words.whole}
      </button>
      {look.zoom > 1 &&
        moves.map(([word, x, y]) => (
          <button key={word} type="button" class="button plain" onClick={() => move(x, y)}>
            {word}
          </button>
        ))}
      {onSlant && (
        <button type="button" class="button" aria-pressed={slant} onClick={() => onSlant(!slant)}>
          {words.heights}
        </button>
      )}
    </fieldset>
  );
}
