import { sayBench } from '../../../text/bench.ts';
import { startMeasuring, stopMeasuring } from '../state/measuring.ts';
import type { PanZoom } from './use-pan-zoom.ts';

interface Props {
  panZoom: PanZoom;
  /** Turns what is looked at by so many px of a drag; absent where it is looked at squarely. */
  onTurn?: ((x: number, y: number) => void) | null;
  /** Whether somebody measures on it; absent where nothing can be measured. */
  measuring?: boolean;
  /** What is moved, and what shows all of it, where that is not a piece. */
  names?: { tools: string; whole: string };
}

/** px a tap moves the drawing. */
const STEP = 80;

/** The same by buttons that fingers, mouse and wheel do. */
export function Tools({ panZoom, onTurn = null, measuring, names }: Props) {
  const words = { ...sayBench().plan, ...names };
  const { look, enlarge, move, whole } = panZoom;
  const isWhole = look.zoom === 1 && look.x === 0 && look.y === 0;
  const turns = [
    [words.turnLeft, -STEP, 0],
    [words.turnRight, STEP, 0],
    [words.turnUp, 0, -STEP],
    [words.turnDown, 0, STEP],
  ] as const;
  const moves = [
    [words.left, STEP, 0],
    [words.right, -STEP, 0],
    [words.up, 0, STEP],
    [words.down, 0, -STEP],
  ] as const;
  return (
    <fieldset class="row bench-tools no-print">
      <legend class="sr-only">{words.tools}</legend>
      {measuring !== undefined && (
        <button
          type="button"
          class="button"
          aria-pressed={measuring}
          onClick={() => (measuring ? stopMeasuring() : startMeasuring('distance'))}
        >
          {measuring ? sayBench().measure.close : sayBench().measure.open}
        </button>
      )}
      <button type="button" class="button" onClick={() => enlarge(1.5)}>
        {words.larger}
      </button>
      <button type="button" class="button" disabled={look.zoom === 1} onClick={() => enlarge(1 / 1.5)}>
        {words.smaller}
      </button>
      <button type="button" class="button" disabled={isWhole} onClick={whole}>
        {words.whole}
      </button>
      {onTurn &&
        turns.map(([word, x, y]) => (
          <button key={word} type="button" class="button plain" onClick={() => onTurn(x, y)}>
            {word}
          </button>
        ))}
      {look.zoom > 1 &&
        moves.map(([word, x, y]) => (
          <button key={word} type="button" class="button plain" onClick={() => move(x, y)}>
            {word}
          </button>
        ))}
    </fieldset>
  );
}
