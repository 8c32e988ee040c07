import type { Guide, GuidePoint, GuideStep } from '../../guide.ts';
import { ask, offsetOf, shot, sizeOf, stationOf, tape, tapes, whenIs } from '../asking.ts';
import { inTheWayQuestion, lineQuestion } from '../make-questions.ts';

/**
 * Seen from above by somebody who stands at the front edge: forward is away from them, port is to their left. Foam gives,
 * so every point of the outline is as sure as a corner on a cord.
 */
const at = (slot: string, sides: GuidePoint['sides'], x: number, y: number): GuidePoint => ({
  slot,
  label: slot,
  role: 'corner',
  sides,
  nominal: [x, y, 0],
});

/** The outline behind the front edge, from left to right. */
const BACK = ['E1', 'E2', 'E3', 'E4', 'E5', 'E6'] as const;
const STRING = ['L', 'R'] as const;
const BY_TAPES = whenIs('outline', 'two-tapes');
const BY_OFFSETS = whenIs('outline', 'station-offset');
const CURVED = whenIs('front', 'hollow', 'belly');
const HINGED = whenIs('hinge', 'one');
const SEWN_ON = whenIs('fastening', 'snaps');

const gaps: GuideStep[] = BACK.slice(1).map((point, i) => tape(BACK[i] ?? '', point));

/**
 * A cushion, bolster or carpet lying flat: the front edge is a string between two corners, the outline behind it is
 * taken by a tape from either corner, or by station and offset with one tape across from either corner; gaps and the
 * width behind check both.
 * A hollow or a belly of the front edge has an offset of its own, for tapes along the string hardly feel it.
 * Common practice, no source.
 */
export const cushion: Guide = {
  kind: 'cushion',
  flat: true,
  // In order round, for that is the line the shop is shown; the ends of a hinge are marks within it.
  points: [
    at('L', ['port', 'aft'], 0, 700),
    at('E1', ['port'], 420, 690),
    at('E2', ['port', 'forward'], 560, 430),
    at('E3', ['forward'], 600, 140),
    at('E4', ['forward'], 600, -140),
    at('E5', ['starboard', 'forward'], 560, -430),
    at('E6', ['starboard'], 420, -690),
    at('R', ['starboard', 'aft'], 0, -700),
    at('N', ['aft'], 0, 0),
    { ...at('H1', ['aft'], 0, 200), role: 'mark' },
    { ...at('H2', ['forward'], 600, 200), role: 'mark' },
  ],
  walk: [
    ask('what', ['cushion', 'bolster', 'carpet'], { cautions: ['engine-off', 'footing'] }),
    lineQuestion,
    ask('outline', ['two-tapes', 'station-offset']),
    tape(...STRING),
    ...BACK.map((point) => tape('L', point, point === 'E4' ? {} : BY_TAPES)),
    ...[...BACK].reverse().map((point) => tape('R', point, point === 'E3' ? {} : BY_TAPES)),
    ...BACK.flatMap((point) => [
      stationOf(point, STRING, BY_OFFSETS),
      offsetOf(`out-${point}`, point, STRING, 'forward', BY_OFFSETS),
    ]),
    ...gaps,
    tape('E1', 'E6'),
    ask('front', ['straight', 'hollow', 'belly']),
    offsetOf('hollow', 'N', STRING, 'forward', whenIs('front', 'hollow')),
    offsetOf('belly', 'N', STRING, 'aft', whenIs('front', 'belly')),
    ...tapes('N', ['E2', 'E5'], CURVED),
    ask('hinge', ['none', 'one']),
    ...tapes('H1', ['L', 'E1', 'E6'], HINGED),
    ...tapes('H2', ['L', 'R', 'E6'], HINGED),
    sizeOf('thickness', 'thickness', [], whenIs('what', 'cushion', 'bolster')),
    ask('corners', ['square', 'rounded']),
    sizeOf('radius', 'radius', ['E1'], whenIs('corners', 'rounded')),
    ask('bevel', ['square', 'undercut', 'flared']),
    sizeOf('bevel-left', 'depth', ['E2'], whenIs('bevel', 'undercut', 'flared')),
    sizeOf('bevel-right', 'depth', ['E5'], whenIs('bevel', 'undercut', 'flared')),
    ask('fastening', ['loose', 'hook-and-loop', 'snaps', 'straps']),
    {
      slot: 'back-whole',
      on: 'reading',
      reading: { kind: 'girth', points: ['E1', 'E6'], run: 'back', needed: true },
      ...SEWN_ON,
    },
    { slot: 'back', on: 'run', points: BACK, whole: 'back-whole', needed: true, ...SEWN_ON },
    shot('photo-above', ['L', 'R', 'E1', 'E6']),
    shot('photo-edge', ['E3']),
    ask('drain', ['wanted', 'none']),
    inTheWayQuestion,
    ask('fabric', ['as-before', 'coated', 'woven', 'shop-decides'], { needed: false, words: true }),
  ],
  boxes: [],
  pairs: [
    ['L', 'R'],
    ['E1', 'E6'],
    ['E2', 'E5'],
    ['E3', 'E4'],
  ],
};
