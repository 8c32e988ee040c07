export const store = {
  failures: {
    full: 'This device is full. Your last entries are kept in this open page. Send or save a copy now, then make room.',
    blocked: 'Another tab has an older version open. Close it and this one goes on.',
    newer:
      'This device’s jobs were written by a newer version. Nothing was changed. Close all tabs and open the app again.',
    closed:
      'The phone closed the storage. Your last entries are kept in this open page and will be written as soon as it answers.',
    private: 'This private window does not keep anything. Use a normal window.',
    conflict: 'Something with the same number but other content was refused. What is stored stays.',
    gone: 'This job was deleted from this device in another tab. What you entered since is kept in this open page only.',
    unknown: 'The device could not write. Your last entries are kept in this open page. Save a copy now.',
  },
  torn: 'This device ran full and may lose what it stores when the app is closed. Save a copy of every job now, before you close it.',
  emptied: 'The browser’s data for this app was cleared while it was open. What is on the screen can be written back.',
  writeBack: 'Write it back',
  gone: {
    what: (title: string) =>
      `“${title}” was deleted from this device in another tab. This page still holds its readings and answers. Its photos come back only from a copy.`,
    sure: (title: string) =>
      `Nothing of “${title}” stays on this device then. Copies already sent stay where they are.`,
    letGo: 'Let it go',
    letGoNow: 'Let it go for good',
  },
  saveCopyNow: 'Save a copy now',
  notOnlyCopy: 'This phone holds the only copy.',
  mayClear: (days: number) =>
    `This browser may clear a site’s storage after a week without a visit. ${days === 1 ? '1 day' : `${days} days`} left: send it, save a copy, or put the app on the home screen first.`,
  installFirst:
    'Put the app on the home screen before you begin a job: there it gets storage of its own, and jobs begun here do not move by themselves.',
  install: 'Put it on the home screen',
  installByHand: 'In the browser’s share menu choose “Add to Home Screen”.',
  installed: 'Runs from the home screen.',
  persistent: 'The browser has promised not to clear this storage by itself.',
  notPersistent: 'The browser has not promised to keep this storage. Send jobs or save copies.',
  askPersistent: 'Ask the browser to keep it',
  damaged: (count: number) =>
    `${count === 1 ? 'One entry' : `${count} entries`} on this device cannot be read. They are left as they are and go into every copy.`,
  copySaved: 'Copy made.',
  updateWaits: 'A new version is ready.',
  updateNow: 'Use it now',
  updateLater: 'Later',
  offlineReady: 'Works without a signal from now on.',
};
