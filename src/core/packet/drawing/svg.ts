import { type Drawing, type Entity, type Flat, printable } from './drawing.ts';
import { type Look, mm, shape, xml } from './svg-parts.ts';

/** mm round the drawing. */
const MARGIN = 40;

const LOOK: Look = {
  OUTLINE: 'stroke="#111" stroke-width="2"',
  EDGE: 'stroke="#111" stroke-width="1.2"',
  ALLOWANCE: 'stroke="#111" stroke-width="1" stroke-dasharray="12 6"',
  FASTENER: 'stroke="#111" stroke-width="1"',
  OBSTRUCTION: 'stroke="#111" stroke-width="1" stroke-dasharray="4 3"',
  DIMENSION: 'stroke="#888" stroke-width="0.5"',
};

/**
 * The drawing as SVG 1.1 in real size: width and height are in mm, one user unit is one mm. Text is escaped and stripped
 * of what XML has no place for; nothing in it can run.
 */
export function svgOf(drawing: Drawing): string {
  const letter = Math.max(...drawing.entities.map((entity) => (entity.type === 'text' ? entity.height : 0)), 8);
  const { left, right, top, bottom } = extent(drawing.entities);
  const block = drawing.block.map(printable);
  const lines = block.map(
    (line, i) =>
      `<text x="${mm(left)}" y="${mm(-bottom + letter * 2 + i * letter * 1.4)}" font-size="${mm(letter)}">${xml(line)}</text>`,
  );
  const blockWidth = Math.max(0, ...block.map((line) => [...line].length)) * letter * 0.62;
  const width = Math.max(right - left, blockWidth) + 2 * MARGIN;
  const height = top - bottom + (drawing.block.length + 2) * letter * 1.4 + 2 * MARGIN;
  const box = `${mm(left - MARGIN)} ${mm(-top - MARGIN)} ${mm(width)} ${mm(height)}`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="${box}" font-family="sans-serif" fill="#111">`,
    ...drawing.entities.map((entity) => shape(entity, LOOK)),
    ...lines,
    '</svg>',
    '',
  ].join('\n');
}

function extent(entities: readonly Entity[]): { left: number; right: number; top: number; bottom: number } {
  const places = entities.flatMap((entity): readonly Flat[] => (entity.type === 'line' ? entity.points : [entity.at]));
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  return {
    left: Math.min(...xs, 0),
    right: Math.max(...xs, 0),
    top: Math.max(...ys, 0),
    bottom: Math.min(...ys, 0),
  };
}
