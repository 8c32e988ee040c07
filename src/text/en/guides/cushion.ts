import { inTheWay, line } from './common.ts';
import type { PieceWords, PointWords } from './piece-words.ts';

const back = (name: string): PointWords => ({ name, where: 'your line' });

const station = (point: string): [string, { title: string; how: string }] => [
  `along-${point}`,
  { title: `${point} along the string`, how: `Square from ${point} to the string. From L along the string to there.` },
];
const offset = (point: string): [string, { title: string; how: string }] => [
  `out-${point}`,
  { title: `${point} off the string`, how: `From the string square to ${point}.` },
];
const OUTLINE = ['E1', 'E2', 'E3', 'E4', 'E5', 'E6'];

const curve = {
  title: 'The front edge off the string',
  how: 'Mark N on the edge where it is furthest from the string. From the string square to N.',
};
const bevel = (point: string) => ({
  title: `Bevel at ${point}`,
  how: `At ${point}: how far the lower edge lies from straight under the upper one.`,
});

export const cushion: PieceWords = {
  about: 'A string along the front edge, the outline behind it by two tapes or by station and offset.',
  seen: 'away from you ▲',
  points: {
    L: { name: 'left front corner', where: 'its very end' },
    R: { name: 'right front corner', where: 'its very end' },
    E1: back('left back corner'),
    E2: back('back edge, left bend'),
    E3: back('back edge, left of middle'),
    E4: back('back edge, right of middle'),
    E5: back('back edge, right bend'),
    E6: back('right back corner'),
    N: { name: 'front edge', where: 'where it is furthest from the string' },
    H1: { name: 'hinge line at the front edge', where: 'on the line you chose' },
    H2: { name: 'hinge line at the back edge', where: 'on the line you chose' },
  },
  readings: {
    ...Object.fromEntries(OUTLINE.flatMap((point) => [station(point), offset(point)])),
    hollow: curve,
    belly: curve,
    thickness: { title: 'Thickness', how: 'Of the foam or the space for it, nobody sitting on it.' },
    radius: {
      title: 'Radius of the corners',
      how: 'The usual corner: from where the curve begins to where the edges would meet.',
    },
    'bevel-left': bevel('E2'),
    'bevel-right': bevel('E5'),
  },
  mistakes: {
    'L-R': 'Stand at the front edge and look at the cushion’s place: L is at your left.',
    'L-E1': 'Measure the boat, not the old cushion: foam and covers shrink.',
    'E1-E6': 'Straight across behind, from corner to corner.',
    'along-E1': 'Square to the string, with a carpenter’s square or a book. Beyond L it counts as minus.',
    'back-whole': 'Lay the tape along the back edge itself, round every point.',
  },
  heights: 'Square to the seat.',
  shots: {
    'photo-above': { title: 'From above', how: 'L, R, E1 and E6 in the picture, a tape or card on the seat.' },
    'photo-edge': { title: 'Along the back edge', how: 'From one end, so that a bevel and what it leans on show.' },
  },
  questions: {
    what: {
      title: 'What is it?',
      help: 'A bolster is a cushion that stands or hangs; measure it lying down.',
      choices: { cushion: 'A cushion', bolster: 'A bolster', carpet: 'A carpet' },
    },
    line: { ...line, help: 'The edge of the seat is not the edge of the cushion if it hangs over.' },
    outline: {
      title: 'How do you take the outline?',
      help: 'Two tapes where both ends of the string can be reached. A square and one tape where not.',
      choices: { 'two-tapes': 'By a tape from either end', 'station-offset': 'Along the string and square off it' },
    },
    front: {
      title: 'Is the front edge straight?',
      help: 'Look along the string.',
      choices: { straight: 'Straight', hollow: 'Hollow: behind the string', belly: 'Belly: in front of it' },
    },
    hinge: {
      title: 'Does it fold?',
      help: 'A hinge is a seam with nothing stiff in it, from the front edge to the back.',
      choices: { none: 'No', one: 'Along one line' },
    },
    corners: {
      title: 'Its corners?',
      help: 'Piping goes round a curve better than round a point.',
      choices: { square: 'Square', rounded: 'Rounded' },
    },
    bevel: {
      title: 'A bevel behind?',
      help: 'Look at the back edge from its end. Against a hull side the lower edge lies further in.',
      choices: { square: 'Square', undercut: 'Lower edge further in', flared: 'Lower edge further out' },
    },
    fastening: {
      title: 'What keeps it in place?',
      help: 'Loose, it goes overboard first.',
      choices: { loose: 'Nothing', 'hook-and-loop': 'Hook-and-loop', snaps: 'Snaps', straps: 'Straps' },
    },
    drain: {
      title: 'Drain holes?',
      help: 'Rain and spray must run out of it, or off the deck under it.',
      choices: { wanted: 'Wanted', none: 'None' },
    },
    'in-the-way': { ...inTheWay, help: 'Hatches, rings, seat posts, drains, a pedestal.' },
    fabric: {
      title: 'Which cloth?',
      help: 'Colour, and what else is known of it, in words.',
      choices: {
        'as-before': 'As the old one',
        coated: 'Coated, wiped dry',
        woven: 'Woven, lets air through',
        'shop-decides': 'The shop decides',
      },
    },
  },
  runs: {
    back: {
      title: 'Snaps along the back edge',
      how: 'From E1 to E6. Hook once at E1 and read every snap, or tape gap to gap.',
    },
  },
};
