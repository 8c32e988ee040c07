import fc from 'fast-check';
import { type Entry, type EntryKind, heads, type Payload, type PieceDeclaration } from '../../../src/core/job/index.ts';

/** A deterministic UUID of the right shape; n orders them as version 7 would. */
export const id = (n: number, space = 0): string =>
  `${n.toString(16).padStart(8, '0')}-0000-7000-8000-${space.toString(16).padStart(12, '0')}`;

const JOB = id(1, 1);
const DEVICE = id(2, 2);

let counter = 0;

function entry<K extends EntryKind>(
  kind: K,
  payload: Payload<K>,
  seen: readonly string[],
  more: Partial<Entry> = {},
): Entry {
  counter += 1;
  return {
    id: id(counter, 7),
    job: JOB,
    at: '2026-05-04T09:00:00+00:00',
    who: { name: 'Sam', role: 'installer' },
    device: DEVICE,
    seen: [...seen],
    kind,
    payload: payload as Record<string, unknown>,
    ...more,
  };
}

/** A person with a phone: everything they do has seen all that their phone holds. */
export class Phone {
  entries: Entry[];

  constructor(from: readonly Entry[] = []) {
    this.entries = [...from];
  }

  does<K extends EntryKind>(kind: K, payload: Payload<K>, more: Partial<Entry> = {}): Entry {
    const made = entry(kind, payload, heads(this.entries), more);
    this.entries.push(made);
    return made;
  }

  copy(): Phone {
    return new Phone(this.entries);
  }
}

const A = id(10, 3);
const B = id(11, 3);
export const AB = id(12, 3);
export const PIECE = id(13, 3);
export const RUN = id(14, 3);

const smallPiece: PieceDeclaration = {
  id: PIECE,
  kind: 'table',
  name: 'Small piece',
  flat: true,
  points: [
    { id: A, label: 'A', slot: 'A', role: 'corner', sides: ['port'], nominal: [0, 500, 0] },
    { id: B, label: 'B', slot: 'B', role: 'corner', sides: ['starboard'], nominal: [0, -500, 0] },
  ],
  readings: [{ id: AB, slot: 'A-B', kind: 'straight', points: [A, B], needed: true }],
  runs: [{ id: RUN, slot: 'edge', points: [A, B], whole: AB, needed: false }],
  shots: [{ slot: 'photo', points: [A], needed: true }],
  questions: [{ slot: 'berth', choices: ['water', 'lift'], needed: true }],
  boxes: [],
  pairs: [[A, B]],
  walk: ['A-B', 'edge', 'photo', 'berth'],
};

export function begunPhone(): Phone {
  const phone = new Phone();
  phone.does('job.open', { name: 'A job', system: 'imperial', fraction: 16 });
  phone.does('piece.add', smallPiece);
  return phone;
}

/** Deeds several phones may do in any mixture; indexes are taken modulo what is there. */
type Deed = { phone: number; what: number; pick: number; sync: number | null; clock: number };

const deeds = fc.array(
  fc.record({
    phone: fc.nat(2),
    what: fc.nat(9),
    pick: fc.nat(50),
    sync: fc.option(fc.nat(2), { nil: null }),
    clock: fc.integer({ min: -400_000_000, max: 400_000_000 }),
  }),
  { maxLength: 30 },
);

/** Logbooks of three phones that worked on one job, exchanging packets now and then, with clocks that are wrong. */
export const logbooks: fc.Arbitrary<Phone[]> = deeds.map((list) => {
  const start = begunPhone();
  const phones = [start.copy(), start.copy(), start.copy()];
  for (const deed of list) act(phones, deed);
  return phones;
});

function act(phones: Phone[], deed: Deed): void {
  const phone = phones[deed.phone];
  if (!phone) return;
  const other = deed.sync === null ? undefined : phones[deed.sync];
  if (other && other !== phone) {
    const known = new Set(phone.entries.map((e) => e.id));
    phone.entries.push(...other.entries.filter((e) => !known.has(e.id)));
  }
  const at = new Date(Date.UTC(2026, 4, 4) + deed.clock * 1000).toISOString();
  const some = phone.entries[deed.pick % phone.entries.length];
  const takes = phone.entries.filter((e) => e.kind === 'take.add');
  const take = takes[deed.pick % Math.max(1, takes.length)];
  const more = { at };
  switch (deed.what) {
    case 0:
    case 1:
      phone.does('take.add', { reading: AB, text: String(deed.pick), unit: 'mm', value: deed.pick }, more);
      break;
    case 2:
      if (take) phone.does('take.strike', { take: take.id, reason: 'slack' }, more);
      break;
    case 3:
      phone.does(
        'question.answer',
        { piece: PIECE, slot: 'berth', choice: deed.pick % 2 ? 'water' : 'lift', text: '' },
        more,
      );
      break;
    case 4:
      if (some && some.kind !== 'undo') phone.does('undo', { entry: some.id }, more);
      break;
    case 5:
      phone.does('job.detail', { field: 'boat', value: `boat ${deed.pick % 3}` }, more);
      break;
    case 6:
      phone.does('piece.clear', { piece: PIECE, judged: heads(phone.entries), basis: 'rules' }, more);
      break;
    case 7:
      phone.does('reading.answer', { reading: AB, answer: 'could-not', reason: 'tide' }, more);
      break;
    case 8:
      if (take) phone.does('erase', { entries: [take.id], reason: 'asked' }, more);
      break;
    default: {
      const made = phone.does('note.add', { on: null, text: `note ${deed.pick}` }, more);
      made.kind = 'something.newer';
    }
  }
}
