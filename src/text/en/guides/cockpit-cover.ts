import { bag, berth, cleats, cloth, cord, dockSide, fits, fitsFrom, inTheWay, line, rain, vents } from './common.ts';
import { bow } from './panel.ts';
import type { PieceWords, PointWords } from './piece-words.ts';

const onLine = (name: string): PointWords => ({ name, where: 'on the line you chose, at your cross of tape' });
const aft = bow('The aft edge', 'P3 to S3', 'Aft of the string', 'Forward of the string');
const forward = bow('The forward edge', 'P1 to S1', 'Forward of the string', 'Aft of the string');

export const cockpitCover: PieceWords = {
  about:
    'Three points on either side of the cockpit, taped across both ways; then how each edge bends, and the fasteners.',
  points: {
    P1: onLine('port forward corner'),
    P2: onLine('port side, half-way aft'),
    P3: onLine('port aft corner'),
    T: onLine('middle of the aft edge'),
    S3: onLine('starboard aft corner'),
    S2: onLine('starboard side, half-way aft'),
    S1: onLine('starboard forward corner'),
    F: onLine('middle of the forward edge'),
    X: { name: 'top of the pole or frame', where: 'where the cloth will lie on it' },
  },
  readings: {
    'drop-aft-port': {
      title: 'Down the transom, port',
      how: 'From P3 down the transom to where the cover ends.',
    },
    'drop-aft-starboard': {
      title: 'Down the transom, starboard',
      how: 'From S3 down the transom to where the cover ends.',
    },
    'drop-fore-port': {
      title: 'Up to the hardtop, port',
      how: 'From P1 straight up to the line of the cover on the hardtop.',
    },
    'drop-fore-starboard': {
      title: 'Up to the hardtop, starboard',
      how: 'From S1 straight up to the line of the cover on the hardtop.',
    },
    'hardtop-width': {
      title: 'Width at the hardtop',
      how: 'Along the line of the cover on the hardtop, from above P1 to above S1.',
    },
    'h-X': {
      title: 'Height of the pole or frame',
      how: 'Stretch a string from P2 to S2, taut. Stand the pole or frame under the middle of it, or beside it. Square up from the string to its top.',
    },
    'edge-whole': {
      title: 'Whole edge, round the stern',
      how: 'Lay the tape along the edge from P1 round the stern to S1.',
    },
    'fore-whole': {
      title: 'Whole forward edge',
      how: 'Lay the tape where the cover will be fastened, from P1 to S1: on the deck, or up, along the hardtop and down.',
    },
  },
  mistakes: {
    'P1-P2': 'Put a cross of tape at every point first, and hook on the same cross each time.',
    'P1-P3': 'Straight from corner to corner, not along the curve of the side.',
    'P1-S2': 'A diagonal: across the cockpit to the middle of the other side.',
    'out-P2': 'Square to the string, at the cross of P2. A string that touches anything is not straight.',
    'P2-S3': 'A diagonal: across the cockpit to the other aft corner.',
    'edge-whole': 'On the edge, through every point. Not straight across.',
  },
  heights: 'Square to the string.',
  shots: {
    'photo-port': { title: 'Port side', how: 'P1 and P2 in the picture, a tape or card beside one.' },
    'photo-stern': {
      title: 'The stern',
      how: 'P3 and S3 in the picture, cleats, lights and engine with them, a tape or card beside one.',
    },
    'photo-starboard': { title: 'Starboard side', how: 'S2 and S1 in the picture, a tape or card beside one.' },
    'photo-inside': {
      title: 'What stands in the cockpit',
      how: 'From ahead: seats, helm, everything that will lie under the cover.',
    },
  },
  questions: {
    line,
    'aft-edge': { ...aft, choices: { ...aft.choices, 'down-transom': 'It goes on down the transom' } },
    'fore-edge': { ...forward, choices: { ...forward.choices, 'up-hardtop': 'It goes on up to the hardtop' } },
    support: {
      title: 'What holds it up in the middle?',
      help: 'Without pitch water stands on it.',
      choices: { pole: 'A pole', frame: 'A frame or bow', none: 'Nothing' },
    },
    split: {
      title: 'Is it in one piece?',
      help: 'A zip lets one half be opened alone.',
      choices: {
        'one-piece': 'One piece',
        'fore-and-aft': 'Split along the centreline',
        across: 'Split across, from P2 to S2',
      },
    },
    cleats,
    'in-the-way': inTheWay,
    berth,
    'dock-side': dockSide,
    cord,
    fits,
    'fits-from': fitsFrom,
    rain,
    cloth,
    vents,
    bag,
  },
  runs: {
    edge: {
      title: 'Fasteners round the stern',
      how: 'From P1 round the stern to S1. Hook once at P1 and read every fastener, or tape gap to gap.',
    },
    fore: { title: 'Fasteners of the forward edge', how: 'From P1 to S1, where the cover is fastened.' },
  },
};
