import { bag, berth, cleats, cloth, cord, dockSide, fits, fitsFrom, inTheWay, line, rain, vents } from './common.ts';
import type { PieceWords, PointWords } from './piece-words.ts';

const bowEdge = (side: string): PointWords => ({ name: side, where: 'on the line you chose' });

const crown = (title: string, port: string, starboard: string) => ({
  title,
  how: `A taut string from ${port} to ${starboard}. From its middle square up to where the cloth will lie.`,
});

export const openBow: PieceWords = {
  about: 'Three marks of tape, every edge point from each of them, the gaps between, then the fasteners.',
  points: {
    W1: { name: 'port mark at the windshield foot', where: 'corner of the tape mark' },
    W2: { name: 'starboard mark at the windshield foot', where: 'corner of the tape mark' },
    F: { name: 'forward mark on the centreline', where: 'corner of the tape mark' },
    P1: bowEdge('port edge at the windshield'),
    P2: bowEdge('port edge amidships of the bow'),
    P3: bowEdge('port edge near the bow'),
    T: bowEdge('tip of the bow'),
    S3: bowEdge('starboard edge near the bow'),
    S2: bowEdge('starboard edge amidships of the bow'),
    S1: bowEdge('starboard edge at the windshield'),
    K2: { name: 'middle of the cover between P2 and S2', where: 'on the centreline' },
    K3: { name: 'middle of the cover between P3 and S3', where: 'on the centreline' },
    G: { name: 'top of the cover on the glass', where: 'on the centreline' },
  },
  readings: {
    'crown-2': crown('Crown at P2 and S2', 'P2', 'S2'),
    'crown-3': crown('Crown at P3 and S3', 'P3', 'S3'),
  },
  mistakes: {
    'W1-W2': 'Press the marks down well. A mark that moved is a new mark.',
    'W1-F': 'Stay on the same corner of each mark for every tape.',
    'edge-whole': 'Lay the tape along the edge itself, round every point. Not straight across.',
    'h-G': 'Square to a string from W1 to W2, not along the slope of the glass.',
  },
  heights: 'Square to the string.',
  shots: {
    'photo-port': { title: 'Port edge', how: 'From the dock, P1 and P2 in the picture, a tape or card beside one.' },
    'photo-bow': { title: 'The bow', how: 'From ahead or above: P3, the tip T and S3, cleats and lights with them.' },
    'photo-starboard': { title: 'Starboard edge', how: 'S1 and S2 in the picture, a tape or card beside one.' },
  },
  questions: {
    line,
    glass: {
      title: 'Where does the cover meet the windshield?',
      help: 'Carried up the glass it sheds water.',
      choices: { 'at-foot': 'At the foot', 'up-glass': 'Up the glass' },
    },
    crown: {
      title: 'Does anything lift the middle of the cover?',
      help: 'A support pole, a crowned deck. Water runs off a crown and stands in a hollow.',
      choices: { flat: 'Nothing: it lies flat between its edges', crowned: 'Yes, it is crowned' },
    },
    berth,
    'dock-side': dockSide,
    cord,
    cleats,
    'in-the-way': inTheWay,
    fits,
    'fits-from': fitsFrom,
    rain,
    cloth,
    vents,
    bag,
  },
  runs: {
    edge: {
      title: 'Edge fasteners',
      how: 'From P1 round the bow to S1. Hook once at P1 and read every fastener, or tape gap to gap.',
    },
  },
};
