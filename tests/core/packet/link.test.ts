import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { type Entry, fold, heads, merge, type Payload } from '../../../src/core/job/index.ts';
import {
  codeInText,
  entriesForDock,
  type JobRequest,
  type Link,
  linkAddress,
  readLink,
  requestEntries,
  requestFault,
  requestOf,
  writeLink,
} from '../../../src/core/packet/link/index.ts';
import { writeFrame } from '../../../src/core/packet/link/write-frame.ts';
import { AB, begunPhone, C, id, PIECE } from '../job/support.ts';

const typical: JobRequest = {
  job: id(1, 80),
  device: id(2, 80),
  at: '2026-05-04T09:00:00+02:00',
  by: 'Robin',
  system: 'imperial',
  fraction: 16,
  customer: 'R. Sample',
  boat: 'Perla',
  pieces: [{ kind: 'tension-shade', name: 'Tension shade', answers: {} }],
  shop: 'A canvas shop',
  contact: '555 0100, shop@example.org',
  note: 'Please measure before the boat is moved. Two people make it easier.',
  language: 'en',
  measurer: 'owner',
};
const written = (link: Link): string => writeLink(link) ?? '';
const ofRequest = (request: JobRequest): string => written({ t: 'request', request });
const why = async (code: string): Promise<string> => {
  const read = await readLink(code);
  if (!read.ok) return read.why;
  return (read.link.t === 'request' && requestFault(read.link.request)) || 'taken';
};
/** As on a shop's own network, without a secure context, and in a browser that cannot inflate. */
const withoutHelp = async (work: () => Promise<void>): Promise<void> => {
  vi.stubGlobal('crypto', {});
  vi.stubGlobal('DecompressionStream', undefined);
  await work().finally(() => vi.unstubAllGlobals());
};

const uuid = fc.uuid({ version: [4, 5, 7] });
/** Whatever somebody might type, and what somebody might plant. */
const text = (maxLength: number) =>
  fc.oneof(
    fc.string({ maxLength, unit: 'grapheme' }).filter((one) => one.length <= maxLength),
    fc.constantFrom(
      '',
      '~',
      '~~',
      '<img src=x onerror=alert(1)>',
      '</script>',
      '"]}',
      '\u202e\u0000',
      '#/r/VAE',
      id(3, 3),
    ),
  );
const piece = fc.constantFrom(...guides).map(({ kind, walk }) => ({
  kind,
  name: 'A piece',
  answers: Object.fromEntries(
    walk.flatMap((step) => (step.on === 'question' ? [[step.slot, step.choices[0] ?? '']] : [])).slice(0, 4),
  ),
}));
const anyRequest: fc.Arbitrary<JobRequest> = fc.record({
  job: uuid,
  device: uuid,
  at: fc.constantFrom('2026-05-04T09:00:00+02:00', '2026-12-31T23:59:59Z'),
  by: text(80),
  system: fc.constantFrom('imperial' as const, 'metric' as const),
  fraction: fc.constantFrom(8 as const, 16 as const, 32 as const),
  customer: text(120),
  boat: text(120),
  pieces: fc.array(piece, { minLength: 1, maxLength: 4 }),
  shop: text(120),
  contact: text(200),
  note: text(1000),
  language: fc.constantFrom('en', 'es', 'es-MX', 'zh-Hant-TW'),
  measurer: fc.constantFrom('owner' as const, 'installer' as const),
  limits: fc.constantFrom({ shop: 'A shop', hem: 38, tolerance: { line: 5, corner: 10 } }, { trim: 12.5 }),
});

