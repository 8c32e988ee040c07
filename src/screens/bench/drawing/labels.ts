import type { Flat } from '../../parts/drawing/project.ts';

/** A round patch of the drawing that something stands on, px. */
export interface Patch {
  x: number;
  y: number;
  r: number;
}

/** A value that wants to stand on its line. urgent: placed whatever it covers. */
export interface Wish {
  id: string;
  a: Flat;
  b: Flat;
  text: string;
  urgent: boolean;
}

export interface Label {
  id: string;
  text: string;
  x: number;
  y: number;
  /** Degrees, never upside down. */
  turn: number;
}

/** px; what a character of the drawing's type takes on the average. */
export const CHARACTER = 8.6;
const HALF_HEIGHT = 9;
/** Where along its line a value is tried, the best place first. */
const TRIES = [0.5, 0.38, 0.62, 0.3, 0.7, 0.22, 0.78, 0.15, 0.85];

/** Sets values along their lines so that none covers another or a point; those without room are counted. */
export function placeLabels(wishes: readonly Wish[], taken: readonly Patch[]): { labels: Label[]; hidden: number } {
  const patches = [...taken];
  const labels: Label[] = [];
  const ordered = [...wishes].sort((first, second) => Number(second.urgent) - Number(first.urgent));
  for (const wish of ordered) {
    const label = placed(wish, patches);
    if (!label) continue;
    labels.push(label);
    patches.push(...patchesOf(label));
  }
  return { labels, hidden: wishes.length - labels.length };
}

function placed({ id, a, b, text, urgent }: Wish, patches: readonly Patch[]): Label | null {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (!urgent && length < text.length * CHARACTER) return null;
  const steep = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  const turn = steep > 90 ? steep - 180 : steep <= -90 ? steep + 180 : steep;
  const at = (share: number): Label => ({
    id,
    text,
    turn,
    x: a[0] + (b[0] - a[0]) * share,
    y: a[1] + (b[1] - a[1]) * share,
  });
  for (const share of TRIES) {
    const label = at(share);
    if (patchesOf(label).every((patch) => patches.every((other) => apart(patch, other)))) return label;
  }
  return urgent ? at(0.5) : null;
}

const apart = (p: Patch, q: Patch): boolean => Math.hypot(p.x - q.x, p.y - q.y) >= p.r + q.r;

function patchesOf({ text, x, y, turn }: Label): Patch[] {
  const half = (text.length * CHARACTER) / 2;
  const [dx, dy] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const count = Math.max(1, Math.ceil(half / HALF_HEIGHT));
  return Array.from({ length: count }, (_, i) => {
    const along = count === 1 ? 0 : -half + HALF_HEIGHT + (i * 2 * (half - HALF_HEIGHT)) / (count - 1);
    return { x: x + dx * along, y: y + dy * along, r: HALF_HEIGHT };
  });
}
