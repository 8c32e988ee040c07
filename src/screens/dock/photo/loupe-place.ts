/** px: across the loupe, and from its rim to the finger's place; a fingertip covers about as much. */
export const LOUPE = 132;
export const CLEAR_OF_FINGER = 34;
/** px the loupe keeps from the rim of the screen. */
const RIM = 4;

/**
 * Where the loupe's middle stands: above the finger; beside it, on the side with more room, where there is none above. Never below,
 * where the hand is, and never over the finger itself. All in CSS px from the top left of what is seen.
 */
export function loupePlace(
  finger: { x: number; y: number },
  seen: { width: number; height: number },
): { x: number; y: number } {
  const away = LOUPE / 2 + CLEAR_OF_FINGER;
  const least = LOUPE / 2 + RIM;
  const within = (at: number, most: number): number => Math.max(least, Math.min(at, most - least));
  if (finger.y - away >= least)
    return { x: within(finger.x, seen.width), y: Math.min(finger.y - away, seen.height - least) };
  const side = finger.x > seen.width / 2 ? -1 : 1;
  return { x: within(finger.x + side * away, seen.width), y: within(finger.y, seen.height) };
}
