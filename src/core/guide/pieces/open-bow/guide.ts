import type { Guide, GuidePoint } from '../../guide.ts';
import { ask, heightOf, shot, tape, tapes, whenIs } from '../asking.ts';
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
  ventsQuestion,
  withCautions,
} from '../make-questions.ts';

const edge = (label: string, x: number, y: number, sides: GuidePoint['sides'], z = 0): GuidePoint => ({
  slot: label,
  label,
  role: 'edge',
  sides,
  nominal: [x, y, z],
});

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
    { slot: 'W1', label: 'W1', role: 'mark', sides: ['port', 'aft'], nominal: [0, 900, 0] },
    { slot: 'W2', label: 'W2', role: 'mark', sides: ['starboard', 'aft'], nominal: [0, -900, 0] },
    { slot: 'F', label: 'F', role: 'mark', sides: ['centre', 'forward'], nominal: [1450, 0, 0] },
    edge('P1', 120, 1090, ['port']),
    edge('P2', 880, 1000, ['port']),
    edge('P3', 1620, 680, ['port']),
    edge('T', 2180, 0, ['centre', 'forward']),
    edge('S3', 1620, -680, ['starboard']),
    edge('S2', 880, -1000, ['starboard']),
    edge('S1', 120, -1090, ['starboard']),
    edge('G', -40, 0, ['centre', 'above'], 260),
    edge('K2', 880, 0, ['centre', 'above'], 120),
    edge('K3', 1620, 0, ['centre', 'above'], 60),
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
    ask('cleats', ['under-cover', 'outside', 'cut-outs']),
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
