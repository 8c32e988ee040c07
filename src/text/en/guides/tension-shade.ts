import { bag, berth, cloth, inTheWay, speed, wind } from './common.ts';
import type { PieceWords } from './piece-words.ts';

export const tensionShade: PieceWords = {
  about: 'Two mounts on the hardtop, two poles in rod holders. Best measured with the poles standing.',
  points: {
    A: { name: 'port mount', where: 'centre of the eye' },
    B: { name: 'starboard mount', where: 'centre of the eye' },
    C: { name: 'port pole', where: 'top of the pole, where the cord leaves it' },
    D: { name: 'starboard pole', where: 'top of the pole, where the cord leaves it' },
  },
  readings: {
    'pole-port': {
      title: 'Length of the port pole',
      how: 'From the bottom of the holder to where the cord will leave the pole.',
    },
    'pole-starboard': {
      title: 'Length of the starboard pole',
      how: 'From the bottom of the holder to where the cord will leave the pole.',
    },
  },
  mistakes: {
    'A-C': 'A slack tape is always long. Pull it straight.',
    'A-D': 'A diagonal: from the port mount across to the starboard pole.',
    'B-C': 'A diagonal: from the starboard mount across to the port pole.',
  },
  heights: 'Square to the deck, from one level string or deck line for all four corners.',
  shots: {
    'photo-mounts': {
      title: 'Both mounts',
      how: 'From the front, both eyes in the picture, a tape or card beside one.',
    },
    'photo-pole-port': { title: 'Port pole and its holder', how: 'The whole pole from the holder to the tip.' },
    'photo-pole-starboard': {
      title: 'Starboard pole and its holder',
      how: 'The whole pole from the holder to the tip.',
    },
  },
  questions: {
    over: {
      title: 'What does the shade cover?',
      help: 'Over the foredeck the poles stand forward of the hardtop, over the cockpit aft of it.',
      choices: { foredeck: 'Foredeck', cockpit: 'Cockpit' },
    },
    poles: {
      title: 'What stands in the rod holders now?',
      help: 'Corners are measured tip to tip. One degree of lean on a 2 m pole is 35 mm (1 3/8 in).',
      choices: {
        'real-poles': 'The real poles',
        sticks: 'Straight sticks of the same length',
        'not-yet': 'Nothing yet',
      },
    },
    lean: {
      title: 'How far do the rod holders lean?',
      help: 'From upright. Usual are 0, 15 and 30 degrees. It checks the corners, it does not measure them.',
      choices: { upright: 'Upright', 'deg-15': '15 degrees', 'deg-30': '30 degrees', other: 'Other: say in words' },
    },
    'lean-way': {
      title: 'Which way do they lean?',
      help: 'As the pole will lean. Where port and starboard differ, say so in words.',
      choices: { forward: 'Forward', aft: 'Aft', outboard: 'Outboard', differs: 'They differ' },
    },
    holders: {
      title: 'How are the rod holders fixed?',
      help: 'Wood screws do not carry a shade.',
      choices: {
        'through-bolted': 'Through-bolted with backing plates',
        screwed: 'Screwed',
        'to-be-fitted': 'Not fitted yet',
      },
    },
    rain: {
      title: 'In rain, does it stay up?',
      help: 'A flat solid shade left up in rain holds water.',
      choices: { 'taken-down': 'Taken down', 'stays-up': 'Stays up' },
    },
    berth,
    speed,
    wind,
    cloth,
    bag,
    'in-the-way': inTheWay,
  },
  runs: {},
};
