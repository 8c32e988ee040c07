import { afterEach, describe, expect, it, vi } from 'vitest';
import { makePacketFile, readPacketFile } from '../../../src/device/packet-file/index.ts';
import { hashOf, MADE, PHOTOS, PICTURES, sampleJob } from '../../core/packet/sample.ts';

const parts = { entries: sampleJob().entries, made: MADE, photos: PHOTOS };
const [first = ''] = PHOTOS.map((photo) => photo.sha256);
const bytesOf = async (sha256: string): Promise<ArrayBuffer | null> => {
  const picture = PICTURES.find((bytes) => hashOf(bytes) === sha256);
  return picture ? Uint8Array.from(picture).buffer : null;
};
const allBut =
  (sha256: string) =>
  async (asked: string): Promise<ArrayBuffer | null> =>
    asked === sha256 ? null : bytesOf(asked);

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
  vi.resetModules();
});

/** Stands in for the browser's: what a test makes of it is up to `act`. */
function stubWorker(act: (worker: EventTarget, message: unknown) => void): { started: number; ended: number } {
  const seen = { started: 0, ended: 0 };
  class StubWorker extends EventTarget {
    constructor() {
      super();
      seen.started += 1;
    }
    postMessage(message: unknown): void {
      act(this, message);
    }
    terminate(): void {
      seen.ended += 1;
    }
  }
  vi.stubGlobal('Worker', StubWorker);
  return seen;
}

async function makeAndRead(): Promise<{ left: string[]; names: string[] }> {
  const left: string[] = [];
  const file = await makePacketFile(parts, allBut(first), {
    onLeftOut: (sha256, why) => left.push(`${why} ${sha256}`),
  });
  const reading = await readPacketFile(file);
  if (!reading.ok || reading.kind !== 'packet') throw new Error('not read');
  return { left, names: reading.photos.map((photo) => hashOf(new Uint8Array(photo.bytes))) };
}

const whole = { left: [`missing ${first}`], names: PHOTOS.slice(1).map((photo) => photo.sha256) };

describe('a packet file, beside the page', () => {
  /** The worker's own module, run here: its messages are cloned as a browser clones them. */
  async function realWorker(): Promise<{ seen: ReturnType<typeof stubWorker>; detached: ArrayBuffer[] }> {
    const detached: ArrayBuffer[] = [];
    let hear: (event: { data: unknown }) => void = () => undefined;
    let page: EventTarget | null = null;
    vi.stubGlobal('addEventListener', (_: string, listener: typeof hear) => {
      hear = listener;
    });
    vi.stubGlobal('postMessage', (message: unknown, { transfer }: { transfer: ArrayBuffer[] }) => {
      const data: unknown = structuredClone(message, { transfer });
      detached.push(...transfer);
      page?.dispatchEvent(new MessageEvent('message', { data }));
    });
    await import('../../../src/device/packet-file/packet-worker.ts');
    const seen = stubWorker((worker, message) => {
      page = worker;
      hear({ data: structuredClone(message) });
    });
    return { seen, detached };
  }

  it('is made and read there, photos moved and not copied', async () => {
    const { seen, detached } = await realWorker();
    expect(await makeAndRead()).toEqual(whole);
    expect(seen).toEqual({ started: 2, ended: 2 });
    expect(detached.map((buffer) => buffer.byteLength)).toEqual([0]);
  });

  it('leaves the bytes it is given to those who gave them', async () => {
    await realWorker();
    const held = new Map(await Promise.all(PHOTOS.map(async ({ sha256 }) => [sha256, await bytesOf(sha256)] as const)));
    await makePacketFile(parts, async (sha256) => held.get(sha256) ?? null);
    expect([...held.values()].map((bytes) => bytes?.byteLength)).toEqual(PHOTOS.map((photo) => photo.size));
  });

  it('tells how far it is, and what cannot be read', async () => {
    await realWorker();
    const told: number[] = [];
    const left: unknown[] = [];
    await makePacketFile(parts, () => Promise.reject(new Error('gone')), {
      onProgress: (fraction) => told.push(fraction),
      onLeftOut: (...one) => left.push(one),
    });
    expect(told).toEqual([0, 0.5, 1]);
    expect(left).toEqual(PHOTOS.map(({ sha256 }) => [sha256, 'unreadable']).sort());
  });

  it('says the same of what is no job', async () => {
    await realWorker();
    await expect(makePacketFile({ ...parts, entries: [] }, bytesOf)).rejects.toThrow(RangeError);
    expect(await readPacketFile(new Blob(['{']))).toMatchObject({ ok: false, why: 'not-json' });
  });
});

describe('where no worker helps, the page does it', () => {
  it('there is none', async () => {
    expect(await makeAndRead()).toEqual(whole);
  });

  it('it may not start', async () => {
    vi.stubGlobal('Worker', function forbidden() {
      throw new Error('SecurityError');
    });
    expect(await makeAndRead()).toEqual(whole);
  });

  it('it breaks at once', async () => {
    const seen = stubWorker((worker) => queueMicrotask(() => worker.dispatchEvent(new Event('error'))));
    expect(await makeAndRead()).toEqual(whole);
    expect(seen).toEqual({ started: 2, ended: 2 });
  });

  it('it breaks half way', async () => {
    stubWorker((worker) => {
      const say = (data: unknown): boolean => worker.dispatchEvent(new MessageEvent('message', { data }));
      say({ say: 'started' });
      say({ say: 'progress', fraction: 0.5 });
      queueMicrotask(() => say({ say: 'failed' }));
    });
    expect(await makeAndRead()).toEqual(whole);
  });

  it('it never says a word', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const seen = stubWorker(() => undefined);
    const made = makeAndRead();
    while (seen.ended < 2) await vi.advanceTimersByTimeAsync(10_000);
    expect(await made).toEqual(whole);
  });

  it('the content cannot travel', async () => {
    stubWorker((_, message) => void structuredClone(message));
    const [opened, ...others] = parts.entries;
    if (!opened) throw new Error('no entry');
    const odd = { ...opened, payload: { ...opened.payload, more: () => 1 } };
    const file = await makePacketFile({ ...parts, entries: [odd, ...others] }, bytesOf);
    expect(await readPacketFile(file, { chunk: 4096 })).toMatchObject({ ok: true, missing: [] });
  });
});
