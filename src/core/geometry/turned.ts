import type { Face } from './plane.ts';
import type { Point3 } from './points.ts';

/**
 * From where something is looked at, rad. around: of the eye about the upright, from astern by starboard and ahead to port.
 * down: how far the look goes down, 0 level, a right angle from straight above.
 */
export interface Turn {
  readonly around: number;
  readonly down: number;
}

const RIGHT = Math.PI / 2;

/** The faces of the boat as turns: looked at so, a place lies where that face has it. */
export const TURNS: Readonly<Record<Face, Turn>> = {
  plan: { around: 0, down: RIGHT },
  astern: { around: 0, down: 0 },
  starboard: { around: RIGHT, down: 0 },
  ahead: { around: 2 * RIGHT, down: 0 },
  port: { around: -RIGHT, down: 0 },
};

/** A place as it is looked at, without perspective: to the right, up, and towards the eye. A rotation: every distance stays. */
export function seenTurned({ around, down }: Turn, [x, y, z]: Point3): Point3 {
  const right = x * Math.sin(around) - y * Math.cos(around);
  const ahead = x * Math.cos(around) + y * Math.sin(around);
  return [right, z * Math.cos(down) + ahead * Math.sin(down), z * Math.sin(down) - ahead * Math.cos(down)];
}

/** Turned further; around it comes back to itself, down and up it stops where it would look from behind. */
export function turnedBy({ around, down }: Turn, byAround: number, byDown: number): Turn {
  const whole = 4 * RIGHT;
  const on = around + byAround;
  return {
    around: on - whole * Math.round(on / whole),
    down: Math.min(RIGHT, Math.max(-RIGHT, down + byDown)),
  };
}
