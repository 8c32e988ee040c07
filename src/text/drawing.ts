import { drawing } from './en/drawing.ts';
import { inLanguage } from './rooms.ts';

/** What stands on drawings that are saved, apart from the rest: it comes with the drawings. */
export function sayDrawing(): typeof drawing {
  return inLanguage('drawing', drawing);
}
