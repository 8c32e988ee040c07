import { bag, berth, cloth, cord, dockSide, fits, fitsFrom, inTheWay, line, speed } from './common.ts';
import { bow, exhaust, split } from './panel.ts';
import type { PieceWords, PointWords } from './piece-words.ts';

const atTop = (name: string): PointWords => ({ name, where: 'on the line of the hardtop, track or fasteners' });
const below = (name: string): PointWords => ({ name, where: 'on the line you chose' });

export const dropCurtain: PieceWords = {
  about: 'Across the stern, from the hardtop down. Four corners, both diagonals, then how each edge bends.',
  points: {
    P1: atTop('port top corner'),
    P2: below('middle of the port edge'),
    P3: below('port bottom corner, gunwale or transom'),
    T: below('middle of the bottom edge'),
    S3: below('starboard bottom corner, gunwale or transom'),
    S2: below('middle of the starboard edge'),
    S1: atTop('starboard top corner'),
    H: atTop('middle of the top edge'),
    X1: atTop('port or only split, at the top'),
    X2: below('port or only split, at the bottom'),
    Y1: atTop('starboard split, at the top'),
    Y2: below('starboard split, at the bottom'),
  },
  readings: {
    'below-edge': {
      title: 'How far it hangs below the line',
      how: 'From the line at the bottom down to where the cloth should end. 0 where it ends on the line.',
    },
    'top-whole': { title: 'Whole top edge', how: 'Lay the tape along the hardtop from P1 to S1.' },
    'round-whole': {
      title: 'Whole edge, sides and bottom',
      how: 'Lay the tape from P1 down, along the bottom, and up to S1.',
    },
  },
  mistakes: {
    'P1-P3': 'Put a cross of tape at every corner first. Round a corner of the boat it is two curtains.',
    'P1-S3': 'A diagonal: from the port top across to the starboard bottom.',
    'P3-S1': 'A diagonal: from the port bottom across to the starboard top.',
    'round-whole': 'On the edge, round both corners. Not straight across.',
  },
  heights: 'Square to the string.',
  shots: {
    'photo-port': { title: 'Port edge', how: 'P1 and P3 in the picture, a tape or card beside one.' },
    'photo-starboard': { title: 'Starboard edge', how: 'S1 and S3 in the picture, a tape or card beside one.' },
    'photo-whole': {
      title: 'The whole opening',
      how: 'From astern, square on: all four corners, ladder, engine and lights.',
    },
  },
  questions: {
    line,
    exhaust,
    lands: {
      title: 'Where does its bottom end?',
      help: 'Outside the coaming the water runs off outside.',
      choices: { inside: 'Inside the gunwale or coaming', outside: 'Outside, over it', 'on-deck': 'On the deck' },
    },
    'top-edge': bow('The top edge', 'P1 to S1', 'Above the string', 'Below the string'),
    'port-edge': bow('The port edge', 'P1 to P3', 'Outside the string, to port', 'Inside the string'),
    'bottom-edge': bow('The bottom edge', 'P3 to S3', 'Below the string', 'Above the string'),
    'starboard-edge': bow('The starboard edge', 'S1 to S3', 'Outside the string, to starboard', 'Inside the string'),
    split,
    'in-the-way': inTheWay,
    speed,
    berth,
    'dock-side': dockSide,
    cord,
    fits,
    'fits-from': fitsFrom,
    cloth,
    bag,
  },
  runs: {
    top: { title: 'Top edge: track or fasteners', how: 'From P1 along the hardtop to S1. Say where a track ends.' },
    round: {
      title: 'Sides and bottom: fasteners',
      how: 'From P1 down, along the bottom, and up to S1. Each side and the bottom may close another way.',
    },
  },
};
