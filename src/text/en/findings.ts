import type { RuleKey } from '../../core/check/index.ts';

/** What a sentence about a finding may use: names of its subjects, its numbers in the job's unit, and as they are. */
export interface FindingFacts {
  names: readonly string[];
  show: (key: string) => string;
  numbers: Readonly<Record<string, number | string | null>>;
}

const units: Record<string, string> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  in: 'inches',
  ft: 'feet',
  'feet-inches': 'feet and inches',
};

const lacks: Record<string, string> = {
  stations: 'no fastener yet',
  line: 'which line it is',
  type: 'what closes it',
  presence: 'whether that is on the boat already',
  ends: 'where it begins and ends',
  pulls: 'which way it pulls',
  count: 'how many are to be fitted',
  into: 'what they are screwed into',
  setter: 'who sets them',
};

/** By the key of the conflict; permanent keys of core/check/choice-conflicts.ts. */
const conflicts: Record<string, () => string> = {
  'holders-screwed': () =>
    'The rod holders are only screwed. Poles of a shade pull hard: through-bolts, backing plates.',
  'no-poles': () =>
    'Nothing stands in the rod holders. Put straight sticks of the poles’ length there: the lean of a holder measures no corner.',
  'shade-in-rain': () => 'A flat solid shade left up in rain holds water. Is it pitched, or of mesh?',
  'shade-at-speed': () => 'A shade is taken down before the boat runs fast. Is it meant to stay up?',
  'shade-in-wind': () => 'A shade is taken down in strong wind. Is it meant to stay up?',
  'cleats-covered': () => 'The boat is tied up in the water, and the cleats lie under the cover. They must stay free.',
  'coated-unvented': () => 'Coated cloth that stays on in rain needs vents, or cloth that breathes.',
  'mesh-in-rain': () => 'Mesh lets rain through. What lies under it gets wet.',
  towed: () => 'Towed with it on: nothing loose, straps all round, guards where it rubs.',
};

const untreated: Record<string, string> = {
  treatment: 'nobody has said what the cloth does about it',
  place: 'a cut-out, and its place is not taped',
  size: 'a cut-out, and its size is not taped',
};

const others = (names: readonly string[]): string => names.slice(1).join(' and ');

