import type { Guide } from '../../guide.ts';
import { ask, heightOf, shot, tape, tapes, whenIs } from '../asking.ts';
import { point } from '../edges.ts';
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

/** The edge, from the port end of the windshield round the bow to the starboard end. */
const EDGE = ['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1'] as const;

/**
 * A cover over an open bow, fastened all round. Two marks on the foot of the windshield and one forward on the
 * centreline fix every edge point; the gaps between neighbours check them. Taken as flat: an edge that rises or falls
 * by 60 mm over a 1.5 m tape changes the reading by about 1 mm. Where a pole or a deck lifts its middle, the crown is taken at two stations over a
 * string across: far tapes hardly feel it. Like the height on the glass it is no part of the flat shape, so it is read
 * twice. Common practice, no source.
 */
export const openBow: Guide = {
  kind: 'open-bow',
  flat: true,
  points: [
    point('W1', 'mark', ['port', 'aft'], [0, 900, 0]),
    point('W2', 'mark', ['starboard', 'aft'], [0, -900, 0]),
    point('F', 'mark', ['centre', 'forward'], [1450, 0, 0]),
    point('P1', 'edge', ['port'], [120, 1090, 0]),
    point('P2', 'edge', ['port'], [880, 1000, 0]),
    point('P3', 'edge', ['port'], [1620, 680, 0]),
    point('T', 'edge', ['centre', 'forward'], [2180, 0, 0]),
    point('S3', 'edge', ['starboard'], [1620, -680, 0]),
    point('S2', 'edge', ['starboard'], [880, -1000, 0]),
    point('S1', 'edge', ['starboard'], [120, -1090, 0]),
    point('G', 'edge', ['centre', 'above'], [-40, 0, 260]),
    point('K2', 'edge', ['centre', 'above'], [880, 0, 120]),
    point('K3', 'edge', ['centre', 'above'], [1620, 0, 60]),
  ],
  walk: [
    withCautions(lineQuestion, 'engine-off', 'footing'),
    ask('glass', ['up-glass', 'at-foot']),
    ask('crown', ['flat', 'crowned']),
    tape('W1', 'W2'),
    tape('W1', 'F'),
    tape('W2', 'F'),
    ...tapes('W1', EDGE),
    ...tapes('W2', [...EDGE].reverse()),
    ...tapes('F', EDGE),
    tape('P1', 'P2'),
    tape('P2', 'P3'),
    tape('P3', 'T'),
    tape('T', 'S3'),
    tape('S3', 'S2'),
    tape('S2', 'S1'),
    tape('P1', 'S1'),
    heightOf('h-G', 'G', ['W1', 'W2'], whenIs('glass', 'up-glass')),
    heightOf('crown-2', 'K2', ['P2', 'S2'], whenIs('crown', 'crowned')),
    heightOf('crown-3', 'K3', ['P3', 'S3'], whenIs('crown', 'crowned')),
    {
      slot: 'edge-whole',
      on: 'reading',
      reading: { kind: 'girth', points: ['P1', 'S1'], run: 'edge', needed: true },
    },
    { slot: 'edge', on: 'run', points: EDGE, whole: 'edge-whole', needed: true },
    shot('photo-port', ['P1', 'P2']),
    shot('photo-bow', ['P3', 'T', 'S3']),
    shot('photo-starboard', ['S1', 'S2']),
    berthQuestion,
    dockSideQuestion,
    cordQuestion,
    cleatsQuestion,
    inTheWayQuestion,
    fitsQuestion,
    fitsFromQuestion,
    rainQuestion,
    clothQuestion,
    ventsQuestion,
    bagQuestion,
  ],
  boxes: [],
  pairs: [
    ['W1', 'W2'],
    ['P1', 'S1'],
    ['P2', 'S2'],
    ['P3', 'S3'],
  ],
};
