import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { chromiumPath } from '../../runner/chromium.ts';
import { type Faults, watchFaults } from './faults.ts';
import { CHROMIUM_ARGS, newProfile, removeProfile } from './profile.ts';

/** The screens that tests look at: a common phone, the smallest one we care for, and the bench. */
export const SCREENS = {
  phone: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true },
  small: { viewport: { width: 360, height: 640 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true },
  desk: { viewport: { width: 1440, height: 900 }, deviceScaleFactor: 1, isMobile: false, hasTouch: false },
} as const;

export interface PhoneOptions {
  readonly screen?: keyof typeof SCREENS;
  /** A profile to start from and keep; without it, a fresh one that goes when the phone is closed. */
  readonly profile?: string;
  readonly colorScheme?: 'light' | 'dark';
  /** How many times slower than this machine. */
  readonly slowdown?: number;
  /** What the person reads, by BCP 47. */
  readonly locale?: string;
  /** Faults that are what the test wants. */
  readonly allow?: readonly RegExp[];
}

export interface Phone {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly faults: Faults;
  /** Goes to a place in the app, such as `#/jobs`. Without one, to its start. */
  open(place?: string): Promise<void>;
  /** No network, for the service worker too. */
  offline(on: boolean): Promise<void>;
  /** Waits until the service worker holds the whole app and answers for this page. */
  readyOffline(): Promise<void>;
  /** Closes it, and throws when anything went wrong in it. */
  close(): Promise<void>;
}

export async function openPhone(appUrl: string, options: PhoneOptions = {}): Promise<Phone> {
  const { screen = 'phone', profile = newProfile(), colorScheme = 'light', locale = 'en-US', allow = [] } = options;
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    headless: true,
    args: [...CHROMIUM_ARGS],
    acceptDownloads: true,
    colorScheme,
    locale,
    ...SCREENS[screen],
  });
  const faults = await watchFaults(context, appUrl);
  faults.allow(...allow);
  const page = context.pages()[0] ?? (await context.newPage());
  if (options.slowdown !== undefined) await slowDown(context, page, options.slowdown);
  return {
    context,
    page,
    faults,
    async open(place = '') {
      await page.goto(new URL(place, appUrl).href);
    },
    offline: (on) => context.setOffline(on),
    readyOffline: () => readyOffline(page),
    async close() {
      await context.close();
      if (options.profile === undefined) removeProfile(profile);
      faults.check();
    },
  };
}

/** Opens a phone for one test and closes it whatever happens. What the test itself throws comes first. */
export async function withPhone(
  appUrl: string,
  options: PhoneOptions,
  body: (phone: Phone) => Promise<void>,
): Promise<void> {
  const phone = await openPhone(appUrl, options);
  try {
    await body(phone);
  } catch (error) {
    await phone.close().catch((faults: unknown) => console.error(faults));
    throw error;
  }
  await phone.close();
}

async function slowDown(context: BrowserContext, page: Page, rate: number): Promise<void> {
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
}

async function readyOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    // An active worker has put everything into its cache; what it controls gets everything from there.
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller !== null) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
}
