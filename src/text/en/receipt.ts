const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** After a packet was handed over: what, to whom, when, and what comes now. */
export const receipt = {
  shared: 'Handed over',
  downloaded: 'Saved among your downloads',
  what: 'What',
  measurements: (n: number) => count(n, 'measurement', 'measurements'),
  photos: (n: number) => count(n, 'photo', 'photos'),
  answers: (n: number) => count(n, 'answer', 'answers'),
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
