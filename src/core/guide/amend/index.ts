/** What a person changes about a piece while it is measured: from the sheet as it stands to the deeds that do it. */
export { addPointAfter, goesWith, mayRemove, removePoint, reorderPoints } from './edge-points.ts';
export { askedFromNow, mayHaveMoved, moveMark } from './moved-mark.ts';
export {
  freeLabel,
  freePiece,
  isLabelFree,
  type OwnPoint,
  type OwnReading,
  ownEdge,
  ownPicture,
  ownPoint,
  ownReading,
} from './own.ts';
export { currentOf } from './walk.ts';
