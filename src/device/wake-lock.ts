/** The parts of the browser that keep a screen on. */
export interface WakeLockPlatform {
  navigator: { wakeLock?: Pick<WakeLock, 'request'> };
  document: Pick<Document, 'addEventListener' | 'removeEventListener' | 'visibilityState'>;
}

/**
 * Keeps the screen on until the returned function is called. The system takes the lock away whenever the page is
 * hidden, so it is asked for again on return. Where it is refused (low battery) or unknown, nothing happens.
 */
export function keepScreenOn(platform: WakeLockPlatform = window): () => void {
  const { document } = platform;
  let wanted = true;
  let lock: WakeLockSentinel | null = null;
  let asking = false;
  const ask = async (): Promise<void> => {
    if (!wanted || asking || document.visibilityState !== 'visible' || (lock && !lock.released)) return;
    asking = true;
    try {
      lock = (await platform.navigator.wakeLock?.request('screen')) ?? null;
    } catch {
      lock = null;
    }
    asking = false;
    if (!wanted) await letGo();
  };
  const letGo = async (): Promise<void> => {
    await lock?.release().catch(() => undefined);
  };
  const onVisible = (): void => void ask();
  document.addEventListener('visibilitychange', onVisible);
  void ask();
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', onVisible);
    void letGo();
  };
}
