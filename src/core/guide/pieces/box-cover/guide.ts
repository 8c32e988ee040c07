import type { Guide, GuidePoint } from '../../guide.ts';
import { ask, heightOf, shot, sizeOf, tape, whenIs } from '../asking.ts';
import {
  bagQuestion,
  berthQuestion,
  clothQuestion,
  inTheWayQuestion,
  rainQuestion,
  towQuestion,
  ventsQuestion,
  withCautions,
} from '../make-questions.ts';

/** A seat with a back: lower forward than aft, wider at the foot. Invented. */
const CORNERS = [
  ['T1', ['port', 'forward', 'above'], [350, 300, 700]],
  ['T2', ['starboard', 'forward', 'above'], [350, -300, 700]],
  ['T3', ['starboard', 'aft', 'above'], [-300, -320, 950]],
  ['T4', ['port', 'aft', 'above'], [-300, 320, 950]],
  ['B1', ['port', 'forward', 'below'], [400, 340, 0]],
  ['B2', ['starboard', 'forward', 'below'], [400, -340, 0]],
  ['B3', ['starboard', 'aft', 'below'], [-380, -350, 0]],
  ['B4', ['port', 'aft', 'below'], [-380, 350, 0]],
] as const;

const points = CORNERS.map(
  ([slot, sides, nominal]): GuidePoint => ({ slot, label: slot, role: 'corner', sides: [...sides], nominal }),
);

/** One face, from the corner on its left: its foot, its far upright, both diagonals. */
const face = (left: number, right: number) => [
  tape(`B${left}`, `B${right}`),
  tape(`T${right}`, `B${right}`),
  tape(`T${left}`, `B${right}`),
  tape(`T${right}`, `B${left}`),
];

/**
 * A cover over a seat, helm, console or engine: four corners on top, four at the hem. Top and faces are boxes with both
 * diagonals, which fix all eight; nothing can be taped through the thing itself, so two heights square to the deck say how
 * far the hem is twisted, and check each other. Common practice, no source.
 */
export const boxCover: Guide = {
  kind: 'box-cover',
  flat: false,
  points,
  walk: [
    ask('what', ['seat', 'helm', 'console', 'engine'], { cautions: ['engine-off', 'footing'] }),
    ask('line', ['finished-edge', 'fastener-line', 'boat-edge']),
    tape('T1', 'T2'),
    tape('T2', 'T3'),
    tape('T3', 'T4'),
    tape('T4', 'T1'),
    tape('T1', 'T3'),
    tape('T2', 'T4'),
    tape('T1', 'B1'),
    ...face(1, 2),
    ...face(2, 3),
    ...face(3, 4),
    // Back at the first corner, whose upright is taped already.
    ...face(4, 1).filter(({ slot }) => slot !== 'T1-B1'),
    heightOf('h-T3', 'T3', ['B4', 'B1', 'B2']),
    heightOf('h-T4', 'T4', ['B1', 'B2', 'B3']),
    ask('corners', ['square', 'rounded']),
    sizeOf('radius', 'radius', ['T1'], whenIs('corners', 'rounded')),
    shot('photo-forward', ['T1', 'T2', 'B1', 'B2']),
    shot('photo-aft', ['T3', 'T4', 'B3', 'B4']),
    withCautions(inTheWayQuestion, 'lights-and-view'),
    ask('ties', ['cord', 'straps', 'snaps', 'hook-and-loop', 'none']),
    ask('opening', ['lifts-off', 'zip-forward', 'zip-aft', 'zip-side']),
    berthQuestion,
    towQuestion,
    rainQuestion,
    clothQuestion,
    ventsQuestion,
    bagQuestion,
  ],
  boxes: [
    ['B1', 'B2', 'B3', 'B4'],
    ['T1', 'T2', 'T3', 'T4'],
  ],
  pairs: [
    ['T1', 'T2'],
    ['T4', 'T3'],
    ['B1', 'B2'],
    ['B4', 'B3'],
  ],
};
