import { signal } from '@preact/signals';
import { describe, expect, it, vi } from 'vitest';
import { isoWithOffset, now, uuid } from '../../src/device/clock.ts';
import { watchInstall } from '../../src/device/install.ts';
import { onLaunchFiles } from '../../src/device/launch.ts';
import { guardLeaving } from '../../src/device/leave-guard.ts';
import { type RegisterWorker, type UpdatePage, watchUpdates } from '../../src/device/update.ts';
import { keepScreenOn } from '../../src/device/wake-lock.ts';

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('the clock', () => {
  it('writes a moment with the offset of the place', () => {
    const moment = new Date('2026-05-04T22:30:15.678Z');
    expect(isoWithOffset(moment, 0)).toBe('2026-05-04T22:30:15+00:00');
    expect(isoWithOffset(moment, 120)).toBe('2026-05-05T00:30:15+02:00');
    expect(isoWithOffset(moment, -210)).toBe('2026-05-04T19:00:15-03:30');
    expect(isoWithOffset(moment, 345)).toBe('2026-05-05T04:15:15+05:45');
  });
  it('means the same instant whatever the place', () => {
    expect(Math.abs(Date.parse(now()) - Date.now())).toBeLessThan(2000);
  });
  it('makes ids of version 7 that sort by age', () => {
    const ids = Array.from({ length: 50 }, uuid);
    expect(new Set(ids).size).toBe(50);
    expect([...ids].sort()).toEqual(ids);
    expect(ids[0]).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab]/);
  });
});

describe('the guard on leaving', () => {
  const leaves = (page: EventTarget): boolean => page.dispatchEvent(new Event('beforeunload', { cancelable: true }));
  it('lets go while nothing is at risk, holds while something is, and lets go again', () => {
    const page = new EventTarget();
    const atRisk = signal(false);
    const stop = guardLeaving(atRisk, page);
    expect(leaves(page)).toBe(true);
    atRisk.value = true;
    expect(leaves(page)).toBe(false);
    atRisk.value = false;
    expect(leaves(page)).toBe(true);
    atRisk.value = true;
    stop();
    expect(leaves(page)).toBe(true);
  });
});

describe('the screen', () => {
  function device(request?: () => Promise<WakeLockSentinel>) {
    const document = Object.assign(new EventTarget(), { visibilityState: 'visible' as DocumentVisibilityState });
    const show = (state: DocumentVisibilityState): void => {
      document.visibilityState = state;
      document.dispatchEvent(new Event('visibilitychange'));
    };
    return { platform: { document, navigator: request ? { wakeLock: { request } } : {} }, show };
  }
  const makeLock = () => {
    const lock = { released: false, release: () => Promise.resolve() };
    lock.release = async () => {
      lock.released = true;
    };
    return lock;
  };

  it('does nothing where it cannot be kept on, or that is refused', async () => {
    keepScreenOn(device().platform)();
    const refused = vi.fn(() => Promise.reject(new DOMException('', 'NotAllowedError')));
    const stop = keepScreenOn(device(refused).platform);
    await settle();
    stop();
    expect(refused).toHaveBeenCalledOnce();
  });

  it('is kept on, again after the page was away, and let go at the end', async () => {
    const locks: ReturnType<typeof makeLock>[] = [];
    const request = vi.fn(async () => {
      const lock = makeLock();
      locks.push(lock);
      return lock as unknown as WakeLockSentinel;
    });
    const { platform, show } = device(request);
    const stop = keepScreenOn(platform);
    await settle();
    show('visible');
    await settle();
    expect(request).toHaveBeenCalledTimes(1);
    if (locks[0]) locks[0].released = true;
    show('hidden');
    show('visible');
    await settle();
    expect(request).toHaveBeenCalledTimes(2);
    stop();
    await settle();
    expect(locks[1]?.released).toBe(true);
    show('visible');
    expect(request).toHaveBeenCalledTimes(2);
  });

  it('is let go when the lock comes only after it is no longer wanted', async () => {
    const lock = makeLock();
    const stop = keepScreenOn(device(async () => lock as unknown as WakeLockSentinel).platform);
    stop();
    await settle();
    expect(lock.released).toBe(true);
  });
});

