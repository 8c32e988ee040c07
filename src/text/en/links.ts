import type { LinkRefusal } from '../../core/packet/link/index.ts';

/** Links that carry work between shop and phone. */
export const links = {
  refused: {
    title: 'This link cannot be opened',
    why: {
      foreign: 'This is not a link of this app, or its beginning is missing. Copy the whole link and open it again.',
      'cut-off': 'The end of this link is missing. Copy the whole link, or ask the shop to send it again.',
      damaged: 'Something in this link was changed on its way. Ask the shop to send it again.',
      newer:
        'This link was made by a newer version. Close the app, open it again with a network, then open the link again.',
      unreadable: 'Parts of this link cannot be understood. Ask the shop for a packet file instead.',
      'not-come': 'A part of the app that reads links did not come. Open the link again where the signal is better.',
    } satisfies Record<LinkRefusal | 'not-come', string>,
    untouched: 'Nothing on this device was changed.',
    toJobs: 'To the jobs on this device',
  },
  reading: 'Reading the link…',
  notSaved: 'This could not be written to the device. Nothing was changed.',
  request: {
    title: (shop: string) => (shop === '' ? 'You are asked to measure' : `${shop} asks you to measure`),
    from: (by: string) => `Asked by ${by}.`,
    reach: 'Reach them',
    what: 'What is to be measured',
    boat: (boat: string) => `Boat: ${boat}`,
    customer: (customer: string) => `For ${customer}`,
    note: 'They write',
    known: (count: number) =>
      count === 1 ? 'One question is answered already.' : `${count} questions are answered already.`,
    units: { imperial: 'Measured in inches.', metric: 'Measured in millimetres.' },
    roles: {
      owner: 'You measure as the owner of the boat: one step at a time, with more time for each.',
      installer: 'You measure as the installer.',
      bench: 'You measure for the shop.',
    },
    keepsRole: (role: string) => `This device is set up for ${role} and stays so.`,
    keptRoles: { owner: 'the owner', installer: 'the installer', bench: 'the bench' },
    language: 'The app speaks English now, as this link asks.',
    begin: 'Begin',
    notCome: 'A part of the app did not come. Nothing is lost: press Begin again where the signal is better.',
    goOn: 'Go on with this job',
    here: 'This job is on this device already. Nothing of it is lost or doubled.',
    private: 'The link itself holds all of this. Nothing goes to the shop until you send it.',
  },
  paste: {
    label: 'Paste a link, a packet or a readings table',
    open: 'Open what was pasted',
    name: 'Pasted',
  },
  ask: {
    title: 'The shop asks again',
    notHere: 'The job this link is about is not on this phone.',
    notHereDo:
      'Open the link on the phone that measured it. If that phone is gone, ask the shop for the packet file and open that here.',
    answered: 'Everything asked for is answered already.',
    setAside: 'Part of the link says something else than what is here. What is here stays.',
    open: 'Open the job',
    goThere: 'Go to the first step asked for',
  },
};
