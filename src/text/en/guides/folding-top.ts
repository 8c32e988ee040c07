import { bag, berth, cloth, inTheWay, speed, tow } from './common.ts';
import type { PieceWords, PointWords } from './piece-words.ts';

const BOWS = ['forward bow', 'second bow', 'third bow', 'fourth bow'];
const hips: Record<string, PointWords> = Object.fromEntries(
  BOWS.flatMap((bow, i) => [
    [`P${i + 1}`, { name: `${bow}, port`, where: 'the mark' }],
    [`C${i + 1}`, { name: `${bow}, middle`, where: 'top of the tube' }],
    [`S${i + 1}`, { name: `${bow}, starboard`, where: 'the mark' }],
  ]),
);

const crowns = Object.fromEntries(
  BOWS.map((bow, i): [string, { title: string; how: string }] => [
    `crown-${i + 1}`,
    {
      title: `Crown of the ${bow}`,
      how: `A taut string from P${i + 1} to S${i + 1}. From the string square up to C${i + 1}.`,
    },
  ]),
);

const rises = Object.fromEntries(
  [2, 3].flatMap((bow) =>
    (['P', 'S'] as const).map((side): [string, { title: string; how: string }] => [
      `rise-${side}${bow}`,
      {
        title: `Rise of ${side}${bow}`,
        how: `The string from ${side}${bow - 1} to ${side}${bow + 1}. From it square up to ${side}${bow}.`,
      },
    ]),
  ),
);

const strap = (title: string, from: string): { title: string; how: string } => ({
  title,
  how: `From ${from} to its eye on the boat, the strap tight.`,
});

export const foldingTop: PieceWords = {
  about: 'The frame up, its straps tight. Each bow across, then from bow to bow along both sides and the middle.',
  points: hips,
  readings: {
    ...crowns,
    ...rises,
    'strap-forward-port': strap('Forward strap, port', 'the forward bow'),
    'strap-forward-starboard': strap('Forward strap, starboard', 'the forward bow'),
    'strap-aft-port': strap('Aft strap, port', 'the last bow'),
    'strap-aft-starboard': strap('Aft strap, starboard', 'the last bow'),
    'fold-room': {
      title: 'Room for the folded top',
      how: 'Fold the frame. From the bundle of bows to what it would touch first.',
    },
  },
  mistakes: {
    'P1-S1': 'Mark every bow first: port, middle, starboard. The same side of the tube for all of them.',
    'P1-C1': 'Taut under the bow, straight from mark to mark. Not along the tube.',
    'crown-1': 'Square to the string, not along the lean of the bow.',
    'h-P1': 'From one deck or sole for all of them: that is the headroom too.',
    'P1-P2': 'Nobody leans on the frame while you tape.',
    'P1-P3': 'Keep this string: what the bow between stands over it comes next.',
  },
  heights: 'Square to the deck or sole you stand on, the same for every bow.',
  shots: {
    'photo-side': { title: 'The frame from the side', how: 'From the dock, all bows and the mounts in one picture.' },
    'photo-ahead': { title: 'The frame from ahead', how: 'C1 and S1 in the picture, a tape or card on the bow.' },
    'photo-aft': { title: 'The frame from aft', how: 'C2 and S2 in the picture, the straps and their eyes with them.' },
  },
  questions: {
    line: {
      title: 'Which line do you measure to?',
      help: 'The same on every bow. The inside of a tube for its outside is an inch lost.',
      choices: {
        'finished-edge': 'Marks where the cloth’s edge will lie',
        'tube-outside': 'Outside of the tube',
        'tube-centre': 'Centre of the tube',
      },
    },
    bows: {
      title: 'How many bows carry the cloth?',
      help: 'Counted from forward. A bow that only braces the others does not count.',
      choices: { two: 'Two', three: 'Three', four: 'Four' },
    },
    straps: {
      title: 'Which straps hold it?',
      help: 'Webbing with a slide. Struts and braces are no straps.',
      choices: {
        four: 'A pair forward and a pair aft',
        'forward-pair': 'A pair forward',
        'aft-pair': 'A pair aft',
        none: 'None',
      },
    },
    folds: {
      title: 'Which way does it fold?',
      help: 'The folded cloth needs room beside the bows.',
      choices: { aft: 'Aft', forward: 'Forward', 'stays-up': 'It stays up' },
    },
    headroom: {
      title: 'Is the height right as the frame stands?',
      help: 'How much higher or lower, in words.',
      choices: { 'as-it-stands': 'As it stands', higher: 'Higher', lower: 'Lower' },
    },
    sleeves: {
      title: 'How does the cloth hold on to the bows?',
      help: 'Zipped sleeves come off with the frame standing.',
      choices: { zipped: 'Zipped sleeves', 'slid-on': 'Sleeves slid on', 'shop-decides': 'The shop decides' },
    },
    hangs: {
      title: 'Do curtains or panels hang from it?',
      help: 'They pull on its edges and need zips or tracks there.',
      choices: { nothing: 'Nothing', 'panels-now': 'Yes, now', 'panels-later': 'Perhaps later' },
    },
    'in-the-way': inTheWay,
    berth,
    tow,
    speed,
    cloth,
    bag: { ...bag, title: 'A boot to fold it into?' },
  },
  runs: {},
};
