/** Days without a visit after which Safari removes what a site has stored, unless it runs from the home screen. */
const DAYS_KEPT = 7;
const DAY = 86_400_000;

/** used, quota: bytes as the browser says. plausible: false where its numbers cannot be true; then warn of nothing. */
export interface Room {
  used: number;
  quota: number;
  plausible: boolean;
}

export type StorageLike = Partial<Pick<StorageManager, 'persist' | 'persisted' | 'estimate'>>;

/** navigator.storage, which WebKitGTK, older browsers and pages without a secure context do not have. */
const browserStorage = (): StorageLike | undefined => {
  if (typeof navigator === 'undefined') return undefined;
  const { storage }: { storage?: StorageLike } = navigator;
  return storage;
};

/** Whether the browser has promised not to clear the storage by itself; null where it cannot say. */
export async function isPersistent(storage = browserStorage()): Promise<boolean | null> {
  try {
    return (await storage?.persisted?.()) ?? null;
  } catch {
    return null;
  }
}

/** Asks the browser for that promise; from a tap, since some ask the person. Null where it cannot be asked. */
export async function askToPersist(storage = browserStorage()): Promise<boolean | null> {
  try {
    return (await storage?.persist?.()) ?? null;
  } catch {
    return null;
  }
}

/**
 * How much is used and may be used; null where the browser does not say. stored: bytes known to be here, against
 * which the answer is judged: WebKit was seen to claim less than a single stored picture.
 */
export async function estimateRoom(stored = 0, storage = browserStorage()): Promise<Room | null> {
  let answer: StorageEstimate | undefined;
  try {
    answer = await storage?.estimate?.();
  } catch {
    return null;
  }
  const { usage: used, quota } = answer ?? {};
  if (used === undefined || quota === undefined || !Number.isFinite(used) || !Number.isFinite(quota)) return null;
  return { used, quota, plausible: used >= 0 && quota > 0 && used <= quota && used >= stored };
}

/** What tells whether the app runs from the home screen. */
export interface Frame {
  matchMedia?(query: string): { matches: boolean };
  navigator: object;
}

/** Whether the app runs installed: by display mode, or by the older flag of iOS. */
export function runsInstalled(frame: Frame = window): boolean {
  const modes = ['standalone', 'fullscreen', 'minimal-ui'];
  if (modes.some((mode) => frame.matchMedia?.(`(display-mode: ${mode})`).matches)) return true;
  return 'standalone' in frame.navigator && frame.navigator.standalone === true;
}

/** iPhone or iPad, as far as the user agent tells: an iPad that asks for desktop pages says Macintosh, but is touched. */
export function isAppleTouch(userAgent: string, touchPoints = 0): boolean {
  return /iPhone|iPad|iPod/.test(userAgent) || (/Macintosh/.test(userAgent) && touchPoints > 1);
}

/**
 * Whether this browser may clear a site's storage after a week without a visit: WebKit's rule, so Safari and every
 * browser on iOS, unless the app runs from the home screen. Best effort: a user agent may say anything.
 */
export function mayClearAfterAWeek(userAgent: string, installed: boolean, touchPoints = 0): boolean {
  if (installed) return false;
  if (isAppleTouch(userAgent, touchPoints)) return true;
  // Chromium browsers name Safari too, but also themselves; only WebKit's own put Version/ before it.
  const other = /Chrome|Chromium|Edg|OPR|Android|Firefox/.test(userAgent);
  return !other && /Version\/[\d.]+.*Safari\//.test(userAgent);
}

/**
 * Whole days left until the storage may be cleared, 7..0, counted from the last visit. The rule counts days of using
 * the browser; calendar days are the cautious bound. A last visit in the future (a wrong clock) counts as today.
 */
export function daysLeft(lastVisit: Date, today: Date): number {
  const days = Math.floor((today.getTime() - lastVisit.getTime()) / DAY);
  return Math.min(DAYS_KEPT, Math.max(0, DAYS_KEPT - days));
}
