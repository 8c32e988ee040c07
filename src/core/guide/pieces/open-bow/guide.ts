import type { Guide, GuidePoint, GuideStep } from '../../guide.ts';
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

const edge = (label: string, x: number, y: number, sides: GuidePoint['sides']): GuidePoint => ({
  slot: label,
  label,
  role: 'edge',
  sides,
  nominal: [x, y, 0],
});

/** The edge, from the port end of the windshield round the bow to the starboard end. */
const EDGE = ['P1', 'P2', 'P3', 'T', 'S3', 'S2', 'S1'] as const;

const tape = (from: string, to: string): GuideStep => ({
  slot: `${from}-${to}`,
  on: 'reading',
  reading: { kind: 'straight', points: [from, to], needed: true },
});

/** Hook once, read many: every edge point from one mark, nearest side first. */
const fromMark = (mark: string, order: readonly string[]): GuideStep[] => order.map((point) => tape(mark, point));

/**
 * A cover over an open bow, fastened all round. Two marks on the foot of the windshield and one forward on the
 * centreline fix every edge point; the gaps between neighbours check them. Taken as flat: an edge that rises or falls
 * by 60 mm over a 1.5 m tape changes the reading by about 1 mm. Common practice, no source.
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
    { slot: 'G', label: 'G', role: 'edge', sides: ['centre', 'above'], nominal: [-40, 0, 260] },
  ],
  walk: [
    withCautions(lineQuestion, 'engine-off', 'footing'),
    tape('W1', 'W2'),
    tape('W1', 'F'),
    tape('W2', 'F'),
    ...fromMark('W1', EDGE),
    ...fromMark('W2', [...EDGE].reverse()),
    ...fromMark('F', EDGE),
    tape('P1', 'P2'),
    tape('P2', 'P3'),
    tape('P3', 'T'),
    tape('T', 'S3'),
    tape('S3', 'S2'),
    tape('S2', 'S1'),
    tape('P1', 'S1'),
    { slot: 'h-G', on: 'reading', reading: { kind: 'height', points: ['G'], baseline: ['W1', 'W2'], needed: true } },
    {
      slot: 'edge-whole',
      on: 'reading',
      reading: { kind: 'girth', points: ['P1', 'S1'], run: 'edge', needed: true },
    },
    { slot: 'edge', on: 'run', points: EDGE, whole: 'edge-whole', needed: true },
    { slot: 'photo-port', on: 'shot', points: ['P1', 'P2'], needed: true },
    { slot: 'photo-bow', on: 'shot', points: ['P3', 'T', 'S3'], needed: true },
    { slot: 'photo-starboard', on: 'shot', points: ['S1', 'S2'], needed: true },
    { slot: 'glass', on: 'question', choices: ['at-foot', 'up-glass'], needed: true },
    berthQuestion,
    dockSideQuestion,
    cordQuestion,
    { slot: 'cleats', on: 'question', choices: ['under-cover', 'outside', 'cut-outs'], needed: true },
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
