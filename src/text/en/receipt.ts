const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** How many of those asked for are there; those answered with why they are not stand apart. */
const ofAll = (one: string, many: string) => (done: number, all: number, leftOut: number) =>
  `${done} of ${count(all, one, many)}${leftOut > 0 ? ` (${leftOut} left out)` : ''}`;

/** After a packet was handed over: what, to whom, when, and what comes now. */
export const receipt = {
  /** How far a job is, in the same words wherever its owner is told. */
  tally: {
    measurements: ofAll('measurement', 'measurements'),
    photos: ofAll('photo', 'photos'),
    answers: ofAll('answer', 'answers'),
    edges: ofAll('edge', 'edges'),
    again: (done: number, all: number) => `${done} of ${all} read once more`,
    last: (looks: number) => (looks === 1 ? 'one last look' : `${looks} last looks`),
    /** The number that is asked for is another than it was. */
    changed: (measurements: string, before: number, byAnswer: boolean) =>
      `${measurements}, ${before} before${byAnswer ? ' your answer' : ''}`,
  },
  shared: 'Handed over',
  downloaded: 'Saved among your downloads',
  what: 'What',
  photos: (n: number) => count(n, 'photo', 'photos'),
  once: (looks: number) =>
    looks === 1
      ? 'One measurement was not read once more. The shop sees which.'
      : `${looks} measurements were not read once more. The shop sees which.`,
  file: 'File',
  named: (name: string, size: string) => `${name} (${size})`,
  whom: 'To',
  shop: (shop: string, contact: string) => (contact === '' ? shop : `${shop}, ${contact}`),
  chosen: 'whomever you chose in the phone’s list',
  nobodyYet: 'nobody yet. Send it to the shop from there, as an attachment.',
  nobodyYetBut: (shop: string) => `nobody yet. Send it from there to ${shop}.`,
  when: 'When',
  next: 'What happens next',
  steps: {
    confirm: 'The app cannot see whether it arrived. Ask the shop to confirm.',
    look: 'The shop looks at every number and photo. If something is unclear, it sends you a few steps to do again: open its file here.',
    keep: 'Leave your marks on the boat and this job on the phone until the shop says it has everything.',
    again: 'You may send again at any time. Nothing doubles.',
  },
};
