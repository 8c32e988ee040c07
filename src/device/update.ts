import { type ReadonlySignal, signal } from '@preact/signals';
import type { RegisterSWOptions } from 'vite-plugin-pwa/types';

/**
 * none: this is the newest version known. waiting: a newer one is here and waits to be asked. taken-over: another tab
 * of the app switched to it; this page still runs the old code and should be loaded anew at the next quiet moment.
 */
export type UpdateState = 'none' | 'waiting' | 'taken-over';

export interface Updates {
  readonly state: ReadonlySignal<UpdateState>;
  /** Everything is here to work without a signal. */
  readonly offlineReady: ReadonlySignal<boolean>;
  /** Switches to the waiting version and loads the page anew. Only when the person agrees. */
  applyUpdate(): Promise<void>;
}

export type RegisterWorker = (options: RegisterSWOptions) => () => Promise<void>;

export interface UpdatePage {
  reload(): void;
  /** A worker answers for this page already. */
  controlled: boolean;
  /** Called whenever another worker takes over this page. */
  onTakenOver(react: () => void): void;
  /** Called whenever the page comes to the front. */
  onFront(react: () => void): void;
}

const HOUR = 3_600_000;

/** Registers the service worker and watches for new versions; none is ever put to use by itself. */
export async function watchUpdates(
  load: () => Promise<{ registerSW: RegisterWorker }> = () => import('virtual:pwa-register'),
  page: UpdatePage = browserPage(),
): Promise<Updates> {
  const state = signal<UpdateState>('none');
  const offlineReady = signal(page.controlled);
  let agreed = false;
  let apply: () => Promise<void> = () => Promise.resolve();
  // Agreeing in one tab switches the worker of all. Only the tab that agreed loads anew: another may be in the middle of
  // a number. The library tells of a take-over only on pages that had a worker when they were opened; on the first visit's page it
  // does not, and "use it now" would switch the worker and leave the old page standing.
  page.onTakenOver(() => {
    if (agreed) page.reload();
    else if (state.peek() === 'waiting') state.value = 'taken-over';
  });
  try {
    const { registerSW } = await load();
    apply = registerSW({
      onNeedRefresh: () => {
        state.value = 'waiting';
      },
      onOfflineReady: () => {
        offlineReady.value = true;
      },
      // Given so that the library does not load the page anew by itself; what happens is decided above.
      onNeedReload: () => undefined,
      onRegisteredSW: (_url, registration) => {
        if (registration) lookNowAndThen(registration, page);
      },
    });
  } catch {
    // No worker here (a page without a secure context): the app works, only not offline.
  }
  return {
    state,
    offlineReady,
    async applyUpdate() {
      agreed = true;
      if (state.peek() === 'taken-over') page.reload();
      else await apply();
    },
  };
}

/** An installed app may stay open for weeks; browsers look for a new worker only when a page is loaded. */
function lookNowAndThen(registration: Pick<ServiceWorkerRegistration, 'update'>, page: UpdatePage): void {
  let last = Date.now();
  page.onFront(() => {
    if (Date.now() - last < HOUR) return;
    last = Date.now();
    // Without a signal it fails, and that is fine.
    void registration.update().catch(() => undefined);
  });
}

function browserPage(): UpdatePage {
  return {
    reload: () => location.reload(),
    controlled: 'serviceWorker' in navigator && navigator.serviceWorker.controller !== null,
    onTakenOver: (react) => {
      if ('serviceWorker' in navigator) navigator.serviceWorker.addEventListener('controllerchange', react);
    },
    onFront: (react) =>
      document.addEventListener('visibilitychange', () => {
        if (document.visibilityState === 'visible') react();
      }),
  };
}
