import { bag, berth, cloth, cord, dockSide, fits, fitsFrom, inTheWay, line, rain, tow, vents } from './common.ts';
import type { PieceWords, PointWords } from './piece-words.ts';

const sheer = (name: string): PointWords => ({ name, where: 'outer edge of the gunwale or rub rail' });
const holdsUp = {
  thing: 'Something of the boat',
  pole: 'A support pole',
  nothing: 'Nothing',
};

export const mooringCover: PieceWords = {
  about:
    'Round the gunwale in seven points, their heights, and what the cover lies on. Take your time: it is the whole boat.',
  points: {
    N: { name: 'stem head', where: 'foremost point of the gunwale or rub rail, on the centreline' },
    P1: sheer('port bow, a third of the way to the windshield'),
    P2: sheer('port, just aft of the windshield'),
    P3: sheer('port corner of the transom'),
    S3: sheer('starboard corner of the transom'),
    S2: sheer('starboard, just aft of the windshield'),
    S1: sheer('starboard bow, opposite P1'),
    H: { name: 'highest thing amidships', where: 'top of windshield, console or pole, on the centreline' },
    E: { name: 'what holds it up aft', where: 'highest point of it, or tip of the pole' },
    F: { name: 'what holds it up forward', where: 'highest point of it, or tip of the pole' },
  },
  readings: {
    'over-foredeck': {
      title: 'Over the foredeck, P1 to S1',
      how: 'Lay the tape on the deck from P1 across to S1, over everything the cover will lie on.',
    },
    skirt: {
      title: 'How far the cover hangs down',
      how: 'From the outer edge of the gunwale down the hull to where the hem should be.',
    },
    'h-F': {
      title: 'Height of F over the string N–H',
      how: 'Stretch a string from N to H, taut. Square from the string up to F (what holds it up forward).',
    },
    'edge-whole': {
      title: 'Whole edge, round the bow',
      how: 'Lay the tape along the gunwale from P3 round the bow to S3.',
    },
    'straps-whole': {
      title: 'Whole port edge',
      how: 'Lay the tape along the gunwale from N to P3.',
    },
  },
  mistakes: {
    'N-P1': 'Put a cross of tape at all seven points first, and hook on the same cross each time.',
    'N-P2': 'Straight and clear of the windshield, not along the curve of the side.',
    'P2-S3': 'A diagonal: across the cockpit to the other corner of the transom.',
    'S2-P3': 'A diagonal: across the cockpit to the other corner of the transom.',
    'H-P3': 'Through the air, straight. A tape that lies on a seat is long.',
    'over-foredeck': 'Over hatches and fittings, as the cloth will go.',
  },
  heights:
    'Straight down to the same level for all seven: level ground under a trailer, or a painted line of the boat. Not to the water: the boat heels under you.',
  shots: {
    'photo-bow': { title: 'The bow', how: 'From ahead: N, P1 and S1, rail, anchor and lights with them.' },
    'photo-port': {
      title: 'Port side',
      how: 'P2 and P3 in the picture, everything that sticks up, a tape or card beside one.',
    },
    'photo-stern': { title: 'The stern', how: 'From astern: P3, S3 and the engine as it stands under the cover.' },
    'photo-starboard': {
      title: 'Starboard side',
      how: 'S2 and S3 in the picture, everything that sticks up, a tape or card beside one.',
    },
  },
  questions: {
    line,
    berth,
    datum: {
      title: 'Where do you take heights from?',
      help: 'One level for all of them. Afloat, a line painted on the boat; the water is no level.',
      choices: { ground: 'Level ground, boat on a trailer or lift', waterline: 'A painted line along the boat' },
    },
    'aft-top': {
      title: 'What holds it up aft of the highest thing?',
      help: 'Engine, seat, arch. For a pole, stand it, or a stick as long, where it will stand.',
      choices: holdsUp,
    },
    'fore-top': {
      title: 'What holds it up forward?',
      help: 'Hatch, rail, winch. Without anything water may stand on the foredeck.',
      choices: holdsUp,
    },
    tow,
    held: {
      title: 'What holds the hem?',
      help: 'On the road straps hold; a cord alone works loose.',
      choices: {
        cord: 'A cord in the hem',
        'cord-and-straps': 'A cord and straps',
        snaps: 'Fasteners on the boat',
      },
    },
    rub: {
      title: 'Where will it rub?',
      help: 'Corners of the windshield, cleats, antenna feet. The shop sets patches there.',
      choices: {
        nowhere: 'Nowhere that you see',
        windshield: 'At the windshield',
        corners: 'At the corners of the hull',
        several: 'In several places: say where',
      },
    },
    'in-the-way': inTheWay,
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
      title: 'Fasteners along the gunwale',
      how: 'From P3 round the bow to S3. Hook once at P3 and read every fastener, or tape gap to gap.',
    },
    straps: {
      title: 'Straps',
      how: 'From N along the port gunwale to each place a strap goes down. Starboard is opposite.',
    },
  },
};
