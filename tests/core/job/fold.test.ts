import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Entry, fold, heads, merge, Sheet } from '../../../src/core/job/index.ts';
import { AB, begunPhone, id, logbooks, PIECE, RUN } from './support.ts';

const all = logbooks.map((phones) =>
  phones.reduce<Entry[]>((merged, phone) => merge(merged, phone.entries).entries, []),
);
const shuffled = all.chain((entries) =>
  fc.tuple(fc.constant(entries), fc.shuffledSubarray(entries, { minLength: entries.length })),
);
const reading = (entries: readonly Entry[]) => fold(entries).readings.find((r) => r.id === AB);
const take = (value: number) => ({ reading: AB, text: String(value), unit: 'mm', value }) as const;

describe('fold', () => {
  it('gives the same sheet whatever order entries arrive in', () => {
    fc.assert(
      fc.property(shuffled, ([entries, mixed]) => {
        expect(fold(mixed)).toEqual(fold(entries));
      }),
    );
  });

  it('keeps every reading of the paper that somebody practised on, and who it was', () => {
    const phone = begunPhone();
    const owner = { name: 'Ona', role: 'owner' } as const;
    const readings = [
      { of: 'long', text: '12', unit: 'in', value: 304.8 },
      { of: 'long', text: '11', unit: 'in', value: 279.4 },
    ] as const;
    const made = phone.does('practice.done', { paper: 'letter', readings: [...readings] }, { who: owner });
    expect(fold(phone.entries).practice).toEqual([
      { entry: made.id, paper: 'letter', readings, at: made.at, who: owner },
    ]);
    phone.does('undo', { entry: made.id });
    expect(fold(phone.entries).practice).toEqual([]);
    const none = phone.does('practice.done', { paper: 'letter', readings: [] });
    expect(fold(phone.entries).carried).toContainEqual({ entry: none.id, kind: 'practice.done', why: 'unreadable' });
  });

  it('gives the same sheet whatever the clocks say', () => {
    fc.assert(
      fc.property(all, fc.integer({ min: -1e9, max: 1e9 }), (entries, shift) => {
        const wrong = entries.map((e, i) => ({
          ...e,
          at: new Date(Date.UTC(2026, 0, 1) + shift * (i % 7)).toISOString(),
        }));
        const undated = (sheet: Sheet): string => JSON.stringify(sheet).replace(/"(at|opened)":"[^"]*"/g, '');
        expect(undated(fold(wrong))).toBe(undated(fold(entries)));
      }),
    );
  });

  it('always gives a sheet that its own schema accepts', () => {
    fc.assert(
      fc.property(all, (entries) => {
        expect(Sheet.safeParse(fold(entries)).success).toBe(true);
      }),
    );
  });

  it('carries every entry it does not know', () => {
    fc.assert(
      fc.property(all, (entries) => {
        const unknown = entries.filter((e) => e.kind === 'something.newer').map((e) => e.id);
        const carried = fold(entries)
          .carried.filter((c) => c.why === 'unknown-kind')
          .map((c) => c.entry);
        expect(carried.sort()).toEqual(unknown.sort());
      }),
    );
  });

  it('shows every take of somebody who took it and nobody undid or erased it', () => {
    fc.assert(
      fc.property(all, (entries) => {
        const taken = new Set(
          [...entries]
            .filter((e) => e.kind === 'undo' || e.kind === 'erase')
            .flatMap((e) => e.payload.entry ?? e.payload.entries),
        );
        const certain = entries.filter((e) => e.kind === 'take.add' && !taken.has(e.id)).map((e) => e.id);
        const { readings, setAside } = fold(entries);
        const known = [...readings, ...setAside.map((aside) => aside.reading)];
        const shown = known.flatMap((r) => r.takes.map((t) => t.id));
        if (known.length > 0) expect(shown).toEqual(expect.arrayContaining(certain));
      }),
    );
  });

  it('is total: entries with nonsense in them, rings of undos and of seeing, do not stop it', () => {
    const phone = begunPhone();
    const a = phone.does('note.add', { on: null, text: 'a' });
    const b = phone.does('undo', { entry: a.id });
    const ring = [
      { ...a, seen: [b.id] },
      { ...b, seen: [a.id], payload: { entry: b.id } },
      { ...b, id: id(900, 9), kind: 'undo', payload: { entry: id(901, 9) } },
      { ...b, id: id(901, 9), kind: 'undo', payload: { entry: id(900, 9) } },
      { ...b, id: id(902, 9), kind: 'take.add', payload: { reading: 7, value: 'ten' } },
    ];
    const sheet = fold([...begunPhone().entries, ...ring]);
    expect(sheet.carried.map((c) => c.why)).toContain('unreadable');
    expect(sheet.pieces).toHaveLength(1);
  });
});

