import type { Guide } from '../../guide.ts';
import { ask, shot, sizeOf, tape, tapes, whenIs } from '../asking.ts';
import { bowedEdge, edgeSteps, point, split } from '../edges.ts';
import {
  bagQuestion,
  berthQuestion,
  clothQuestion,
  cordQuestion,
  dockSideQuestion,
  fitsFromQuestion,
  fitsQuestion,
  inTheWayQuestion,
  lineQuestion,
  speedQuestion,
  withCautions,
} from '../make-questions.ts';

/**
 * A curtain across the stern of the cockpit, from the hardtop down to the gunwales or the transom. Four corners with all sides
 * and both diagonals; one reading is spare. Every edge that is not straight brings a point in its middle, fixed by its place
 * along the edge and an offset from the string, and one tape more that checks both and the box. Taken as flat: a corner
 * that stands out of the plane by 60 mm changes a tape of 1.2 m by 1.5 mm. Round a corner it is two curtains. Common
 * practice, no source.
 */
export const dropCurtain: Guide = {
  kind: 'drop-curtain',
  flat: true,
  points: [
    point('P1', 'edge', ['port', 'above'], [-2300, 1050, 1950]),
    point('P3', 'edge', ['port', 'below'], [-2300, 1130, 800]),
    point('S3', 'edge', ['starboard', 'below'], [-2300, -1130, 800]),
    point('S1', 'edge', ['starboard', 'above'], [-2300, -1050, 1950]),
    point('H', 'edge', ['above'], [-2300, 0, 2010]),
    point('P2', 'edge', ['port'], [-2300, 1120, 1380]),
    point('T', 'edge', ['below'], [-2300, 0, 760]),
    point('S2', 'edge', ['starboard'], [-2300, -1120, 1380]),
    point('X1', 'edge', ['above'], [-2300, 350, 1990]),
    point('X2', 'edge', ['below'], [-2300, 350, 770]),
    point('Y1', 'edge', ['above'], [-2300, -350, 1990]),
    point('Y2', 'edge', ['below'], [-2300, -350, 770]),
  ],
  walk: [
    withCautions(lineQuestion, 'engine-off', 'footing'),
    ask('exhaust', ['away', 'below', 'none'], { cautions: ['carbon-monoxide'] }),
    ask('lands', ['inside', 'outside', 'on-deck']),
    ...tapes('P1', ['P3', 'S3', 'S1']),
    ...tapes('P3', ['S3', 'S1']),
    tape('S1', 'S3'),
    ...bowedEdge({ slot: 'top-edge', ends: ['P1', 'S1'], middle: 'H', belly: 'above', hollow: 'below', across: 'P3' }),
    ...bowedEdge({
      slot: 'port-edge',
      ends: ['P1', 'P3'],
      middle: 'P2',
      belly: 'port',
      hollow: 'starboard',
      across: 'S1',
    }),
    ...bowedEdge({
      slot: 'bottom-edge',
      ends: ['P3', 'S3'],
      middle: 'T',
      belly: 'below',
      hollow: 'above',
      across: 'S1',
    }),
    ...bowedEdge({
      slot: 'starboard-edge',
      ends: ['S1', 'S3'],
      middle: 'S2',
      belly: 'starboard',
      hollow: 'port',
      across: 'P1',
    }),
    ask('split', ['one-piece', 'one', 'two']),
    ...split({ top: 'X1', bottom: 'X2', near: ['P1', 'P3'], far: ['S1', 'S3'], is: ['one', 'two'] }),
    ...split({ top: 'Y1', bottom: 'Y2', near: ['S1', 'S3'], far: ['P1', 'P3'], is: ['two'] }),
    sizeOf('below-edge', 'length', ['P3', 'S3'], whenIs('lands', 'inside', 'outside')),
    ...edgeSteps('top', ['P1', 'H', 'S1']),
    ...edgeSteps('round', ['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1']),
    shot('photo-port', ['P1', 'P3']),
    shot('photo-starboard', ['S1', 'S3']),
    shot('photo-whole', []),
    inTheWayQuestion,
    speedQuestion,
    berthQuestion,
    dockSideQuestion,
    cordQuestion,
    fitsQuestion,
    fitsFromQuestion,
    clothQuestion,
    bagQuestion,
  ],
  boxes: [['P1', 'S1', 'S3', 'P3']],
  pairs: [
    ['P1', 'S1'],
    ['P3', 'S3'],
    ['P2', 'S2'],
  ],
};
