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

export const C = id(15, 3);
const ADDED = [C, id(16, 3)];
const ASKED = [id(17, 3), id(18, 3), id(19, 3)];
const AFTER = ['A-B', 'edge', 'nowhere', ...ASKED];
const cleat = { obstruction: id(20, 3), piece: PIECE, kind: 'cleat' } as const;

const pick = <T>(list: readonly T[], n: number): T => list[n % list.length] as T;

const pointOf = (n: number): Payload<'point.add'>['point'] => ({
  id: pick(ADDED, n),
  label: `P${n}`,
  slot: null,
  role: 'edge',
  sides: [],
  nominal: null,
  ...(n % 3 === 0 ? { replaces: A } : {}),
});

const readingOf = (n: number): Payload<'reading.add'>['reading'] => ({
  id: pick(ASKED, n),
  slot: null,
  kind: 'straight',
  points: [A, pick([B, ...ADDED], n)],
  needed: true,
  ...(n % 4 === 0 ? { when: { question: 'berth', is: ['water'] } } : {}),
});

function stretchOf(n: number): Payload<'stretch.set'> {
  const run = RUN;
  const from = pick([A, C, B], n);
  if (n % 3 === 0) return { run, from, field: 'begins', value: n % 2 ? 'yes' : 'no' };
  return n % 3 === 1
    ? { run, from, field: 'closes', value: n % 2 ? 'zip' : 'snap' }
    : { run, from, field: 'count', value: String(n) };
}

const treatmentOf = (n: number): Payload<'obstruction.set'> => ({
  obstruction: cleat.obstruction,
  field: 'treatment',
  value: n % 2 ? 'cut-out' : 'covered',
});

/** Deeds several phones may do in any mixture; indexes are taken modulo what is there. */
type Deed = { phone: number; what: number; pick: number; sync: number | null; clock: number };

const deeds = fc.array(
  fc.record({
    phone: fc.nat(2),
    what: fc.nat(19),
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
    case 10:
      phone.does('point.add', { piece: PIECE, point: pointOf(deed.pick) }, more);
      break;
    case 11:
      phone.does('point.drop', { piece: PIECE, point: pick([A, B, ...ADDED], deed.pick), reason: 'not there' }, more);
      break;
    case 12:
      phone.does('point.label', { point: pick([A, ...ADDED], deed.pick), label: `L${deed.pick}` }, more);
      break;
    case 13:
      phone.does('reading.add', { piece: PIECE, reading: readingOf(deed.pick), after: pick(AFTER, deed.pick) }, more);
      break;
    case 14:
      phone.does('reading.drop', { reading: pick([AB, ...ASKED], deed.pick), reason: 'not needed' }, more);
      break;
    case 15:
      phone.does('run.points', { run: RUN, points: deed.pick % 2 ? [A, C, B] : [A, B, C] }, more);
      break;
    case 16:
      phone.does('stretch.set', stretchOf(deed.pick), more);
      break;
    case 17:
      phone.does('obstruction.add', { ...cleat, label: `C${deed.pick}`, point: null }, more);
      break;
    case 18:
      if (deed.pick % 4 === 0) phone.does('obstruction.drop', { obstruction: cleat.obstruction, reason: 'gone' }, more);
      else phone.does('obstruction.set', treatmentOf(deed.pick), more);
      break;
    default: {
      const made = phone.does('note.add', { on: null, text: `note ${deed.pick}` }, more);
      made.kind = 'something.newer';
    }
  }
}
