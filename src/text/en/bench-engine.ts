/** What the bench says of the shape as it was worked out, how sure it is, and what may be wrong. */
export const benchEngine = {
  plan: {
    adjusted: 'Drawn from the adjusted shape: a picture, not a cutting pattern.',
    without: (names: string) =>
      `Drawn from the adjusted shape without ${names}, which does not fit: a picture, not a cutting pattern.`,
    bent: 'NOT TO BE USED: drawn from a shape that contradicting readings bend, and nobody knows which is wrong.',
    ovals: (factor: number) =>
      factor === 1
        ? 'The ovals show how sure each point is (95 %), to scale.'
        : `The ovals show how sure each point is (95 %), drawn ${factor} times larger.`,
    floats: (labels: string) => `Dashed, not fixed yet: ${labels}.`,
  },
  sure: {
    again: 'Being worked out again…',
    nothing: 'Nothing is measured yet.',
    solved: 'Worked out: the readings fix every point.',
    open: (names: string) => `Worked out from what is there. Still open: ${names}.`,
    floating: (count: number, labels: string) =>
      `Not fixed yet: ${labels}. ${count === 1 ? 'It needs' : 'Each needs'} another tape.`,
    singular: (labels: string) =>
      `Not fixed: ${labels}. There are enough readings, but they run in directions that let it move.`,
    ways: (label: string, ways: number) => (ways === 1 ? `${label} (one way)` : `${label} (${ways} ways)`),
    shapes: (labels: string) => `Two shapes fit these readings: ${labels} could lie on either side.`,
    failed: 'The shape could not be worked out: the readings lie too far apart. Settle what stands in the way first.',
    mirrored: 'Nothing says whether the shape is this one or its mirror image: the drawing follows the guide.',
    fits: 'Everything fits within what tapes do.',
    doubted: 'Something does not fit: more than tapes explain.',
    fitsWithout: (names: string) => `Without ${names}, everything else fits within what tapes do.`,
    bent: 'It bends the shape, and nobody knows which reading is wrong: no place and no ± of it is given until that is settled.',
    notUsed: 'not to be used',
    cannotTell: 'Cannot tell whether it fits: no reading to spare, so none checks another.',
    spare: (count: number) => (count === 1 ? '1 reading to spare' : `${count} readings to spare`),
    least: (label: string, within: string) =>
      `Least sure: ${label}, within ${within} of its neighbours and marks, 19 times in 20.`,
    caption: (without: string) =>
      `Places of the points and how sure they are${without === '' ? '' : `, worked out without ${without}`}`,
    frame: (axes: readonly ('x' | 'y' | 'z')[]) =>
      `${axes.map((axis) => ({ x: 'x forward', y: 'y to port', z: 'z up' })[axis]).join(', ')}, from the guide’s own origin.`,
    point: 'Point',
    x: 'x',
    y: 'y',
    z: 'z',
    within: 'Sure within',
    floats: 'not fixed',
    known: 'given',
    unseen: (reading: string, size: string, shift: string) =>
      `A slip in ${reading} of up to ${size} could move it ${shift} unseen.`,
    unseenAny: (readings: string) => `Nothing checks ${readings}: a slip there would move it unseen.`,
    unseenAll: (readings: string) => `Nothing checks ${readings}: a slip there would move every point unseen.`,
    place: 'Place',
    numbers: 'Numbers for the whole piece',
  },
  terms: {
    freedom: ['Spare readings', 'Readings beyond those that fix the shape (degrees of freedom).'],
    unitError: ['Unit error', 'How the misfits compare with what the tapes should do: 1 is as expected.'],
    global: ['Global test', 'Whether all misfits together are more than chance.'],
    residual: ['Residual', 'What all the readings together put here, less what was read.'],
    redundancy: [
      'Redundancy',
      'The share of a slip here that shows as misfit here: 0 means nothing checks it, 1 means all of it shows.',
    ],
    standardised: ['Standardised residual', 'The residual in its own standard deviations.'],
    smallest: ['Smallest slip seen', 'A slip of this size is noticed with the power stated.'],
    estimate: ['Estimated error', 'How far the reading would be off, if it alone were wrong.'],
    chords: ['More than straight across', 'A tape along the edge can only be longer than the straight lines.'],
  } satisfies Record<string, [string, string]>,
  values: {
    passes: 'passes',
    fails: 'fails',
    'cannot tell': 'cannot tell',
    global: (verdict: string, alpha: string) => `${verdict} (false alarm ${alpha})`,
    standardised: (value: string, critical: string) => `${value}; doubted from ${critical}`,
    smallest: (size: string, power: string, alpha: string) =>
      `${size}; power ${power}, false alarm ${alpha} for the whole job`,
    share: (share: number) => `${Number((share * 100).toPrecision(2))} %`,
    none: 'cannot be said: nothing checks it',
    withIt: 'Worked out with this reading in. The other readings are worked out without it.',
    bent: 'Of a shape that does not fit: to find the wrong reading by, never to cut by.',
    withoutIt: (names: string) => `Worked out without ${names}.`,
  },
  readings: {
    adjusted: (by: string) => `adjusted ${by}`,
    wouldFit: (value: string) => `${value} would fit`,
    control: {
      checked: 'checked',
      'weakly checked': 'weakly checked',
      unchecked: 'nothing checks it',
    },
    twice: 'read twice, agrees',
    oneSided: 'one-sided check',
    unused: 'not used for the shape',
    numbers: 'Numbers',
  },
  slips: {
    verdicts: {
      named: 'One explanation stands well ahead of the others.',
      tied: 'The readings alone cannot settle which of these it is; the most believed comes first.',
      unlocated: 'Something does not fit, and no single mistake we know explains it.',
    },
    promise: 'No reading was changed, and the dock is not told what would fit.',
    exchanged: ([one = '', other = '']: readonly string[], lines: readonly string[]) =>
      `All of it would fit as if ${one} and ${other} were exchanged: ${lines.join(', or ')}. No other exchange of two points would do that; another slip may.`,
    exchangedOn: (one: string, other: string) => `${one} written for ${other} and the other way round`,
    fits: (name: string, about: boolean, value: string, kind: string) =>
      `${name}: ${about ? 'about ' : ''}${value} would fit, ${kind}`,
    belongs: (points: string) => `what was read fits ${points}`,
    read: (text: string) => `The tape was read as ${text}.`,
    notAgain: 'Not read again',
    differ: 'Read again, and the takes differ',
    use: (value: string, name: string) => `Count ${name} as ${value}`,
    useAsk: (value: string, name: string) =>
      `Nobody has measured it again. What was read stays; the shape, the drawings and the checks go by ${value} for ${name} until somebody does.`,
    useSure: 'Yes, count it so',
    readTwice: 'Read again, and the takes agree',
    beliefs: (chance: number): string =>
      chance >= 0.95
        ? 'Almost certainly'
        : chance >= 0.7
          ? 'Most likely'
          : chance >= 0.3
            ? 'Quite possible'
            : chance >= 0.05
              ? 'Possible'
              : 'Unlikely',
    percent: (chance: number) =>
      chance > 0.995 ? 'over 99 %' : chance < 0.01 ? 'under 1 %' : `${Math.round(chance * 100)} %`,
    more: (count: number) => `and ${count} more, less likely`,
    go: (name: string) => `Go to ${name}`,
    ask: (names: string) => `Ask again for ${names}`,
    asked: (names: string) => `Asked again already, still open: ${names}.`,
    decide: 'A tape nobody has taken yet decides between them:',
    predicted: (value: string, explanation: string) => `${value} if ${explanation}`,
    shape: (number: number) => `it is shape ${number}`,
  },
  tapes: {
    loose: (labels: string) => `${labels} still ${labels.includes(',') ? 'float' : 'floats'}.`,
    unchecked: (names: string) => `Nothing checks ${names}.`,
    wide: 'Some points are less sure than the piece needs.',
    clears: 'These would make the piece fixed, tight and checked:',
    helps: 'These would help most, though not all the way:',
    none: 'No further tape between these points helps. A second look does.',
    second: (names: string) => `Ask for a second look at ${names}`,
    about: (name: string, length: string) => `${name}, about ${length}`,
    ask: (names: string) => `Ask for ${names}`,
    asked: 'asked already, still open',
    before: (reason: string) => `Said before: could not measure (${reason}).`,
  },
};
