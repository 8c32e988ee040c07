import { describe, expect, it } from 'vitest';
import {
  askToPersist,
  daysLeft,
  estimateRoom,
  isPersistent,
  mayClearAfterAWeek,
  runsInstalled,
} from '../../src/device/storage-state.ts';

const AGENTS = {
  iPhone:
    'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1',
  iPhoneChrome:
    'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) CriOS/137.0.0.0 Mobile/15E148 Safari/604.1',
  macSafari:
    'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.5 Safari/605.1.15',
  macChrome:
    'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/137.0.0.0 Safari/537.36',
  macFirefox: 'Mozilla/5.0 (Macintosh; Intel Mac OS X 10.15; rv:139.0) Gecko/20100101 Firefox/139.0',
  android:
    'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/137.0.0.0 Mobile Safari/537.36',
  androidView:
    'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Version/4.0 Chrome/137.0.0.0 Mobile Safari/537.36',
  edge: 'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/137.0.0.0 Safari/537.36 Edg/137.0.0.0',
};

describe('storage that may be cleared after a week', () => {
  it.each(['macChrome', 'macFirefox', 'android', 'androidView', 'edge'] as const)('is not said of %s', (name) => {
    expect(mayClearAfterAWeek(AGENTS[name], false)).toBe(false);
  });
  it('is not said of anything that runs from the home screen', () => {
    for (const agent of Object.values(AGENTS)) expect(mayClearAfterAWeek(agent, true, 5)).toBe(false);
  });
  it('is not said of nonsense', () => {
    expect(mayClearAfterAWeek('', false)).toBe(false);
  });
  it.each(['iPhone', 'iPhoneChrome', 'macSafari'] as const)('is said of %s', (name) => {
    expect(mayClearAfterAWeek(AGENTS[name], false)).toBe(true);
  });
  it('is said of any browser on an iPad that claims to be a desktop', () => {
    expect(mayClearAfterAWeek(AGENTS.macChrome, false, 5)).toBe(true);
  });
});

describe('days left', () => {
  const visit = new Date('2026-05-04T08:00:00Z');
  it.each([
    ['2026-05-04T08:00:00Z', 7],
    ['2026-05-05T07:59:00Z', 7],
    ['2026-05-05T08:00:00Z', 6],
    ['2026-05-11T07:00:00Z', 1],
    ['2026-05-11T08:00:00Z', 0],
    ['2026-09-01T08:00:00Z', 0],
    ['2026-05-01T08:00:00Z', 7],
  ])('on %s: %i', (today, left) => {
    expect(daysLeft(visit, new Date(today))).toBe(left);
  });
});

describe('the promise to keep the storage', () => {
  it('is unknown where the browser has no such thing, or fails', async () => {
    const failing = { persist: () => Promise.reject(new Error()), persisted: () => Promise.reject(new Error()) };
    for (const storage of [{}, failing]) {
      expect(await isPersistent(storage)).toBeNull();
      expect(await askToPersist(storage)).toBeNull();
    }
    // Node has no navigator.storage, like WebKitGTK.
    expect(await isPersistent()).toBeNull();
    expect(await estimateRoom()).toBeNull();
  });
  it('is what the browser answers', async () => {
    for (const answer of [true, false]) {
      expect(await isPersistent({ persisted: async () => answer })).toBe(answer);
      expect(await askToPersist({ persist: async () => answer })).toBe(answer);
    }
  });
});

describe('room', () => {
  const saying = (usage?: number, quota?: number) => ({
    estimate: async () => ({ ...(usage !== undefined && { usage }), ...(quota !== undefined && { quota }) }),
  });
  it('is unknown where the browser does not say', async () => {
    expect(await estimateRoom(0, {})).toBeNull();
    expect(await estimateRoom(0, saying(5))).toBeNull();
    expect(await estimateRoom(0, saying(Number.NaN, 9))).toBeNull();
    expect(await estimateRoom(0, { estimate: () => Promise.reject(new Error()) })).toBeNull();
  });
  it('is believed when the numbers can be true', async () => {
    expect(await estimateRoom(3e6, saying(4e6, 1e9))).toEqual({ used: 4e6, quota: 1e9, plausible: true });
  });
  it.each([
    ['less used than is known to be here', 1_860_000, 134_000, 1e9],
    ['more used than there may be', 0, 2e9, 1e9],
    ['no room at all', 0, 0, 0],
  ])('is not believed: %s', async (_name, stored, used, quota) => {
    expect((await estimateRoom(stored, saying(used, quota)))?.plausible).toBe(false);
  });
});

describe('running installed', () => {
  const inMode = (mode: string) => (query: string) => ({ matches: query === `(display-mode: ${mode})` });
  it('is not so in a tab, nor where nothing is known', () => {
    expect(runsInstalled({ matchMedia: inMode('browser'), navigator: {} })).toBe(false);
    expect(runsInstalled({ navigator: { standalone: false } })).toBe(false);
    expect(runsInstalled({ navigator: {} })).toBe(false);
  });
  it('is told by the display mode, or by the older flag of iOS', () => {
    expect(runsInstalled({ matchMedia: inMode('standalone'), navigator: {} })).toBe(true);
    expect(runsInstalled({ matchMedia: inMode('browser'), navigator: { standalone: true } })).toBe(true);
  });
});
