import type { PieceKind } from '../../../src/core/job/index.ts';
import { demoReadings } from '../../../src/screens/demo/demo-readings.ts';
import type { PieceTruth } from './dock.ts';

/** Inches as a person taps them: 47 5/8. */
function tapped(inches: number): string {
  const whole = Math.floor(inches);
  let [top, bottom] = [Math.round((inches - whole) * 16), 16];
  if (top === 0) return String(whole);
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${whole} ${top}/${bottom}`;
}

/** The demo's invented boat, with the slip in its bow cover put right. */
export function truthOf(kind: PieceKind): PieceTruth {
  const demo = demoReadings[kind];
  if (!demo) throw new Error(`no demo readings of ${kind}`);
  const readings = Object.fromEntries(Object.entries(demo.readings).map(([slot, inches]) => [slot, tapped(inches)]));
  if (kind === 'open-bow') readings['F-P3'] = '27 3/16';
  return {
    kind,
    readings,
    answers: { rain: 'stays-on', ...demo.answers },
    fasteners: demo.fasteners.map(tapped),
  };
}
