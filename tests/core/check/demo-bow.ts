import { guideOf } from '../../../src/core/guide/pieces/index.ts';
import type { PieceKind } from '../../../src/core/job/index.ts';
import { demoReadings } from '../../../src/screens/demo/demo-readings.ts';

/** The guide of a piece; a missing one is a fault of the test. */
export function guideNamed(kind: PieceKind) {
  const guide = guideOf(kind);
  if (!guide) throw new Error(`no guide ${kind}`);
  return guide;
}

/** Inches as a person types them: 47 5/8. */
function asTyped(inches: number): string {
  let [top, bottom] = [Math.round(inches * 16) % 16, 16];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const whole = Math.floor(Math.round(inches * 16) / 16);
  return top === 0 ? String(whole) : `${whole} ${top}/${bottom}`;
}

/** The demo's invented bow cover as it was typed, without the demo's own slip: F to P3 there has its digits swapped. */
export const demoBow: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries({ ...demoReadings['open-bow']?.readings, 'F-P3': 27.1875 }).map(([slot, inches]) => [
    slot,
    asTyped(inches),
  ]),
);
