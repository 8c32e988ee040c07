/** What was found when the finished piece hung on the boat. */
export const fitting = {
  heading: 'After fitting',
  help: 'What had to be changed when it hung on the boat. The clearance stays as it is; a sister boat’s job takes this along.',
  add: 'Note something from the fitting',
  where: 'Where',
  piece: 'The whole piece',
  kinds: { point: 'Points', run: 'Edges', reading: 'Readings' },
  change: 'Changed by (leave empty if not by a length)',
  changeHelp: 'Longer as it is, shorter with a minus: -3/8, -10 mm.',
  why: 'What was it, and why?',
  whyNeeded: 'Say in a few words what it was.',
  save: 'Keep this note',
  takeBack: 'Take back',
  from: (boat: string) => `from ${boat}`,
  here: (boat: string | null) => (boat === null ? 'After fitting here' : `After fitting on ${boat}`),
  what: (change: string, why: string) => [change, why].filter(Boolean).join(': '),
  history: (where: string, what: string) => `After fitting, ${where}: ${what}`,
};