/** A job that came from the dock, and what the shop did with it since. */
function askedJob(notes: readonly string[], more: Partial<Entry['payload']> = {}): Entry[] {
  const phone = begunPhone();
  phone.does('take.add', { reading: AB, text: '40', unit: 'mm', value: 40 });
  const shop = { who: { name: 'Robin', role: 'bench' as const }, device: id(9, 9) };
  phone.does('reading.add', { piece: PIECE, reading: { ...added, ...more } }, shop);
  for (const note of notes)
    phone.does('ask.again', { piece: PIECE, note, items: [{ on: 'reading', id: added.id, note }] }, shop);
  return phone.entries;
}
const added: Payload<'reading.add'>['reading'] = {
  id: C,
  slot: null,
  kind: 'straight',
  points: [id(10, 3), id(11, 3)],
  needed: false,
};
const ofAsk = (entries: readonly Entry[]): Link => ({
  t: 'ask',
  ask: { job: entries[0]?.job ?? '', entries: entriesForDock(entries) },
});

describe('a link', () => {
  it('carries any request there and back', async () => {
    await fc.assert(
      fc.asyncProperty(anyRequest, async (request) => {
        expect(await readLink(ofRequest(request))).toEqual({ ok: true, link: { t: 'request', request } });
      }),
    );
    expect(await readLink(ofRequest(typical))).toEqual({ ok: true, link: { t: 'request', request: typical } });
  });

  it('carries any asking there and back, unknown fields included', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(text(400), { minLength: 1, maxLength: 5 }), async (notes) => {
        const link = ofAsk(askedJob(notes).map((entry) => ({ ...entry, later: ['~x', notes[0], id(5, 5)] })));
        expect(await readLink(written(link))).toEqual({ ok: true, link });
      }),
    );
  });

  it('is refused when any one character is changed or lost', async () => {
    for (const code of [ofRequest(typical), written(ofAsk(askedJob(['Was the pole leaning?'])))]) {
      for (let at = 0; at < code.length; at++) {
        const lost = code.slice(0, at) + code.slice(at + 1);
        expect((await readLink(lost)).ok).toBe(false);
        for (const other of 'AZaz09-_ %') {
          if (code[at] !== other)
            expect((await readLink(code.slice(0, at) + other + code.slice(at + 1))).ok).toBe(false);
        }
      }
    }
  });

  it('is refused when characters change places, are doubled or added', async () => {
    const code = ofRequest(typical);
    await fc.assert(
      fc.asyncProperty(fc.nat(code.length - 1), fc.nat(code.length - 1), fc.string(), async (a, b, more) => {
        const [first, last] = [Math.min(a, b), Math.max(a, b)];
        const swapped =
          code.slice(0, first) + code[last] + code.slice(first + 1, last) + code[first] + code.slice(last + 1);
        if (first < last && swapped !== code) expect((await readLink(swapped)).ok).toBe(false);
        const grown = code.slice(0, first) + more + code.slice(first);
        if (more !== '') expect((await readLink(grown)).ok).toBe(false);
        if (first < last)
          expect((await readLink(code.slice(0, last) + code.slice(first, last) + code.slice(last))).ok).toBe(false);
      }),
      { numRuns: 500 },
    );
  });

  it('says what is wrong with it', async () => {
    const code = ofRequest(typical);
    const body = (content: unknown, version = 1): string => writeFrame(JSON.stringify(content), version) ?? '';
    expect(await why('')).toBe('foreign');
    expect(await why('bench')).toBe('foreign');
    expect(await why(`A${code.slice(1)}`)).toBe('foreign');
    expect(await why(code.slice(0, -1))).toBe('cut-off');
    expect(await why(code.slice(0, 40))).toBe('cut-off');
    expect(await why(`${code.slice(0, 40)}${code[40] === 'A' ? 'B' : 'A'}${code.slice(41)}`)).toBe('damaged');
    expect(await why(`${code}z`)).toBe('damaged');
    expect(await why(body({ t: 'r' }, 2))).toBe('newer');
    expect(await why(body({ t: 'q' }))).toBe('newer');
    expect(await why(body({ t: 'r', p: [['sail-bag', 'Sail bag']] }))).toBe('newer');
    expect(await why(ofRequest({ ...typical, pieces: [{ kind: 'free', name: 'No guide for it', answers: {} }] }))).toBe(
      'newer',
    );
    for (const odd of [
      null,
      7,
      [],
      { t: 'r' },
      { t: 'r', p: [null] },
      { t: 'r', p: 'x' },
      { t: 'a' },
      { t: 'a', e: [null] },
    ])
      expect(await why(body(odd)), JSON.stringify(odd)).toMatch(/unreadable|newer/);
    expect(await why(writeFrame('not json', 1) ?? '')).toBe('unreadable');
    expect(await why(body(JSON.parse('{"t":"r","__proto__":{"p":1}}')))).toBe('unreadable');
    expect(await why(ofRequest({ ...typical, limits: { fastenerGap: { min: 300, max: 200 } } }))).toBe('unreadable');
  });

  it('never unpacks more than it may, and never throws', async () => {
    expect(await why(writeFrame('9'.repeat(2_000_000), 1) ?? '')).toBe('damaged');
    await fc.assert(
      fc.asyncProperty(fc.string(), async (any) => {
        expect((await readLink(any)).ok).toBe(false);
      }),
    );
    await fc.assert(
      fc.asyncProperty(fc.json(), async (json) => {
        expect((await readLink(writeFrame(json, 1) ?? '')).ok).toBe(false);
      }),
    );
  });

  it('is read the same where the browser has neither a hash nor an inflation', () =>
    withoutHelp(async () => {
      const code = ofRequest(typical);
      expect(await readLink(code)).toEqual({ ok: true, link: { t: 'request', request: typical } });
      expect(await why(`${code.slice(0, 40)}${code[40] === 'A' ? 'B' : 'A'}${code.slice(41)}`)).toBe('damaged');
      expect(await why(writeFrame('9'.repeat(2_000_000), 1) ?? '')).toBe('damaged');
      await fc.assert(
        fc.asyncProperty(anyRequest, async (request) => {
          expect(await readLink(ofRequest(request))).toEqual({ ok: true, link: { t: 'request', request } });
        }),
      );
    }));

  it('takes nothing back and speaks for nobody at the dock', async () => {
    const entries = entriesForDock(askedJob(['Again, please']));
    const forged = (change: Partial<Entry>): string => {
      const last = entries.at(-1) as Entry;
      return written({
        t: 'ask',
        ask: { job: last.job, entries: [...entries, { ...last, id: id(77, 7), ...change }] },
      });
    };
    expect(await why(forged({}))).toBe('taken');
    expect(await why(forged({ kind: 'erase', payload: { entries: [AB], reason: 'gone' } }))).toBe('unreadable');
    expect(await why(forged({ who: { name: 'Sam', role: 'installer' } }))).toBe('unreadable');
    const { job } = entries[0] as Entry;
    expect(
      await why(written({ t: 'ask', ask: { job, entries: entries.filter(({ kind }) => kind !== 'ask.again') } })),
    ).toBe('unreadable');
  });

  it('is found in a message, with words round it and lines broken by mail', () => {
    const code = ofRequest(typical);
    const address = linkAddress('https://shop.example.org/app/', code);
    expect(codeInText(address)).toBe(code);
    expect(codeInText(`Please open ${address}. Thank you!`)).toBe(code);
    expect(codeInText(`Open\n${address.replace(/.{60}/g, '$&\r\n')}\nRobin`)).toBe(code);
    expect(codeInText('https://shop.example.org/app/#/bench')).toBeNull();
    expect(codeInText('https://shop.example.org/app/#/r/abc def')).toBe('abc');
  });

  it('stays short: what is usual fits a code that a phone reads at arm’s length', () => {
    const lengths = {
      request: ofRequest(typical).length,
      'request for three pieces, with limits': ofRequest({
        ...typical,
        pieces: guides.slice(0, 3).map(({ kind }) => ({ kind, name: kind, answers: {} })),
        limits: {
          shop: 'A canvas shop',
          hem: 38,
          tolerance: { line: 5, corner: 10 },
          fastenerGap: { min: 80, max: 150 },
        },
      }).length,
      'one thing asked again': written(ofAsk(askedJob(['Was the pole leaning?']))).length,
      'ten askings': written(ofAsk(askedJob(Array.from({ length: 10 }, (_, i) => `Please look at it again, ${i}`))))
        .length,
    };
    console.log('characters of a link:', lengths);
    expect(lengths.request).toBeLessThan(460);
    expect(lengths['request for three pieces, with limits']).toBeLessThan(620);
    expect(lengths['one thing asked again']).toBeLessThan(620);
    expect(lengths['ten askings']).toBeLessThan(1600);
    const many = askedJob(
      Array.from(
        { length: 200 },
        (_, i) => fc.sample(fc.string({ minLength: 400, maxLength: 400 }), { numRuns: 1, seed: i })[0] ?? '',
      ),
    );
    expect(writeLink(ofAsk(many))).toBeNull();
  });
});