/** One sentence or two for each rule: what happened, what it means. Never whose fault, never what would fit. */
export const findings: Record<RuleKey, (facts: FindingFacts) => string> = {
  'missing-reading': ({ names }) => `${names[0]}: not taped yet.`,
  'missing-second-look': ({ names, numbers }) =>
    numbers.looks === 3 ? `${names[0]}: to be read once more.` : `${names[0]}: to be read a second time.`,
  'unmeasured-reading': ({ names, numbers }) =>
    numbers.answer === 'none-here'
      ? `${names[0]}: answered “none here” (${numbers.reason}). The guide expects it; is that so?`
      : `${names[0]}: could not be measured (${numbers.reason}). The cloth depends on it.`,
  'missing-photo': ({ names, numbers }) =>
    numbers.answer === null ? `Photo “${names[0]}”: not taken yet.` : `No photo “${names[0]}” (${numbers.reason}).`,
  'missing-mark': ({ names }) => `Not marked on a photo yet: ${names.slice(0, 2).join(', ')}.`,
  'missing-answer': ({ names }) => `Not answered yet: ${names[0]}`,
  'missing-run': ({ names, numbers, show }) => {
    const name = numbers.from === null ? names[0] : `${names[0]}, ${numbers.from} to ${numbers.to}`;
    if (numbers.lack === 'rest') return `${name}: ${show('rest')} of the edge has no fastener. Was that the last one?`;
    if (numbers.lack === 'could-not')
      return `${name}: could not be measured (${numbers.reason}). The cloth depends on it.`;
    if (numbers.lack === 'none-here')
      return `${name}: answered “none here” (${numbers.reason}). The guide expects it; is that so?`;
    return `${name}: ${lacks[String(numbers.lack)] ?? 'not complete'}.`;
  },
  'implausible-value': ({ names, numbers, show }) => {
    const value = numbers.quantity === 'angle' ? 'This angle' : show('value');
    const unit = numbers.unit === null ? '' : ` Was the tape in ${units[String(numbers.unit)] ?? numbers.unit}?`;
    return `${names[0]}: ${value} is not what this boat can have here.${unit}`;
  },
  'takes-disagree': ({ names, numbers, show }) =>
    numbers.quantity === 'angle'
      ? `${names[0]} was read twice and differs. Read it once more, then strike out the wrong one.`
      : `${names[0]} was read as ${show('low')} and ${show('high')}: ${show('difference')} apart. ${
          numbers.keep === null || numbers.keep === undefined
            ? 'Read it once more, then strike out the wrong one.'
            : 'The last look fits everything else.'
        }`,
  'impossible-triangle': ({ names, show }) =>
    `${names[0]} (${show('longest')}) is ${show('excess')} longer than ${others(names)} together allow. One of them is wrong.`,
  'box-diagonals': ({ names, numbers, show }) =>
    numbers.shape === 'flat'
      ? `The diagonal ${names[0]} (${show('diagonal')}) does not belong to these sides and ${names.at(-1)}: off by ${show('beyond')} more than a tape explains.`
      : `With these sides and ${names.at(-1)}, the diagonal ${names[0]} can be ${show('min')} to ${show('max')}; it reads ${show('diagonal')}.`,
  'impossible-tetrahedron': ({ names }) =>
    `These lengths cannot meet in four points: ${names.join(', ')}. One of them is wrong.`,
  'girth-short': ({ names, show }) =>
    `${names[0]} along the edge (${show('girth')}) is ${show('short')} shorter than straight across (${show('chords')}). That cannot be.`,
  'run-backwards': ({ names, show }) =>
    `${names[0]} (${show('to')}) lies ${show('back')} before ${names[1]} (${show('from')}).`,
  'run-sum': ({ names, numbers, show }) =>
    numbers.manner === 'gaps'
      ? `${names[0]}: the gaps add up to ${show('sum')}, the whole is ${show('whole')}. A gap skipped or counted twice?`
      : `${names[0]}: the last fastener (${show('sum')}) and the whole edge (${show('whole')}) do not agree.`,
  'fastener-gap': ({ names, numbers, show }) => {
    if (numbers.about === 'first' || numbers.about === 'last')
      return `The ${numbers.about} fastener is ${show('gap')} from the end; usual is up to ${show('max')}.`;
    const usual = `${show('min')} to ${show('max')}`;
    return numbers.about === 'run'
      ? `${names[0]}: ${numbers.gaps} gaps are outside the usual ${usual}. Is the boat spaced so?`
      : `${names[0]}: a gap of ${show('gap')}; usual is ${usual}.`;
  },
  'port-starboard': ({ names, show }) =>
    `${names[0]} and ${names[1]} differ by ${show('difference').replace('-', '')}. Boats often do; both were measured.`,
  disputed: ({ names, numbers }) =>
    `${names[0] ?? numbers.about}: two people answered without knowing of each other (${numbers.first} / ${numbers.second}). Answer again to settle it.`,
  'unsure-choice': ({ names }) => `“Could not tell”: ${names[0]}`,
  'choice-conflict': ({ names, numbers }) => conflicts[String(numbers.conflict)]?.() ?? names.join(', '),
  carried: ({ numbers }) =>
    numbers.why === 'loose'
      ? `${numbers.entries === 1 ? '1 entry waits for the rest of its' : `${numbers.entries} entries wait for the rest of their`} job.`
      : numbers.entries === 1
        ? `1 entry (${numbers.kind}) cannot be understood by this version. It is kept.`
        : `${numbers.entries} entries (${numbers.kind}) cannot be understood by this version. They are kept.`,
  'reading-doubted': ({ names }) =>
    names.length === 1
      ? `${names[0]} does not fit the other readings. Read it again.`
      : `Something here does not fit. Read again: ${names.join(', ')}.`,
  'point-floats': ({ names, numbers }) =>
    numbers.ways === null
      ? `${names[0]}: nothing is measured at it yet.`
      : `${names[0]} is not fixed yet: with these readings it could lie elsewhere. It needs another tape.`,
  'two-shapes': ({ names, numbers }) =>
    `Two shapes fit these readings (${names.join(', ')} could lie on either side).${numbers.from === null ? '' : ` One tape decides: ${numbers.from}–${numbers.to}.`}`,
  'reading-unchecked': ({ names, numbers }) =>
    numbers.moved
      ? `${names[0]}: nothing else would show a slip here, and ${numbers.moved} was moved since. Tape it from ${numbers.now} too.`
      : `${names[0]}: nothing else would show a slip here. Read it a second time.`,
  'point-loose': ({ names, show }) =>
    `${names[0]} is only sure within ${show('sure')}; the piece needs ${show('limit')}.`,
  'not-measured-again': ({ names, numbers, show }) =>
    `${names[0]}: read as ${numbers.read}, counted as ${show('value')} by the shop. Nobody has measured it again.`,
  'shape-unknown': ({ names, numbers }) =>
    numbers.readings === '0'
      ? `${names[0]}: nothing is measured yet.`
      : `${names[0]}: no shape could be computed from these readings. Look for one far off, or take another tape.`,
  'slip-unseen': ({ names, show }) =>
    `A slip in ${names[1]} could move ${names[0]} by ${show('shift')} and nobody would notice. Read it a second time.`,
  'unlike-sister': ({ names, numbers }) =>
    numbers.about === 'piece'
      ? `${names[0]}: most of it differs from the sister boat. Is this boat built alike?`
      : Number(numbers.takes) > 1
        ? `${names[0]} differs from the sister boat, and a second look agrees. This boat may be built so.`
        : `${names[0]} differs from the sister boat. Read it a second time.`,
  'asked-again': ({ names, numbers }) => `The shop asks again: ${names[0]}${numbers.note ? `. ${numbers.note}` : ''}`,
  'cleat-covered': ({ names, numbers, show }) =>
    numbers.by === 'place'
      ? `${names[0]} is called outside the cloth, and lies ${show('depth')} inside its line. Is it ${
          numbers.kind === 'cleat' ? 'free' : 'seen'
        }?`
      : `${names[0]} must ${numbers.kind === 'light' ? 'be seen' : 'stay free'}, and the cloth lies over it without a cut-out.`,
  'fastener-on-obstruction': ({ names, numbers, show }) =>
    numbers.planned === 'yes'
      ? `The row planned from ${names[1]} runs over ${names[2]}. Keep the fasteners clear of it.`
      : numbers.on === 'thing'
        ? `${names[0]} lies on ${names[1]}. One of the two was read wrong.`
        : `${names[0]} lies ${show('distance')} from the middle of ${names[1]}, within what must stay clear round it.`,
  'missing-cord-exit': () => 'The shore-power cord leaves here, and no way out for it is recorded.',
  'missing-treatment': ({ names, numbers }) =>
    numbers.lack === 'list'
      ? 'Something is in the way of the cloth, and the list of it is empty.'
      : `${names[0]}: ${untreated[String(numbers.lack)] ?? 'not complete'}.`,
};
