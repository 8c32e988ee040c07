const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** For the owner of a boat who measures for the first time, alone with a tape: everyday words, one thing at a time. */
export const owner = {
  home: {
    asks: (shop: string) => `${shop} asks you to measure.`,
    left: (minutes: number) => `About ${count(minutes, 'minute', 'minutes')} left.`,
    stopping: 'You may stop at any time. Everything is kept on this phone, and you come back to the same place.',
    allDone: 'Everything is there.',
    again: (looks: number) => (looks === 1 ? 'Read one measurement once more' : `Read ${looks} measurements once more`),
    start: 'Start',
    goOn: (what: string) => `Go on: ${what}`,
    check: 'See what is left to settle',
    send: 'Send to the shop',
    lastSent: (when: string) => `Last copy made: ${when}`,
    before: 'Before you start',
    practice: 'Two-minute practice',
    practised: 'done',
    marks: 'Your numbered marks',
    steps: (piece: string) => `All steps: ${piece}`,
    more: 'More about this job',
    asked: (steps: number) =>
      steps === 1 ? 'The shop asks you about 1 step again.' : `The shop asks you about ${steps} steps again.`,
  },
  before: {
    heading: 'Before you start',
    page: (at: number, of: number) => `${at} of ${of}`,
    next: 'Next',
    back: 'Back',
    toPractice: 'Try the tape on a sheet of paper first',
    toWork: 'Start measuring',
    done: 'Done',
    who: {
      title: 'Who asks',
      shop: (shop: string) =>
        `${shop} will make something for your boat and needs its measures. You are led through it, one step at a time.`,
      nobody:
        'A shop will make something for your boat from your measures. You are led through it, one step at a time.',
      reach: 'Stuck? Reach them:',
      noContact: 'Stuck? Call or write to the shop that gave you this.',
      note: (note: string) => `They say: “${note}”`,
    },
    need: {
      title: 'What you need',
      things: [
        'A tape measure, as long as the boat part you measure. Steel is best.',
        'Masking tape and a pen, for numbered marks.',
        'This phone, charged.',
        'A helper for the other end. Alone it works too: hang the hook on something, or stick the end down with masking tape and pull gently.',
        'A calm, dry day, the boat tied up well.',
      ],
      alt: 'A tape measure, a bit of masking tape with the number 1 and a cross on it, and a pen.',
    },
    time: {
      title: 'How long it takes',
      about: (minutes: number) => `About ${count(minutes, 'minute', 'minutes')}. You may stop and come back.`,
      how: (parts: string) => `Worked out from ${parts}. A guess by habit, not a promise.`,
      readings: (n: number) => `${count(n, 'measurement', 'measurements')} at 2 minutes each`,
      shots: (n: number) => `${count(n, 'photo', 'photos')} at 2`,
      questions: (n: number) => `${count(n, 'question', 'questions')} at half a minute`,
      runs: (n: number) => `${count(n, 'row of fasteners', 'rows of fasteners')} at 5`,
      looks: (n: number) => `${count(n, 'measurement', 'measurements')} once more at 1 1/2`,
      marks: '10 for the marks',
      and: (parts: readonly string[]) =>
        parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`,
    },
    careful: {
      title: 'Be careful',
      always: 'Nothing is worth a fall. What you cannot reach safely, leave out: “No value” is a good answer.',
      water: 'Do not lean out over the water. Measure from inside the boat or from the dock.',
      noDrilling: 'Do not drill or screw anything for this. You only measure.',
    },
    after: {
      title: 'What happens with it',
      use: 'The shop looks at every number and photo, and may ask you about a few again. Then it cuts the cloth from them.',
      check:
        'The app looks at once whether your numbers fit each other. If one does not, it asks you to read it again. That is usual, and no fault of yours.',
      privacy:
        'Your name, numbers and photos stay on this phone until you send them. Then the shop has them. Nobody else gets them from this app.',
    },
  },
  practice: {
    heading: 'Two-minute practice',
    intro: 'Take a sheet of printer paper. Its size is known, so you see at once how your tape and your eye do.',
    which: 'Which paper do you have?',
    papers: { letter: 'Letter, 8 1/2 × 11 in', a4: 'A4, 210 × 297 mm' },
    skip: 'Skip the practice',
    ask: { long: 'Measure the long side', short: 'Measure the short side', diagonal: 'Measure from corner to corner' },
    how: {
      long: 'Lay the sheet flat. Hook on one end, read at the other.',
      short: 'The other way. Hook on one end, read at the other.',
      diagonal: 'From one corner across to the corner opposite. Tape straight.',
    },
    drawing: {
      long: 'A sheet of paper; the tape lies along its long side.',
      short: 'A sheet of paper; the tape lies along its short side.',
      diagonal: 'A sheet of paper; the tape lies from one corner to the corner opposite.',
    },
    next: 'Next',
    place: (at: number, of: number) => `${at} of ${of}`,
    size: (length: string) => `The sheet is ${length} there.`,
    yours: (length: string) => `You read ${length}.`,
    off: (length: string) => `That is ${length} apart.`,
    good: 'Spot on.',
    close: (length: string) => `Good: within ${length}. Paper itself is no better than that.`,
    slips: {
      'started-at-one':
        'It looks as if you started at the 1, or a little way up the tape. Start at the very end, with the hook.',
      'other-side': 'That is another side of the sheet. Look which way the orange line goes.',
      unit: 'The digits look right, in another unit. Look at the unit beside the number.',
      hook: 'Close, but not yet. Look at the hook: it must sit on the edge, neither pushed under nor hanging beyond.',
      far: 'Not there yet. The usual reasons: the hook hung somewhere else, the number was read from the wrong side, or the fraction was counted the wrong way.',
    },
    again: 'Read it again',
    leave: 'Leave it so',
    done: 'Practice done',
    spread: (length: string) => `Your readings were within ${length} of the sheet.`,
    asUsual:
      'That is as good as most people. Three readings say little, so nothing changes: you are trusted as anybody with a first tape.',
    wider:
      'That is wider than usual, so the app gives your numbers a little more room. It may ask you to read some twice. That is all.',
    slipLeft:
      'One of them is off, and now you know what such a slip looks like. It happens to everybody; the app asks you to read again where it sees one.',
    onceMore: 'Practise once more',
    toWork: 'Start measuring',
    toHome: 'To the overview',
  },
  /** The looks after the round. */
  again: {
    second: 'Once more',
    secondHow: [
      'That was the first round. Now the important ones once more, where it can be done from the other end.',
      'Not because you did it wrong: everybody misreads a tape now and then, and two looks show it before the cloth is cut.',
      'You do not see what you read before, so that each look is a fresh one. Read the tape as if for the first time.',
    ],
    third: 'One last look',
    thirdHow: [
      'Nearly there. Where two looks are not quite alike, a third one settles it.',
      'That happens to everybody. Take your time, and read the tape as if for the first time.',
    ],
    left: (looks: number) =>
      looks === 1 ? 'One measurement. It takes a minute or two.' : `${looks} measurements, a minute or two each.`,
    begin: 'Go on',
    later: 'Later',
    done: 'Read once more',
    nothing: 'Everything that matters has been read once more. Thank you.',
    goOn: 'Go on',
    otherEnd: 'Once more, from the other end.',
    fresh: 'Once more, afresh.',
  },
  look: {
    where: 'Where',
    straight: (from: string, to: string) =>
      `Put the hook of the tape on ${from}. Pull it tight and straight to ${to}. Read the number there.`,
    girth: (from: string, to: string) =>
      `Hook at ${from}. Lay the tape on the edge, through every point, to ${to}. Read the number there.`,
    height: (spot: string) =>
      `Measure straight up, square to the deck, to ${spot}. Start from the same line for every height: the deck where it is level, or a string stretched over it.`,
    type: 'I have it: type the number',
    run: 'I am there: go on',
    camera: 'I am ready: the camera',
    again: 'Show me how again',
    hint: (text: string) => `Mind: ${text}`,
  },
  frame: {
    heading: 'What should be in the picture',
    alt: (labels: string) =>
      labels === ''
        ? 'The frame of a photo, with room all round, and a sheet of paper beside.'
        : `The frame of a photo: ${labels} inside it, with room all round, and a sheet of paper beside.`,
    all: (labels: string) => `${labels} inside the frame, with a hand’s width of room all round.`,
    plain: 'The whole thing inside the frame, with a hand’s width of room all round.',
    paper: 'Lay a sheet of paper flat beside one of them. Its size is known, so the shop can judge the rest.',
    light: 'The sun behind you. Hold the phone still and level.',
    numbers: 'Your numbers must be readable in the picture.',
    after: 'After the picture you tap on it where each number is.',
  },
  marks: {
    heading: 'Your numbered marks',
    offer: 'First, a mark on each point',
    why: 'A bit of masking tape with its name on each point: then every measurement begins and ends at the very same place, and your photos show which is which.',
    begin: 'Put up the marks',
    skip: (step: string) => `Without marks, on to ${step}`,
    goOn: 'On with measuring',
    how: 'Stick a bit of masking tape on each point below. Write its name on it and draw a small cross. The cross is the point: hook there each time.',
    keep: 'Leave them on until the shop says it has everything.',
    list: 'Tick each one when it sticks',
    where: (label: string) => `Where ${label} goes`,
    stuck: (done: number, all: number) => `${done} of ${all} stuck on`,
    photo: 'Now a photo of them',
    photoHow: 'One photo or several, so that each number can be read. Then tap the place of each number on the photo.',
    noPiece: 'Nothing is to be measured yet.',
  },
};