describe('the job a request begins', () => {
  it('is the same wherever and however often it is begun', async () => {
    await fc.assert(
      fc.asyncProperty(anyRequest, async (request) => {
        const here = requestEntries(request);
        const read = await readLink(ofRequest(request));
        const there = read.ok && read.link.t === 'request' ? requestEntries(read.link.request) : [];
        expect(merge(here, there)).toEqual({ entries: merge(here, []).entries, added: [], setAside: [] });
        expect(heads(here)).toHaveLength(1);
        const again = requestOf(here);
        expect(again && requestEntries(again)).toEqual(here);
        expect(new Set(here.map(({ id: of }) => of)).size).toBe(here.length);
      }),
      { numRuns: 50 },
    );
  });

  it('holds what was asked for, understood to the last entry', () => {
    const answers = { 'no-such-question': 'yes' };
    for (const { kind, walk } of guides) {
      const question = walk.find((step) => step.on === 'question');
      const [slot, choice] =
        question?.on === 'question' ? [question.slot, question.choices[0] ?? ''] : ['none', 'none'];
      const sheet = fold(
        requestEntries({
          ...typical,
          pieces: [{ kind, name: 'Wanted', answers: { ...answers, [slot]: choice } }],
          limits: { shop: 'A canvas shop' },
        }),
      );
      expect(sheet.carried).toEqual([]);
      expect(sheet.disputes).toEqual([]);
      expect(sheet).toMatchObject({
        job: typical.job,
        system: 'imperial',
        fraction: 16,
        details: { name: 'R. Sample – Perla', customer: 'R. Sample', boat: 'Perla' },
        pieces: [{ kind, name: 'Wanted' }],
        shop: { shop: 'A canvas shop' },
        request: {
          shop: typical.shop,
          contact: typical.contact,
          note: typical.note,
          language: 'en',
          measurer: 'owner',
        },
      });
      expect(sheet.questions.find((one) => one.slot === slot)?.choice ?? 'none').toBe(choice);
    }
  });

  it('has one piece where two versions of the app declare it otherwise, and nothing is set aside', () => {
    const here = requestEntries(typical);
    const other = here.map((entry) => {
      if (entry.kind !== 'piece.add') return entry;
      const { readings, ...rest } = entry.payload as Payload<'piece.add'>;
      return { ...entry, id: id(99, 99), payload: { ...rest, readings: readings.slice(1), name: 'Older' } };
    });
    const merged = merge(here, other);
    expect(merged.setAside).toEqual([]);
    expect(fold(merged.entries).pieces).toHaveLength(1);
    expect(fold(merged.entries).readings.length).toBe(fold(here).readings.length);
  });
});

describe('what the dock may lack', () => {
  it('is what the shop did since, and nothing it has seen', () => {
    const entries = askedJob(['Again, please']);
    expect(entriesForDock(entries).map(({ kind }) => kind)).toEqual(['reading.add', 'ask.again']);
    const phone = begunPhone();
    phone.entries = [...entries];
    phone.does('take.add', { reading: C, text: '41', unit: 'mm', value: 41 });
    expect(entriesForDock(phone.entries)).toEqual([]);
  });
});
