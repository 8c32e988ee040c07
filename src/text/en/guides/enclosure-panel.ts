import { bag, fits, fitsFrom, inTheWay, line, speed } from './common.ts';
import { bow, exhaust, split } from './panel.ts';
import type { PieceWords, PointWords } from './piece-words.ts';

const onLine = (name: string): PointWords => ({ name, where: 'on the line you chose' });

export const enclosurePanel: PieceWords = {
  about:
    'One panel of an enclosure. Letters as seen from outside. Four corners, both diagonals, then how each edge bends.',
  seen: 'seen from outside',
  points: {
    A: onLine('upper left corner'),
    B: onLine('upper right corner'),
    C: onLine('lower right corner'),
    D: onLine('lower left corner'),
    E: onLine('middle of the top edge'),
    F: onLine('middle of the right edge, or its corner'),
    G: onLine('middle of the bottom edge, or its corner'),
    H: onLine('middle of the left edge, or its corner'),
    X1: onLine('left or only split, at the top'),
    X2: onLine('left or only split, at the bottom'),
    Y1: onLine('right split, at the top'),
    Y2: onLine('right split, at the bottom'),
  },
  readings: {
    'level-left': {
      title: 'Level line, left',
      how: 'From A down the left edge to the level line.',
    },
    'level-right': {
      title: 'Level line, right',
      how: 'From B down the right edge to the level line.',
    },
    'window-margin': {
      title: 'Cloth round the window',
      how: 'From the edge of the panel in to where the clear window begins.',
    },
    'overlap-width': { title: 'Overlap', how: 'How far the two panels lie over each other.' },
    'top-whole': { title: 'Whole top edge', how: 'Lay the tape along the top edge from A to B.' },
    'round-whole': {
      title: 'Whole edge, sides and bottom',
      how: 'Lay the tape from A down, along the bottom, and up to B.',
    },
  },
  mistakes: {
    'A-B': 'Put a cross of tape at every corner first. From inside, left and right change places: the letters stay.',
    'A-C': 'A diagonal: from the upper left to the lower right, as seen from outside.',
    'B-D': 'A diagonal: from the upper right to the lower left, as seen from outside.',
    'level-left': 'Afloat the boat heels under you: take the line from the boat, not from a spirit level.',
    'round-whole': 'On the edge, round both corners. Not straight across.',
  },
  heights: 'Square to the string.',
  shots: {
    'photo-upper': {
      title: 'Upper corners',
      how: 'A and B in the picture, track or fasteners, a tape or card beside one.',
    },
    'photo-lower': {
      title: 'Lower corners',
      how: 'C and D in the picture, what the cloth lands on, a tape or card beside one.',
    },
    'photo-whole': {
      title: 'The whole opening',
      how: 'From outside, square on: all four corners and the panels beside it.',
    },
  },
  questions: {
    panel: {
      title: 'Which panel is it?',
      help: 'One panel at a time; add the next one after it.',
      choices: { port: 'Port side', starboard: 'Starboard side', front: 'Front', aft: 'Aft' },
    },
    exhaust,
    line,
    'measured-from': {
      title: 'From where do you measure?',
      help: 'The letters are given as seen from outside, wherever you stand.',
      choices: { outside: 'From outside', inside: 'From inside' },
    },
    'top-edge': bow('The top edge', 'A to B', 'Above the string', 'Below the string'),
    'right-edge': bow('The right edge', 'B to C', 'Outside the string', 'Inside the string'),
    'bottom-edge': bow('The bottom edge', 'D to C', 'Below the string', 'Above the string'),
    'left-edge': bow('The left edge', 'A to D', 'Outside the string', 'Inside the string'),
    level: {
      title: 'Is a level line wanted?',
      help: 'Windows that hang askew are seen from afar. Afloat, take it from the boat: hardtop, rail or deck.',
      choices: {
        'boat-line': 'Yes, along a line of the boat',
        'spirit-level': 'Yes, by spirit level, ashore',
        'not-needed': 'Not needed',
      },
    },
    split,
    window: {
      title: 'The window?',
      help: 'The helm must see out, and lights must be seen.',
      choices: { whole: 'Clear from edge to edge', framed: 'Clear, with cloth round it', 'no-window': 'No window' },
    },
    overlap: {
      title: 'The next panel?',
      help: 'The one in front laps over the one behind, so that rain and spray run off.',
      choices: {
        'over-neighbour': 'Laps over it',
        'under-neighbour': 'Lies under it',
        none: 'Meets it at a zip, or there is none',
      },
    },
    trim: {
      title: 'How is it cut?',
      help: 'Oversize panels are trimmed at a fitting visit.',
      choices: { 'cut-to-size': 'To size', oversize: 'Oversize, trimmed on board', 'shop-decides': 'The shop decides' },
    },
    ventilation: {
      title: 'How does air get in when all is closed?',
      help: 'A closed enclosure with people in it needs air, always.',
      choices: { opens: 'This panel opens', elsewhere: 'Through another panel', none: 'Nowhere yet' },
    },
    'in-the-way': inTheWay,
    speed,
    fits,
    'fits-from': fitsFrom,
    bag,
  },
  runs: {
    top: {
      title: 'Top edge: track, zip or fasteners',
      how: 'From A to B. Say where a track or zip ends and which way it pulls.',
    },
    round: {
      title: 'Sides and bottom: zips and fasteners',
      how: 'From A down, along the bottom, and up to B. Each side and the bottom may close another way.',
    },
  },
};
