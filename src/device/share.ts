export type ShareOutcome = 'shared' | 'downloaded' | 'cancelled' | 'failed';

/** What sharing needs from the browser. */
export interface SharePlatform {
  canShare?(data: { files: File[] }): boolean;
  share?(data: { files: File[]; title?: string }): Promise<void>;
  /** Puts a file among the person's downloads. */
  download(file: File): void;
}

/**
 * Hands a packet to the system's share sheet, else to the downloads. Call it straight from a tap with a blob that is
 * ready: the right to share is lost while something is built. name: with its ending, '.json'.
 */
export async function shareFile(blob: Blob, name: string, platform = browserPlatform()): Promise<ShareOutcome> {
  for (const file of disguises(blob, name)) {
    if (!mayShare(file, platform)) continue;
    try {
      await platform.share?.({ files: [file], title: file.name });
      return 'shared';
    } catch (error) {
      const why = error instanceof Error || error instanceof DOMException ? error.name : '';
      if (why === 'AbortError') return 'cancelled';
      // A sheet is open already; a download on top of it would be a second copy nobody asked for.
      if (why === 'InvalidStateError') return 'failed';
      // NotAllowedError and the rest: Chromium may refuse here what it said it can share. Try the next way.
    }
  }
  return saveFile(blob, name, platform);
}

/** Puts the packet among the downloads without asking for the share sheet. */
export function saveFile(blob: Blob, name: string, platform = browserPlatform()): ShareOutcome {
  try {
    platform.download(new File([blob], name, { type: 'application/json' }));
    return 'downloaded';
  } catch {
    return 'failed';
  }
}

/** Puts a text of another kind than a packet among the downloads: a drawing, a list. */
export function saveText(text: string, name: string, type: string, platform = browserPlatform()): ShareOutcome {
  try {
    platform.download(new File([text], name, { type }));
    return 'downloaded';
  } catch {
    return 'failed';
  }
}

/** Whether `shareFile` would open the share sheet: what to write on the button. */
export function canShareFiles(name: string, platform = browserPlatform()): boolean {
  return disguises(new Blob(['{}']), name).some((file) => mayShare(file, platform));
}

/** Chromium shares only types on its list, and JSON is not on it; plain text is. The reader goes by content. */
function disguises(blob: Blob, name: string): File[] {
  return [
    new File([blob], name, { type: 'application/json' }),
    new File([blob], `${name}.txt`, { type: 'text/plain' }),
  ];
}

function mayShare(file: File, platform: SharePlatform): boolean {
  try {
    return platform.share !== undefined && platform.canShare?.({ files: [file] }) === true;
  } catch {
    return false;
  }
}

function browserPlatform(): SharePlatform {
  const { canShare, share }: { canShare?: Navigator['canShare']; share?: Navigator['share'] } = navigator;
  return {
    ...(canShare && { canShare: (data) => canShare.call(navigator, data) }),
    ...(share && { share: (data) => share.call(navigator, data) }),
    download: downloadByLink,
  };
}

function downloadByLink(file: File): void {
  const url = URL.createObjectURL(file);
  const link = Object.assign(document.createElement('a'), { href: url, download: file.name, hidden: true });
  document.body.append(link);
  link.click();
  link.remove();
  // WebKit reads the bytes some time after the click.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
