import type { Entity, Flat } from './drawing.ts';
import type { Look } from './svg-parts.ts';

/** Pens on paper, mm of paper: the line to cut is the thickest, what was taped the thinnest. */
export const PENS: Look = {
  OUTLINE: 'stroke="#000" stroke-width="0.5"',
  EDGE: 'stroke="#000" stroke-width="0.5"',
  ALLOWANCE: 'stroke="#000" stroke-width="0.35" stroke-dasharray="3 1.5"',
  POINT: 'stroke="#000" stroke-width="0.3"',
  MARK: 'stroke="#000" stroke-width="0.3"',
  FASTENER: 'stroke="#000" stroke-width="0.3"',
  OBSTRUCTION: 'stroke="#000" stroke-width="0.3" stroke-dasharray="1.2 0.8"',
  DIMENSION: 'stroke="#777" stroke-width="0.15"',
};

/** Sizes on paper that do not go with the scale, mm. */
export interface PaperSizes {
  readonly letter: number;
  readonly point: number;
  /** A fastener is drawn no smaller. */
  readonly fastener: number;
}

/** A thing of a drawing as it stands on paper: places to scale, letters and signs at a size that can be read. */
export function onPaper(entity: Entity, scale: number, sizes: PaperSizes): Entity {
  switch (entity.type) {
    case 'line':
      return { ...entity, points: entity.points.map((at) => times(at, scale)) };
    case 'circle':
      return { ...entity, at: times(entity.at, scale), radius: radiusOf(entity, scale, sizes) };
    case 'text': {
      const { at, height, anchor } = entity;
      // A label stands half a letter beside what it names.
      const [off, back] = anchor === 'start' ? [sizes.letter / 2, height / 2] : [0, 0];
      const [x, y] = times([at[0] - back, at[1] - back], scale);
      return { ...entity, at: [x + off, y + off], height: sizes.letter };
    }
  }
}

const times = ([x, y]: Flat, factor: number): Flat => [x * factor, y * factor];

function radiusOf({ layer, radius }: Extract<Entity, { type: 'circle' }>, scale: number, sizes: PaperSizes): number {
  if (layer === 'FASTENER') return Math.max(sizes.fastener, radius * scale);
  return layer === 'POINT' || layer === 'MARK' ? sizes.point : radius * scale;
}
