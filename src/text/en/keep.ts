const counted = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`);

const and = (parts: string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

const jobs = (count: number): string => counted(count, 'job', 'jobs');
const photos = (count: number): string => counted(count, 'photo', 'photos');
const settings = (count: number): string => counted(count, 'setting', 'settings');

/** Backing up a device, what it stores, and deleting a job from it. */
export const keep = {
  backup: {
    heading: 'Back up everything',
    help: 'One file with all jobs, photos, settings and templates of this device. It names customers: keep it where only you can open it.',
    make: 'Make the backup file',
    making: (percent: number) => `Making the file… ${percent} %`,
    failed: 'The file could not be made. Nothing is lost. Close other pages to free memory and try again.',
    holds: (counts: { jobs: number; photos: number; damaged: number }, size: string) =>
      `Ready: ${and([jobs(counts.jobs), photos(counts.photos)])}, ${size}.${
        counts.damaged > 0
          ? ` ${counted(counts.damaged, 'entry that cannot be read goes', 'entries that cannot be read go')} along as they are.`
          : ''
      }`,
    lost: (count: number) =>
      `${counted(count, 'photo or entry is', 'photos or entries are')} damaged beyond copying and could not go along.`,
    name: (day: string) => `${day} Tapetrue backup.json`,
    share: 'Send or save it now',
    download: 'Save it on this device',
    saved: 'Saved among your downloads. Move it to another device: a copy on this one is lost with it.',
    shared: 'Handed over.',
    cancelled: 'Not saved.',
    refused: 'The phone refused to hand it over. Save it on this device instead.',
  },
  restore: {
    open: 'Restore from a backup file',
    reading: (percent: number) => `Reading the file… ${percent} %`,
    holds: (when: string, who: string, counts: { jobs: number; photos: number }) =>
      `Backup of ${when}${who === '' ? '' : ` by ${who}`}: ${and([jobs(counts.jobs), photos(counts.photos)])}.`,
    would: (fresh: number, known: number) =>
      fresh + known === 0
        ? 'It brings no job.'
        : `${and([
            ...(fresh > 0 ? [`${jobs(fresh)} ${fresh === 1 ? 'is' : 'are'} new here`] : []),
            ...(known > 0
              ? [
                  `${jobs(known)} ${known === 1 ? 'is' : 'are'} here already and ${known === 1 ? 'gets' : 'get'} what is missing`,
                ]
              : []),
          ])}.`,
    safe: 'Nothing on this device is overwritten or removed.',
    damaged: (count: number) =>
      `${counted(count, 'entry in it cannot be read and is', 'entries in it cannot be read and are')} kept as they are.`,
    allSettings: (count: number) => `Take its ${settings(count)} too, in place of those here`,
    settingsHelp: 'Otherwise only settings that this device has not made yet are taken.',
    now: 'Restore it',
    working: (percent: number) => `Restoring… ${percent} %`,
    done: (outcome: { jobs: number; entries: number; photos: number }) =>
      outcome.entries + outcome.photos === 0
        ? 'Everything was here already.'
        : `${and([
            counted(outcome.entries, 'entry', 'entries'),
            photos(outcome.photos),
          ])} came back, in ${jobs(outcome.jobs)}.`,
    also: (settingsTaken: number, templates: number) =>
      `Also taken: ${and([settings(settingsTaken), counted(templates, 'template', 'templates')])}.`,
    setAside: (count: number) =>
      `${counted(count, 'entry carries', 'entries carry')} a known number with other content. What was here stays.`,
    notPut: (count: number) =>
      `${jobs(count)} could not be put back: ${count === 1 ? 'a number in it is' : 'numbers in them are'} used by another job here.`,
    stopped: 'It stopped half way. What came back is whole; restore the same file again and it goes on.',
    refused: 'Refused. What is stored was not touched.',
    why: {
      foreign: 'This file is not a backup.',
      newer: 'This backup was made by a newer version. Update the app, then open it again.',
      'cut-off': 'This backup is cut off: its end is missing. Copy it again from where it was made.',
      damaged: 'This backup is damaged: its content does not match its seal. Copy it again from where it was made.',
      unreadable: 'The file could not be read to its end. Is it still there?',
    },
    fileChanged: 'The file changed while it was read.',
  },
  use: {
    counting: 'Weighing what is stored…',
    total: (count: number, records: string, photoCount: number, photoBytes: string) =>
      `${jobs(count)} ${count === 1 ? 'takes' : 'take'} ${records}. ${photos(photoCount)}: ${photoBytes}.`,
    room: (used: string, quota: string) => `The browser says: about ${used} used of ${quota}.`,
    unknown: 'This browser does not say, or not believably, how much room is left.',
  },
  remove: {
    heading: 'Delete a job from this device',
    open: 'Delete it from this device',
    ask: (name: string) => `Delete “${name}” from this device?`,
    counting: 'Looking what would be lost…',
    loses: (readings: number, photoCount: number, more: number) =>
      `Gone from here: ${and([
        counted(readings, 'reading', 'readings'),
        photos(photoCount),
        ...(more > 0 ? [counted(more, 'other entry', 'other entries')] : []),
      ])}.`,
    neverSent: 'It was never sent or saved: this is the only copy there is.',
    since: (when: string, entries: number) =>
      `Last sent or saved ${when}; ${counted(entries, 'entry', 'entries')} since then ${entries === 1 ? 'is' : 'are'} only here.`,
    sent: (when: string) => `A copy of all of it was sent or saved ${when}. It stays where it is.`,
    forGood: 'This cannot be taken back.',
    putAway: 'To have it out of the way only, put it away in the list of jobs: nothing is lost then.',
    saveFirst: 'Save a copy first',
    saved: 'Saved among your downloads.',
    notSaved: 'The copy could not be made. The job stays.',
    now: 'Delete it for good',
    failed: 'The device could not do that. The job is still here.',
  },
};
