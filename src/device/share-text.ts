import type { ShareOutcome } from './share.ts';

/** Whether the system's share sheet takes a text. */
export const canShareText = (): boolean => typeof navigator.share === 'function';

/** Hands a text to the system's share sheet. Call it straight from a tap. */
export async function shareText(text: string): Promise<ShareOutcome> {
  try {
    await navigator.share({ text });
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'cancelled' : 'failed';
  }
}

/** Puts a text on the clipboard. False where the browser does not let a page do so: then it is copied by hand. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
