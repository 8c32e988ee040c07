/** Not in the standard library of types: Chromium only. */
interface LaunchQueue {
  setConsumer(consumer: (launch: { files?: readonly { getFile(): Promise<File> }[] }) => void): void;
}

/**
 * Hands over the files the system opened the app with, now and whenever it does so again; nothing where the browser
 * knows no file handlers. A file that cannot be read is left out and counted.
 */
export function onLaunchFiles(receive: (files: File[], unreadable: number) => void, page: object = window): void {
  const queue = 'launchQueue' in page ? (page.launchQueue as LaunchQueue) : null;
  queue?.setConsumer(({ files = [] }) => {
    if (files.length === 0) return;
    void Promise.allSettled(files.map((file) => file.getFile())).then((results) => {
      const read = results.flatMap((result) => (result.status === 'fulfilled' ? [result.value] : []));
      receive(read, results.length - read.length);
    });
  });
}
