import { drawing, tiles } from './en/drawing.ts';
import { inLanguage } from './rooms.ts';

/** What stands on drawings that are saved, apart from the rest: it comes with the drawings. */
export function sayDrawing(): typeof drawing {
  return inLanguage('drawing', drawing);
}

/** What stands on the sheets of a piece printed in real size. */
export function sayTiles(): typeof tiles {
  return inLanguage('tiles', tiles);
}
