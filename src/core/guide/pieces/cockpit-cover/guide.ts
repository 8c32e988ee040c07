import type { Guide } from '../../guide.ts';
import { ask, heightOf, offsetOf, shot, sizeOf, tape, tapes, whenIs } from '../asking.ts';
import { bowedEdge, edgeSteps, point } from '../edges.ts';
import {
  bagQuestion,
  berthQuestion,
  cleatsQuestion,
  clothQuestion,
  cordQuestion,
  dockSideQuestion,
  fitsFromQuestion,
  fitsQuestion,
  inTheWayQuestion,
  lineQuestion,
  rainQuestion,
  ventsQuestion,
  withCautions,
} from '../make-questions.ts';

const DOWN_TRANSOM = whenIs('aft-edge', 'down-transom');
const UP_HARDTOP = whenIs('fore-edge', 'up-hardtop');

/**
 * A cover over the cockpit or the stern, roughly level. The cockpit is open, so that the corners of the cover itself are the
 * marks: two bays, each a box with both diagonals, and the long sides over both. The belly of each side is an offset
 * from a string between its ends. Five readings are spare. Taken as flat: an edge that rises or falls by 60 mm over a 1.5 m tape
 * changes the reading by about 1 mm. Where it goes on up the hardtop or down the transom that strip is flat by itself; a wall
 * that must fit closely is a curtain, a piece of its own. Common practice, no source.
 */
export const cockpitCover: Guide = {
  kind: 'cockpit-cover',
  flat: true,
  points: [
    point('P1', 'edge', ['port', 'forward'], [0, 1120, 0]),
    point('P2', 'edge', ['port'], [-1080, 1190, 0]),
    point('P3', 'edge', ['port', 'aft'], [-2150, 1060, 0]),
    point('T', 'edge', ['centre', 'aft'], [-2260, 0, 0]),
    point('S3', 'edge', ['starboard', 'aft'], [-2150, -1060, 0]),
    point('S2', 'edge', ['starboard'], [-1080, -1190, 0]),
    point('S1', 'edge', ['starboard', 'forward'], [0, -1120, 0]),
    point('F', 'edge', ['centre', 'forward'], [90, 0, 0]),
    point('X', 'edge', ['centre', 'above'], [-1080, 0, 320]),
  ],
  walk: [
    withCautions(lineQuestion, 'engine-off', 'footing'),
    ...tapes('P1', ['P2', 'P3', 'S2', 'S1']),
    offsetOf('out-P2', 'P2', ['P1', 'P3'], 'port'),
    ...tapes('P2', ['P3', 'S3', 'S1']),
    ...tapes('P3', ['S3', 'S2']),
    ...bowedEdge({
      slot: 'aft-edge',
      others: ['down-transom'],
      ends: ['P3', 'S3'],
      middle: 'T',
      belly: 'aft',
      hollow: 'forward',
      across: 'S2',
    }),
    sizeOf('drop-aft-port', 'depth', ['P3'], DOWN_TRANSOM),
    sizeOf('drop-aft-starboard', 'depth', ['S3'], DOWN_TRANSOM),
    ...tapes('S3', ['S2', 'S1']),
    offsetOf('out-S2', 'S2', ['S1', 'S3'], 'starboard'),
    tape('S2', 'S1'),
    ...bowedEdge({
      slot: 'fore-edge',
      others: ['up-hardtop'],
      ends: ['P1', 'S1'],
      middle: 'F',
      belly: 'forward',
      hollow: 'aft',
      across: 'S2',
    }),
    sizeOf('drop-fore-port', 'height', ['P1'], UP_HARDTOP),
    sizeOf('drop-fore-starboard', 'height', ['S1'], UP_HARDTOP),
    sizeOf('hardtop-width', 'width', [], UP_HARDTOP),
    ask('support', ['pole', 'frame', 'none']),
    heightOf('h-X', 'X', ['P2', 'S2'], whenIs('support', 'pole', 'frame')),
    ...edgeSteps('edge', ['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1']),
    ...edgeSteps('fore', ['P1', 'F', 'S1']),
    shot('photo-port', ['P1', 'P2']),
    shot('photo-stern', ['P3', 'S3']),
    shot('photo-starboard', ['S2', 'S1']),
    shot('photo-inside', []),
    ask('split', ['one-piece', 'fore-and-aft', 'across']),
    cleatsQuestion,
    inTheWayQuestion,
    berthQuestion,
    dockSideQuestion,
    cordQuestion,
    fitsQuestion,
    fitsFromQuestion,
    rainQuestion,
    clothQuestion,
    ventsQuestion,
    bagQuestion,
  ],
  boxes: [
    ['P1', 'P2', 'S2', 'S1'],
    ['P2', 'P3', 'S3', 'S2'],
  ],
  pairs: [
    ['P1', 'S1'],
    ['P2', 'S2'],
    ['P3', 'S3'],
  ],
};