describe('takes', () => {
  it('add up: two phones that each took one both count', () => {
    const start = begunPhone();
    const [mine, theirs] = [start.copy(), start.copy()];
    mine.does('take.add', take(100));
    theirs.does('take.add', take(102));
    const merged = reading(merge(mine.entries, theirs.entries).entries);
    expect(merged?.takes).toHaveLength(2);
    expect(merged?.value).toBe(101);
  });

  it('that are struck out stay with the reason and no longer count', () => {
    const phone = begunPhone();
    const wrong = phone.does('take.add', take(500));
    phone.does('take.add', take(100));
    phone.does('take.strike', { take: wrong.id, reason: 'misread' });
    expect(reading(phone.entries)?.value).toBe(100);
    expect(reading(phone.entries)?.takes.find((t) => t.id === wrong.id)?.struck?.reason).toBe('misread');
  });

  it('replace "could not measure" when whoever took it knew of it, and stand beside it when not', () => {
    const start = begunPhone();
    const other = start.copy();
    start.does('reading.answer', { reading: AB, answer: 'could-not', reason: 'tide' });
    expect(reading(start.entries)?.state).toBe('could-not');
    other.does('take.add', take(100));
    const beside = reading(merge(start.entries, other.entries).entries);
    expect([beside?.state, beside?.answer?.answer]).toEqual(['measured', 'could-not']);
    start.does('take.add', take(101));
    expect(reading(start.entries)?.answer).toBeNull();
  });

  it('of a reading that is not here yet wait for it, listed as loose', () => {
    const phone = begunPhone();
    const late = phone.does('take.add', take(100));
    const half = [late];
    expect(fold(half).carried).toEqual([{ entry: late.id, kind: 'take.add', why: 'loose' }]);
    expect(reading(merge(half, phone.entries).entries)?.value).toBe(100);
  });
});

describe('undo', () => {
  it('takes back one entry, can itself be taken back, and may arrive first', () => {
    const phone = begunPhone();
    const made = phone.does('take.add', take(100));
    const undo = phone.does('undo', { entry: made.id });
    expect(reading(phone.entries)?.value).toBeNull();
    const early = merge([undo], begunPhone().entries).entries;
    expect(fold(early).readings.every((r) => r.value === null)).toBe(true);
    phone.does('undo', { entry: undo.id });
    expect(reading(phone.entries)?.value).toBe(100);
  });
});

describe('answers given at the same time', () => {
  const answer = (choice: string) => ({ piece: PIECE, slot: 'berth', choice, text: '' });

  it('are quiet when one knew of the other: the later one counts, whatever the clocks say', () => {
    const phone = begunPhone();
    phone.does('question.answer', answer('water'), { at: '2031-01-01T00:00:00+00:00' });
    phone.does('question.answer', answer('lift'), { at: '1999-01-01T00:00:00+00:00' });
    const sheet = fold(phone.entries);
    expect([sheet.questions[0]?.choice, sheet.disputes]).toEqual(['lift', []]);
  });

  it('are quiet when they agree', () => {
    const start = begunPhone();
    const [a, b] = [start.copy(), start.copy()];
    a.does('question.answer', answer('water'));
    b.does('question.answer', answer('water'));
    expect(fold(merge(a.entries, b.entries).entries).disputes).toEqual([]);
  });

  it('are both kept as a dispute when they differ, until somebody who saw both answers again', () => {
    const start = begunPhone();
    const [a, b] = [start.copy(), start.copy()];
    a.does('question.answer', answer('water'));
    b.does('question.answer', answer('lift'));
    a.entries = merge(a.entries, b.entries).entries;
    const [dispute] = fold(a.entries).disputes;
    expect(dispute?.answers.map((x) => x.value).sort()).toEqual(['lift', 'water']);
    a.does('question.answer', answer('lift'));
    expect(fold(a.entries).disputes).toEqual([]);
  });
});

