/**
 * What a person at the boat reads for each piece. name: the point in a few words. where: from where exactly.
 * mistakes: the usual slip, by step, where there is one.
 */
interface PointWords {
  name: string;
  where: string;
}

interface PieceWords {
  about: string;
  points: Record<string, PointWords>;
  mistakes: Record<string, string>;
  heights: string;
  shots: Record<string, { title: string; how: string }>;
  questions: Record<string, { title: string; help: string; choices: Record<string, string> }>;
  runs: Record<string, { title: string; how: string }>;
}

const berth = {
  title: 'Where does the boat live?',
  help: 'A boat tied up in the water needs its cleats free.',
  choices: { water: 'In the water', lift: 'On a lift', trailer: 'On a trailer' },
};

const tensionShade: PieceWords = {
  about: 'Two mounts on the hardtop, two poles in rod holders. Best measured with the poles standing.',
  points: {
    A: { name: 'port mount', where: 'centre of the eye' },
    B: { name: 'starboard mount', where: 'centre of the eye' },
    C: { name: 'port pole', where: 'top of the pole, where the cord leaves it' },
    D: { name: 'starboard pole', where: 'top of the pole, where the cord leaves it' },
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
      help: 'The drawing assumes the poles stand forward of the hardtop. Over the cockpit they stand aft.',
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
    speed: {
      title: 'When is it used?',
      help: 'Speed adds to the wind.',
      choices: { 'at-rest': 'At rest only', slow: 'Under way, slowly', faster: 'Faster than that' },
    },
  },
  runs: {},
};

const bowEdge = (side: string): PointWords => ({ name: side, where: 'on the line you chose' });

const openBow: PieceWords = {
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
    G: { name: 'top of the cover on the glass', where: 'on the centreline' },
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
    line: {
      title: 'Which line do you measure to?',
      help: 'The same line all the way round. “The edge” alone is a slip in waiting.',
      choices: {
        'fastener-line': 'Line of the fasteners',
        'finished-edge': 'Finished edge of the cloth',
        'boat-edge': 'Edge of the boat',
      },
    },
    glass: {
      title: 'Where does the cover meet the windshield?',
      help: 'Carried up the glass it sheds water.',
      choices: { 'at-foot': 'At the foot', 'up-glass': 'Up the glass' },
    },
    berth,
    cleats: {
      title: 'The cleats and the cover?',
      help: 'A cleat that holds the boat must stay free.',
      choices: { outside: 'Outside the cover', 'cut-outs': 'Cut-outs wanted', 'under-cover': 'Under the cover' },
    },
    rain: {
      title: 'In rain, does it stay on?',
      help: 'A cover that stays on needs cloth that breathes and pitch enough that no water stands.',
      choices: { 'stays-on': 'Stays on', 'taken-off': 'Taken off' },
    },
  },
  runs: {
    edge: {
      title: 'Fasteners along the edge',
      how: 'From P1 round the bow to S1. Hook once at P1 and read every fastener, or tape gap to gap.',
    },
  },
};

export const guide = {
  pieces: { 'tension-shade': tensionShade, 'open-bow': openBow } as Record<string, PieceWords | undefined>,
  hook: (label: string, name: string, where: string) => `Hook on ${label} (${name}, ${where}).`,
  taut: (label: string, name: string, where: string) => `Taut to ${label} (${name}, ${where}).`,
  girth: (from: string, to: string) => `Lay the tape on the edge from ${from} to ${to}.`,
  height: (label: string, name: string, where: string) => `Height of ${label} (${name}, ${where}).`,
  plainTaut: (from: string, to: string) => `Hook on ${from}. Taut to ${to}.`,
  plainOther: (kind: string, points: string) => `${kind}: ${points}.`,
  readingTitle: {
    between: (from: string, to: string) => `${from}–${to}`,
    height: (label: string) => `Height of ${label}`,
    along: (from: string, to: string) => `Along the edge, ${from} to ${to}`,
    fastener: (number: number) => `Fastener ${number}`,
    other: (kind: string, points: string) => `${kind} ${points}`,
  },
  couldNotTell: 'Could not tell',
  noneHere: 'None here',
};
