import { bag, berth, cloth, inTheWay, line, rain, tow, vents } from './common.ts';
import type { PieceWords, PointWords } from './piece-words.ts';

const corner = (name: string, foot: boolean): PointWords => ({
  name,
  where: foot ? 'hem line' : 'where the edges meet',
});

const square = (top: string, feet: string): { title: string; how: string } => ({
  title: `${top} square to the deck`,
  how: `A board across ${feet}. From it square up to ${top}.`,
});

export const boxCover: PieceWords = {
  about: 'Four corners on top, four at the hem. The top, then each face with both its diagonals.',
  points: {
    T1: corner('top, port forward', false),
    T2: corner('top, starboard forward', false),
    T3: corner('top, starboard aft', false),
    T4: corner('top, port aft', false),
    B1: corner('hem, port forward', true),
    B2: corner('hem, starboard forward', true),
    B3: corner('hem, starboard aft', true),
    B4: corner('hem, port aft', true),
  },
  readings: {
    'h-T3': square('T3', 'B4, B1 and B2'),
    'h-T4': square('T4', 'B1, B2 and B3'),
    radius: {
      title: 'Radius of the corners',
      how: 'The usual corner: from where the curve begins to where the edges would meet.',
    },
  },
  mistakes: {
    'T1-T2': 'Mark all eight corners first. On a rounded corner mark where the two edges would meet.',
    'T1-T3': 'A diagonal: from port forward across to starboard aft.',
    'T2-T4': 'A diagonal: from starboard forward across to port aft.',
    'T1-B1': 'The height at this corner, along the edge.',
    'T1-B2': 'Round a wheel or a handle the tape is long. Hold it clear or swing the wheel.',
  },
  heights: 'Square to the deck.',
  shots: {
    'photo-forward': { title: 'From forward', how: 'T1, T2, B1 and B2 in the picture, a tape or card on the face.' },
    'photo-aft': { title: 'From aft', how: 'T3, T4, B3 and B4 in the picture, handles and wheel as they stand.' },
  },
  questions: {
    what: {
      title: 'What is covered?',
      help: 'Wheel, handles and backrest as they stand when the cover goes on.',
      choices: { seat: 'A seat', helm: 'A helm', console: 'A console', engine: 'An engine' },
    },
    line,
    corners: {
      title: 'Its corners?',
      help: 'A box cover on rounded corners stands off and fills with wind.',
      choices: { square: 'Square', rounded: 'Rounded' },
    },
    'in-the-way': inTheWay,
    ties: {
      title: 'What holds the hem?',
      help: 'A cover that is only put over it blows off.',
      choices: {
        cord: 'Cord or shock cord',
        straps: 'Straps',
        snaps: 'Snaps',
        'hook-and-loop': 'Hook-and-loop',
        none: 'Nothing',
      },
    },
    opening: {
      title: 'How is it opened?',
      help: 'A tall cover over a wheel comes off easier with a zip.',
      choices: {
        'lifts-off': 'Lifts off',
        'zip-forward': 'Zip forward',
        'zip-aft': 'Zip aft',
        'zip-side': 'Zip at a side',
      },
    },
    berth,
    tow,
    rain,
    cloth,
    vents,
    bag,
  },
  runs: {},
};