describe('a clearance', () => {
  const cleared = () => {
    const phone = begunPhone();
    phone.does('take.add', take(100));
    phone.does('piece.clear', { piece: PIECE, judged: heads(phone.entries), basis: 'rules' });
    return phone;
  };
  const voided = (entries: readonly Entry[]) => fold(entries).clearances[0]?.voidedBy;

  it('stands while nothing is added, and a second clearance does not void it', () => {
    const phone = cleared();
    phone.does('piece.clear', { piece: PIECE, judged: heads(phone.entries), basis: 'rules' });
    expect(voided(phone.entries)).toEqual([]);
  });

  it('is voided by anything later that changes the sheet, and by an entry of a kind nobody here knows', () => {
    const phone = cleared();
    const later = phone.does('take.add', take(101));
    expect(voided(phone.entries)).toEqual([later.id]);
    const other = cleared();
    const newer = other.does('note.add', { on: null, text: '' });
    newer.kind = 'something.newer';
    expect(voided(other.entries)).toEqual([newer.id]);
  });

  it('is voided by what it had not seen, even when a clock says that came before', () => {
    const start = begunPhone();
    const away = start.copy();
    const unseen = away.does('take.add', take(90), { at: '2001-01-01T00:00:00+00:00' });
    start.does('piece.clear', { piece: PIECE, judged: heads(start.entries), basis: 'rules' });
    expect(voided(merge(start.entries, away.entries).entries)).toEqual([unseen.id]);
  });

  it('that is taken back is gone', () => {
    const phone = cleared();
    const clear = phone.entries.find((e) => e.kind === 'piece.clear');
    phone.does('undo', { entry: clear?.id ?? '' });
    expect(fold(phone.entries).clearances).toEqual([]);
  });
});

describe('asking again', () => {
  const ask = { piece: PIECE, note: 'please', items: [{ on: 'reading', id: AB, note: 'looks long' }] } as const;

  it('stays open through answers of somebody who did not know of it, and closes with one who did', () => {
    const start = begunPhone();
    const away = start.copy();
    start.does('ask.again', { ...ask, items: [...ask.items] });
    away.does('take.add', take(100));
    start.entries = merge(start.entries, away.entries).entries;
    expect(fold(start.entries).asks[0]?.items[0]?.open).toBe(true);
    start.does('take.add', take(101));
    expect(fold(start.entries).asks[0]?.items[0]?.open).toBe(false);
  });
});

describe('runs', () => {
  it('put fasteners in the order of their rank, each with its own reading', () => {
    const phone = begunPhone();
    const add = (n: number, rank: number) => {
      const payload = {
        fastener: id(n, 5),
        run: RUN,
        reading: id(n, 6),
        rank,
        type: 'snap',
        presence: 'there',
      } as const;
      phone.does('fastener.add', payload);
      phone.does('take.add', { reading: id(n, 6), text: '', unit: 'mm', value: rank * 100 });
    };
    add(1, 1);
    add(3, 3);
    add(2, 2);
    const sheet = fold(phone.entries);
    const run = sheet.runs.find((r) => r.id === RUN);
    const values = run?.stations.map((s) => sheet.readings.find((r) => r.id === s)?.value);
    expect(values).toEqual([100, 200, 300]);
  });
});
