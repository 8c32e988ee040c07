import { type ReadonlySignal, signal } from '@preact/signals';
import { type Frame, isAppleTouch, runsInstalled } from './storage-state.ts';

/**
 * How the app can be put on the home screen. prompt: the browser will ask when told to. by-hand: only through the
 * browser's share menu (iOS). installed: it runs from there. none: this browser offers nothing.
 */
export type InstallWay = 'prompt' | 'by-hand' | 'installed' | 'none';

export interface Install {
  readonly way: ReadonlySignal<InstallWay>;
  /** Lets the browser ask; from a tap. False when the person said no or there is nothing to ask. */
  ask(): Promise<boolean>;
  stop(): void;
}

/** Not in the standard library of types: Chromium only. */
interface InstallPrompt extends Event {
  prompt(): Promise<unknown>;
  userChoice: Promise<{ outcome: 'accepted' | 'dismissed' }>;
}
const isPrompt = (event: Event): event is InstallPrompt => 'prompt' in event && 'userChoice' in event;

export interface InstallPage extends Frame, Pick<EventTarget, 'addEventListener' | 'removeEventListener'> {
  navigator: { userAgent: string; maxTouchPoints?: number };
}

/** Watches for the chance to install; start it early, the browser tells only once. */
export function watchInstall(page: InstallPage = window): Install {
  const { userAgent, maxTouchPoints } = page.navigator;
  const byHand = isAppleTouch(userAgent, maxTouchPoints);
  const way = signal<InstallWay>(runsInstalled(page) ? 'installed' : byHand ? 'by-hand' : 'none');
  let offer: InstallPrompt | null = null;
  const onOffer = (event: Event): void => {
    if (!isPrompt(event)) return;
    // The app chooses the moment: before a job is begun, never in the middle of one.
    event.preventDefault();
    offer = event;
    way.value = 'prompt';
  };
  const onInstalled = (): void => {
    offer = null;
    way.value = 'installed';
  };
  page.addEventListener('beforeinstallprompt', onOffer);
  page.addEventListener('appinstalled', onInstalled);
  return {
    way,
    async ask() {
      const asked = offer;
      if (!asked) return false;
      // One offer can be shown once.
      offer = null;
      way.value = 'none';
      await asked.prompt();
      const accepted = (await asked.userChoice).outcome === 'accepted';
      if (accepted) way.value = 'installed';
      return accepted;
    },
    stop() {
      page.removeEventListener('beforeinstallprompt', onOffer);
      page.removeEventListener('appinstalled', onInstalled);
    },
  };
}
