import type { Drawing, DrawingWords, Entity, Flat } from './drawing.ts';
import { onPaper, PENS } from './on-paper.ts';
import { placeTexts, type Written } from './paper-texts.ts';
import { line, mm, shape, text } from './svg-parts.ts';

/** A piece drawn to a scale that people keep rules for, to stand on a page. Sizes in mm of paper. */
export interface ScaledPlan {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** So many mm of the piece are one mm of paper. */
  readonly ratio: number;
  /** Values without room. */
  readonly leftOut: number;
}

/** Metric scales as in ISO 5455, imperial ones as so many inches to the foot; from memory. */
const RATIOS = {
  metric: [1, 2, 5, 10, 20, 25, 50, 100, 200, 500],
  imperial: [1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192, 384],
} as const;
/** Lengths a scale bar may have, mm. */
const BARS = {
  metric: [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000],
  imperial: [1, 2, 4, 6, 12, 24, 36, 60, 120, 240, 480].map((inches) => inches * 25.4),
} as const;
const LONGEST_BAR = 62;

const SIZES = { letter: 3.4, point: 0.8, fastener: 0.7 };
/** Room round the drawing for its letters, and below it for the scale bar, mm. */
const PAD = 9;
const BELOW = 10;
const LEADING = 5;

export function scaledPlan(
  drawing: Drawing,
  room: { width: number; height: number },
  words: DrawingWords,
  lengthText: (mm: number) => string,
): ScaledPlan {
  const { left, right, bottom, top } = reachOf(drawing.entities);
  const above = drawing.warnings.length * LEADING;
  const inside = { width: room.width - 2 * PAD, height: room.height - 2 * PAD - BELOW - above };
  const ratios: readonly number[] = RATIOS[drawing.system];
  const need = Math.max((right - left) / inside.width, (top - bottom) / inside.height);
  const ratio = ratios.find((one) => one >= need) ?? Math.ceil(need);
  const shown = drawing.entities.map((one) => onPaper(one, 1 / ratio, SIZES));
  const { written, leftOut } = placeTexts(shown);
  const [wide, high] = [(right - left) / ratio, (top - bottom) / ratio];
  const height = high + 2 * PAD + BELOW + above;
  const offset: Flat = [(room.width - wide) / 2 - left / ratio, PAD + above + top / ratio];
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(room.width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(room.width)} ${mm(height)}" font-family="sans-serif" fill="#000">`,
    ...drawing.warnings.map((said, i) => text(said, [0, 4 + i * LEADING], 3.6, { bold: true, room: room.width })),
    `<g transform="translate(${mm(offset[0])} ${mm(offset[1])})">`,
    ...shown.filter(({ type }) => type !== 'text').map((one) => shape(one, PENS)),
    ...written.map(writtenSvg),
    '</g>',
    scaleBar(drawing.system, ratio, [0, height - 3], words, lengthText),
    '</svg>',
  ].join('\n');
  return { svg, width: room.width, height, ratio, leftOut };
}

function reachOf(entities: readonly Entity[]): { left: number; right: number; top: number; bottom: number } {
  const boxes = entities.flatMap((entity): readonly Flat[] => {
    if (entity.type === 'line') return entity.points;
    const [x, y] = entity.at;
    const r = entity.type === 'circle' ? entity.radius : 0;
    return [
      [x - r, y - r],
      [x + r, y + r],
    ];
  });
  const [xs, ys] = [boxes.map(([x]) => x), boxes.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.max(...ys), bottom: Math.min(...ys) };
}

/** Letters over a white patch, so that no line runs through them. */
function writtenSvg({ said, at: [x, y], height, wide, bold }: Written): string {
  const patch = `<rect x="${mm(x - wide / 2)}" y="${mm(-y - height / 2)}" width="${mm(wide)}" height="${mm(height)}" fill="#fff"/>`;
  return patch + text(said, [x, -y + height * 0.34], height, { anchor: 'middle', bold });
}

function scaleBar(
  system: Drawing['system'],
  ratio: number,
  [x, y]: Flat,
  words: DrawingWords,
  lengthText: (mm: number) => string,
): string {
  const bars: readonly number[] = BARS[system];
  const length = bars.findLast((one) => one / ratio <= LONGEST_BAR) ?? bars[0] ?? 1;
  const end = x + length / ratio;
  const middle = (x + end) / 2;
  const pen = 'stroke="#000" stroke-width="0.3"';
  return [
    line([x, y], [end, y], pen),
    ...[x, middle, end].map((at) => line([at, y - 2], [at, y], pen)),
    `<rect x="${mm(x)}" y="${mm(y - 1)}" width="${mm(middle - x)}" height="1"/>`,
    text(lengthText(length), [end + 2, y], 3.2, { bold: true }),
    text(words.scale(ratio, system), [end + 20, y], 3.2),
  ].join('\n');
}
