import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Entry, fold, heads, type Role } from '../../src/core/job/index.ts';
import { readPacket } from '../../src/core/packet/index.ts';
import { uuid } from '../../src/device/clock.ts';
import { makePacketFile } from '../../src/device/packet-file/index.ts';
import { openStore, type Store } from '../../src/device/store/index.ts';
import { AB, begunPhone, PIECE } from '../core/job/support.ts';
import { wipe } from '../device/store/support.ts';

// Counted in acts, not in seconds.
vi.setConfig({ testTimeout: 60_000 });

const JOB = begunPhone().entries[0]?.job ?? '';

/** The app in one tab: its own modules over the one disk that all tabs share. */
async function openTab() {
  vi.resetModules();
  const services = await import('../../src/screens/model/services.ts');
  const model = await import('../../src/screens/model/open-job.ts');
  const store = await services.startServices();
  await model.loadJob(JOB);
  return { ...services, ...model, disk: store };
}
type Tab = Awaited<ReturnType<typeof openTab>>;

const tabs: Tab[] = [];
beforeEach(async () => {
  const page = { addEventListener: () => undefined, removeEventListener: () => undefined };
  vi.stubGlobal('document', { documentElement: { dataset: {} }, ...page });
  await wipe();
  const store = await openStore();
  await store.importEntries(JOB, begunPhone().entries, []);
  store.close();
  tabs.splice(0, tabs.length, await openTab(), await openTab());
});
afterEach(async () => {
  for (const tab of tabs) tab.disk.close();
  await wipe();
  vi.unstubAllGlobals();
});

const idsOf = (entries: readonly Entry[] = []): string[] => entries.map(({ id }) => id).sort();

describe('two tabs in one job', () => {
  it('lose no entry, on the disk or on the screen, however their acts fall together', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.record({ tab: fc.nat(1), wait: fc.nat(12) }), { maxLength: 12 }), async (acts) => {
        const made: Promise<Entry>[] = [];
        for (const { tab, wait } of acts) {
          const chosen = tabs[tab];
          if (chosen) made.push(chosen.act('note.add', { on: null, text: `tab ${tab}` }));
          if (wait > 6) await new Promise((resolve) => setTimeout(resolve, wait));
        }
        const done = idsOf(await Promise.all(made));
        const onDisk = await tabs[0]?.disk.readJob(JOB);
        expect(idsOf(onDisk?.entries)).toEqual(expect.arrayContaining(done));
        await vi.waitFor(() => {
          for (const { openJob } of tabs) expect(idsOf(openJob.value?.entries)).toEqual(idsOf(onDisk?.entries));
        });
      }),
      { numRuns: 15 },
    );
  });

  it('goes on from all it knows: what is done after the other tab has spoken has seen it', async () => {
    const [one, two] = tabs;
    const first = await one?.act('note.add', { on: null, text: 'one' });
    await vi.waitFor(() => expect(idsOf(two?.openJob.value?.entries)).toContain(first?.id));
    const second = await two?.act('note.add', { on: null, text: 'two' });
    expect(second?.seen).toEqual([first?.id]);
  });
});

/** A person at a device of their own. */
interface Device {
  store: Store;
  who: { name: string; role: Role };
}

const NAMES = ['Sam', 'Lin', 'Ona'];

async function devices(): Promise<Device[]> {
  return await Promise.all(
    NAMES.map(async (name, at) => {
      const store = await openStore({ name: `device-${name}` });
      await store.importEntries(JOB, begunPhone().entries, []);
      return { store, who: { name, role: at === 0 ? 'installer' : 'bench' } as const };
    }),
  );
}

async function decide({ store, who }: Device, what: number): Promise<string> {
  const { entries } = await store.readJob(JOB);
  const now = heads(entries);
  const about = [
    { kind: 'take.add', payload: { reading: AB, text: '1 m', unit: 'm', value: 1000 + what } },
    { kind: 'piece.clear', payload: { piece: PIECE, judged: now, basis: 'rules' } },
    { kind: 'finding.accept', payload: { finding: 'run-sum', basis: `${what}`, reason: 'So built' } },
    { kind: 'ask.again', payload: { piece: PIECE, note: '', items: [{ on: 'reading', id: AB, note: '' }] } },
  ][what % 4];
  const at = '2026-05-04T09:00:00Z';
  const entry = { id: uuid(), job: JOB, at, who, device: uuid(), seen: now, kind: '', payload: {}, ...about } as Entry;
  await store.append([entry]);
  return entry.id;
}

/** One hands the other a packet, as a file. */
async function hand(from: Device, to: Device): Promise<void> {
  const { entries } = await from.store.readJob(JOB);
  const made = { at: '2026-05-04T10:00:00Z', device: uuid(), by: from.who };
  const file = await makePacketFile({ entries, made, photos: [] }, async () => null);
  const read = readPacket(JSON.parse(await file.text()));
  if (!read.ok) throw new Error(read.why);
  expect((await to.store.importEntries(JOB, read.packet.logbook, [])).setAside).toEqual([]);
}

describe('three people with a device each', () => {
  it('lose no decision in handing packets round, and each names who took it', async () => {
    const step = fc.record({ from: fc.nat(2), to: fc.nat(2), what: fc.nat(7), hand: fc.boolean() });
    const people = await devices();
    const taken = new Map<string, string>();
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 8 }), async (steps) => {
        for (const { from, to, what, hand: isHanded } of steps) {
          const [one, other] = [people[from], people[to]];
          if (!one || !other) continue;
          if (isHanded && from !== to) await hand(one, other);
          else taken.set(await decide(one, what), one.who.name);
        }
      }),
      { numRuns: 6 },
    );
    for (const from of people) for (const to of people) if (from !== to) await hand(from, to);
    for (const from of people) for (const to of people) if (from !== to) await hand(from, to);
    const sheets = [];
    for (const { store } of people) {
      const { entries } = await store.readJob(JOB);
      expect(idsOf(entries)).toEqual(expect.arrayContaining([...taken.keys()].sort()));
      sheets.push(fold(entries));
      store.close();
    }
    expect(sheets[1]).toEqual(sheets[0]);
    expect(sheets[2]).toEqual(sheets[0]);
    const [sheet] = sheets;
    const signed = [
      ...(sheet?.clearances ?? []).map(({ entry, who }) => [entry, who.name]),
      ...(sheet?.acceptances ?? []).map(({ entry, who }) => [entry, who.name]),
      ...(sheet?.asks ?? []).map(({ id, who }) => [id, who.name]),
      ...(sheet?.readings ?? []).flatMap(({ takes }) => takes.map(({ id, who }) => [id, who.name])),
    ];
    expect(new Map(signed as [string, string][])).toEqual(taken);
  });
});
