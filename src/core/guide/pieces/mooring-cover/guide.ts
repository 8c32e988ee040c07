import type { Guide } from '../../guide.ts';
import { ask, heightOf, shot, sizeOf, tapes, whenIs } from '../asking.ts';
import { edgeSteps, point } from '../edges.ts';
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
  rainQuestion,
  towQuestion,
  ventsQuestion,
  withCautions,
} from '../make-questions.ts';

/** The sheer, from the port corner of the transom round the bow. */
const SHEER = ['P3', 'P2', 'P1', 'N', 'S1', 'S2', 'S3'] as const;

const FORE_TOP = whenIs('fore-top', 'thing', 'pole');
const STRAPPED = whenIs('held', 'cord-and-straps');

/**
 * A full cover for mooring or trailering, in space. The sheer is seven points of it: the stem, and three stations on either side, the last at the
 * corners of the transom. Tapes along the sheer, across the cockpit and both its diagonals, and one tape from the highest thing the
 * cover lies on to each point fix them in plan and check each other; heights over a line of the boat (or level ground under a
 * trailer) fix how the sheer rises. Tapes that run nearly level hardly feel a height, so that each height is read
 * twice. Across a closed foredeck no tape goes straight, a girth does. What else holds the cover up, a pole included, is fixed by tapes from the
 * sheer with one to spare. Hems hang on a cord, which wants 12 mm, not 6. Common practice, no source.
 */
export const mooringCover: Guide = {
  kind: 'mooring-cover',
  flat: false,
  points: [
    point('N', 'corner', ['centre', 'forward'], [2900, 0, 1050]),
    point('P1', 'corner', ['port', 'forward'], [1900, 800, 900]),
    point('P2', 'corner', ['port'], [150, 1120, 790]),
    point('P3', 'corner', ['port', 'aft'], [-2600, 1020, 740]),
    point('S3', 'corner', ['starboard', 'aft'], [-2600, -1020, 740]),
    point('S2', 'corner', ['starboard'], [150, -1120, 790]),
    point('S1', 'corner', ['starboard', 'forward'], [1900, -800, 900]),
    point('H', 'corner', ['centre', 'above'], [450, 0, 1420]),
    point('E', 'corner', ['centre', 'above'], [-1500, 0, 1280]),
    point('F', 'corner', ['centre', 'above'], [1750, 0, 1330]),
  ],
  walk: [
    withCautions(lineQuestion, 'engine-off', 'footing'),
    berthQuestion,
    ask('datum', ['ground', 'waterline']),
    ...tapes('N', ['P1', 'S1', 'P2', 'S2']),
    ...tapes('P2', ['P1', 'P3', 'S3', 'S2']),
    ...tapes('S2', ['S1', 'S3', 'P3']),
    ...tapes('P3', ['S3']),
    ...tapes('H', SHEER),
    ...SHEER.map((of) => heightOf(`h-${of}`, of)),
    ask('aft-top', ['thing', 'pole', 'nothing']),
    ...tapes('E', ['P2', 'P3', 'S3', 'S2'], whenIs('aft-top', 'thing', 'pole')),
    ask('fore-top', ['thing', 'pole', 'nothing']),
    ...tapes('F', ['P1', 'N', 'S1', 'H'], FORE_TOP),
    heightOf('h-F', 'F', ['N', 'H'], FORE_TOP),
    {
      slot: 'over-foredeck',
      on: 'reading',
      reading: { kind: 'girth', points: ['P1', 'S1'], needed: true },
    },
    sizeOf('skirt', 'length', ['P2', 'S2']),
    withCautions(towQuestion, 'tow'),
    ask('held', ['cord', 'cord-and-straps', 'snaps']),
    ...edgeSteps('edge', SHEER, whenIs('held', 'snaps')),
    ...edgeSteps('straps', ['N', 'P1', 'P2', 'P3'], STRAPPED),
    shot('photo-bow', ['N', 'P1', 'S1']),
    shot('photo-port', ['P2', 'P3']),
    shot('photo-stern', ['P3', 'S3']),
    shot('photo-starboard', ['S2', 'S3']),
    inTheWayQuestion,
    ask('rub', ['nowhere', 'windshield', 'corners', 'several'], { words: true }),
    dockSideQuestion,
    cordQuestion,
    fitsQuestion,
    fitsFromQuestion,
    rainQuestion,
    clothQuestion,
    ask('vents', ventsQuestion.choices),
    bagQuestion,
  ],
  boxes: [['P2', 'P3', 'S3', 'S2']],
  pairs: [
    ['P1', 'S1'],
    ['P2', 'S2'],
    ['P3', 'S3'],
  ],
};