describe('a new version', () => {
  function worker(controlled = false) {
    let options: Parameters<RegisterWorker>[0] = {};
    const apply = vi.fn(() => Promise.resolve());
    const registerSW: RegisterWorker = (given) => {
      options = given;
      return apply;
    };
    const page = {
      reload: vi.fn(),
      controlled,
      onFront: vi.fn<UpdatePage['onFront']>(),
      onTakenOver: vi.fn<UpdatePage['onTakenOver']>(),
    };
    const takeOver = (): void => page.onTakenOver.mock.calls[0]?.[0]();
    return {
      takeOver,
      start: () => watchUpdates(async () => ({ registerSW }), page),
      told: () => options,
      apply,
      page,
    };
  }

  it('is not there at first', async () => {
    const { start, apply, page } = worker();
    const updates = await start();
    expect([updates.state.value, updates.offlineReady.value]).toEqual(['none', false]);
    expect(apply).not.toHaveBeenCalled();
    expect(page.reload).not.toHaveBeenCalled();
    expect((await worker(true).start()).offlineReady.value).toBe(true);
  });

  it('is not what the first worker is that takes over a first visit', async () => {
    const { start, page, takeOver } = worker();
    const updates = await start();
    takeOver();
    expect(updates.state.value).toBe('none');
    expect(page.reload).not.toHaveBeenCalled();
  });

  it('waits until the person agrees', async () => {
    const { start, told, apply, page, takeOver } = worker();
    const updates = await start();
    told().onOfflineReady?.();
    told().onNeedRefresh?.();
    expect([updates.state.value, updates.offlineReady.value]).toEqual(['waiting', true]);
    await settle();
    expect(apply).not.toHaveBeenCalled();
    await updates.applyUpdate();
    expect(apply).toHaveBeenCalledOnce();
    takeOver();
    expect(page.reload).toHaveBeenCalledOnce();
  });

  it('agreed to in another tab does not load this one anew by itself', async () => {
    const { start, told, page, takeOver } = worker();
    const updates = await start();
    told().onNeedRefresh?.();
    takeOver();
    expect(updates.state.value).toBe('taken-over');
    expect(page.reload).not.toHaveBeenCalled();
    await updates.applyUpdate();
    expect(page.reload).toHaveBeenCalledOnce();
  });

  it('is looked for when an app left open comes to the front, at most once an hour', async () => {
    const { start, told, page } = worker();
    await start();
    const update = vi.fn(() => Promise.reject(new Error('no signal')));
    told().onRegisteredSW?.('sw.js', { update } as unknown as ServiceWorkerRegistration);
    const front = page.onFront.mock.calls[0]?.[0];
    vi.useFakeTimers({ now: Date.now(), toFake: ['Date'] });
    try {
      front?.();
      expect(update).not.toHaveBeenCalled();
      vi.setSystemTime(Date.now() + 3_700_000);
      front?.();
      front?.();
      expect(update).toHaveBeenCalledOnce();
    } finally {
      vi.useRealTimers();
    }
  });

  it('cannot be had without a worker, and nothing breaks', async () => {
    const updates = await watchUpdates(() => Promise.reject(new Error('none')), worker().page);
    await updates.applyUpdate();
    expect(updates.state.value).toBe('none');
  });
});

describe('installing', () => {
  const IPHONE = 'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 Safari/604.1';
  const page = (userAgent: string, standalone = false) =>
    Object.assign(new EventTarget(), { navigator: { userAgent, standalone } });
  const offer = (outcome: string) =>
    Object.assign(new Event('beforeinstallprompt', { cancelable: true }), {
      prompt: vi.fn(() => Promise.resolve()),
      userChoice: Promise.resolve({ outcome }),
    });

  it('is not offered by itself', async () => {
    const install = watchInstall(page('Gecko'));
    expect(install.way.value).toBe('none');
    expect(await install.ask()).toBe(false);
  });

  it('is done by hand on iOS, and is done when it runs from the home screen', () => {
    expect(watchInstall(page(IPHONE)).way.value).toBe('by-hand');
    expect(watchInstall(page(IPHONE, true)).way.value).toBe('installed');
  });

  it.each([
    ['accepted', true, 'installed'],
    ['dismissed', false, 'none'],
  ])('keeps the browser quiet until the app asks, once (%s)', async (outcome, accepted, after) => {
    const target = page('Chrome');
    const install = watchInstall(target);
    const event = offer(outcome);
    target.dispatchEvent(event);
    expect([event.defaultPrevented, install.way.value]).toEqual([true, 'prompt']);
    expect(event.prompt).not.toHaveBeenCalled();
    expect(await install.ask()).toBe(accepted);
    expect(install.way.value).toBe(after);
    expect(await install.ask()).toBe(false);
    expect(event.prompt).toHaveBeenCalledOnce();
  });

  it('done from the browser’s own menu is noticed; after stop nothing is', () => {
    const target = page('Chrome');
    const install = watchInstall(target);
    install.stop();
    target.dispatchEvent(offer('accepted'));
    expect(install.way.value).toBe('none');
    const other = watchInstall(target);
    target.dispatchEvent(new Event('appinstalled'));
    expect(other.way.value).toBe('installed');
  });
});

describe('files the app is opened with', () => {
  it('are none where the browser has no file handlers, or the app was opened without one', () => {
    const receive = vi.fn();
    onLaunchFiles(receive, {});
    onLaunchFiles(receive, {
      launchQueue: { setConsumer: (use: (launch: object) => void) => [{}, { files: [] }].map(use) },
    });
    expect(receive).not.toHaveBeenCalled();
  });

  it('are handed over; one that cannot be read is counted', async () => {
    const file = new File(['{}'], 'a.json');
    const files = [{ getFile: async () => file }, { getFile: () => Promise.reject(new Error('gone')) }];
    const receive = vi.fn();
    onLaunchFiles(receive, { launchQueue: { setConsumer: (use: (launch: object) => void) => use({ files }) } });
    await settle();
    expect(receive).toHaveBeenCalledExactlyOnceWith([file], 1);
  });
});
