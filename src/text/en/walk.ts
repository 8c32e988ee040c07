import type { PointRole, ReadingKind, Side } from '../../core/job/index.ts';

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
const tapes = (count: number): string => (count === 1 ? '1 tape' : `${count} tapes`);

/** Tables for serial work, and what a person changes about a piece while it is measured. */
export const walk = {
  /** To whoever reads again without what was read. */
  again: {
    please: 'Please look at the tape again and type what it says.',
    nothingToDo: (names: readonly string[]) => `${listed(names)}: nothing to do here.`,
    pleaseAt: (names: readonly string[]) => `${listed(names)}: please look at the tape again and type what it says.`,
    firstAt: (names: readonly string[]) => `${listed(names)}: please measure it and type what the tape says.`,
    swapped: (point: string) =>
      `Several of these are at ${point}. First see whether its mark and another one have been swapped.`,
    onceMore: (names: readonly string[]) => `${names[0] ?? ''}: one more look, please.`,
    toShop: (names: readonly string[]) => `${names[0] ?? ''}: the looks differ. The shop will ask you about it.`,
    left: (looks: number) => (looks === 1 ? 'the last one' : `${looks} to go`),
    heading: 'To be read once more',
    due: (looks: number) =>
      looks === 1
        ? 'One measurement should be read once more. You can send without it; the shop sees that, and may ask you.'
        : `${looks} measurements should be read once more. You can send without that; the shop sees it, and may ask you.`,
    begin: 'Read them once more',
    sendAll: (looks: number) =>
      looks === 1
        ? 'One measurement has not been read once more yet. You can send it all the same; the shop sees it.'
        : `${looks} measurements have not been read once more yet. You can send it all the same; the shop sees it.`,
  },
  /** After undo: what it took back. */
  takenBack: {
    said: (what: string) => `Taken back: ${what}`,
    last: 'what you did last',
    reading: (name: string, value: string) => (value === '' ? name : `${name}, ${value}`),
    asked: (name: string) => `asking for ${name}`,
    noValue: (name: string) => `${name}, no value`,
    strike: (name: string) => `${name}, struck out`,
    answer: (title: string, choice: string) => (choice === '' ? title : `${title} ${choice}`),
    photo: 'the photo',
    mark: (label: string) => `${label} on the photo`,
    line: 'the line on the photo',
    noPhoto: (title: string) => `${title}, no photo`,
    edge: (title: string) => `${title}, your last answer`,
    fastener: (title: string) => `${title}, the last fastener`,
    pointOff: (label: string) => `taking ${label} off`,
    accepted: 'that it is right as it is',
  },
  table: {
    heading: 'Tables',
    help: 'One hook, many points: a whole column in one go.',
    wholeColumn: 'Read the whole column',
    onlyThis: 'Only this',
    marks: (labels: readonly string[]) => `Tapes from ${listed(labels)}`,
    stations: (labels: readonly string[]) =>
      labels.length === 2 ? `Along the string ${labels.join('–')}` : `Over the plane ${labels.join(', ')}`,
    gaps: (from: string, to: string) => `Gaps from ${from} to ${to}`,
    running: (from: string, to: string) => `All from ${from}, as far as ${to}`,
    progress: (done: number, all: number) => `${done} of ${all}`,
    point: 'Point',
    columns: {
      gap: 'Gap before it',
      along: 'Station',
      out: 'Offset',
      height: 'Height',
      girth: 'Girth',
      running: (from: string) => `From ${from}`,
    },
    toward: (column: string, side: string) => `${column} to ${side}`,
    ways: { down: 'read downwards', up: 'read upwards' },
    cell: {
      open: 'open',
      reading: 'being read',
      again: 'read again',
      'none-here': 'none here',
      'could-not': 'could not',
      stop: 'Stop',
      doubt: 'Look again',
      moved: 'before the mark was moved',
      nothing: 'nothing asked',
    },
    gone: 'This table is not in the job any more.',
  },
  moved: {
    before: (mark: string) => `Read before ${mark} was moved. It stays as it was read; nobody can read it again there.`,
    readBefore: (mark: string) => `read before ${mark} was moved`,
    fromNew: (mark: string) => `Ask for it from ${mark}`,
    stands: (old: string, now: string) => `${old} was moved; ${now} stands in its place.`,
  },
  change: {
    heading: 'Change the piece',
    nothingAsked: 'Nothing is asked yet. Begin with the points, then what is to be read between them.',
    points: 'Change the points',
    reading: 'Add a reading',
    edge: 'Add an edge',
    picture: 'Add a picture',
    aside: 'Set aside, not lost',
    asideNone: (count: number) =>
      count === 1
        ? 'One reading that nobody had taken is not asked any more.'
        : `${count} readings that nobody had taken are not asked any more.`,
    why: (reason: string, who: string, when: string) => `${reason} (${who}, ${when})`,
    noGuide: (piece: string) =>
      `No guide knows “${piece}”: nobody asks for the pictures, fasteners and answers you leave out.`,
  },
  points: {
    heading: 'Points',
    marks: 'Marks',
    others: 'Other points',
    change: (label: string) => `Change ${label}`,
    after: (label: string) => `Add a point after ${label}`,
    earlier: 'One place earlier',
    later: 'One place later',
    takeOff: (label: string) => `Take ${label} off`,
    wasMoved: (label: string) => `${label} was moved`,
    movedAsk: (label: string, next: string) =>
      `What was read at ${label} stays. What is still open is asked from a new mark instead: ${next}. Write ${next} on it.`,
    movedSure: 'Yes, it was moved',
    takeOffWhy: (label: string, count: number) =>
      `Why is ${label} taken off? ${count === 1 ? 'One reading there is' : `${count} readings there are`} set aside with it, not lost.`,
    takeOffReasons: ['This boat has no such point', 'The piece does not need it', 'It was added by mistake'],
    mustStay: 'An edge needs two points, so this one stays.',
    reasons: {
      divided: 'Another point lies between',
      order: 'The points are in another order',
      moved: 'The mark was moved',
      off: 'Taken off before anything was read there',
    },
    said: {
      added: (label: string, asked: number) =>
        asked === 0 ? `${label} is in.` : `${label} is in. ${tapes(asked)} more to read.`,
      off: (label: string) => `${label} is off.`,
      ordered: (labels: string) => `The edge now runs ${labels}.`,
      moved: (label: string, now: string, to: readonly string[]) =>
        to.length === 0 ? `${now} stands for ${label}.` : `${now} stands for ${label}. Tape it to ${listed(to)} first.`,
    },
    firstTape: 'To the first of them',
    own: 'Add a point of your own',
    role: 'What sort of point?',
    roles: {
      mark: 'A mark to measure from',
      corner: 'A corner of the cloth',
      edge: 'A point on an edge',
      fastener: 'A fastener',
      mount: 'A mount or eye',
      obstruction: 'Something in the way',
    } satisfies Record<PointRole, string>,
    label: 'Short name',
    taken: 'Another point has this name.',
    note: 'What it is, and from where exactly',
    sides: 'Where does it lie? It tells a shape from its mirror image.',
    sideNames: {
      port: 'Port',
      starboard: 'Starboard',
      centre: 'Centreline',
      forward: 'Forward',
      aft: 'Aft',
      above: 'Above',
      below: 'Below',
    } satisfies Record<Side, string>,
    add: 'Add it',
  },
  own: {
    kind: 'What is read?',
    kinds: {
      straight: 'Straight, between two points',
      height: 'Height over a string or a plane',
      along: 'Station along a string',
      out: 'Offset, square from a string',
      girth: 'Girth, tape laid on the surface',
      size: 'A plain size',
    } satisfies Partial<Record<ReadingKind, string>>,
    from: 'Hook on',
    to: 'Read at',
    at: 'Of which point?',
    stringFrom: 'String from',
    stringTo: 'String to',
    noString: 'Over the one plane all heights are taken from',
    toward: 'To which side?',
    of: 'Which size?',
    anywhere: 'Of the piece itself',
    what: 'Of what, in a few words',
    ask: 'Read it now',
    tooFew: 'Add two points first.',
    edgePoints: 'Tap its points in order, from one end to the other.',
    edgeName: 'Name of the edge',
    picturePoints: 'Tap the points to be marked on it.',
    pictureName: 'What it shows',
    takePicture: 'Take it now',
    nth: (label: string, place: number) => `${label}, number ${place}`,
  },
  free: {
    about: 'A piece no guide knows: your own points, readings, edges and pictures.',
    name: 'What is it called?',
    flat: 'Does it lie flat?',
    flats: { yes: 'Yes, in one plane', no: 'No, it stands or bends' },
    begin: 'Begin',
  },
  shared: {
    question: (piece: string) => `Are some points of it on the boat already, from ${piece}?`,
    help: 'A mark that serves two pieces is put on once, and what is read between two of them counts for both.',
    none: 'No, all are new',
    some: 'Yes, some are the same',
    fresh: 'a new one',
    more: 'More points',
    begin: 'Begin',
    option: (label: string, what: string) => (what === '' ? label : `${label}, ${what}`),
  },
};
