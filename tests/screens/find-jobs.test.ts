import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { uuid } from '../../src/device/clock.ts';
import type { JobStanding, JobSummary } from '../../src/device/store/index.ts';
import { folded, ORDERS, orderJobs, searchJobs } from '../../src/screens/model/find-jobs.ts';
import { jobTitle } from '../../src/screens/model/job-words.ts';

const HEAD = uuid();
const SENT = { heads: [HEAD], at: '2026-05-04T09:30:00Z', how: 'shared' } as const;
const FULL: JobStanding = { edition: 1, steps: 20, done: 20, asked: 0, cleared: 0, voided: 0 };

const job = (more: Partial<JobSummary>): JobSummary => ({
  id: uuid(),
  name: '',
  customer: '',
  boat: '',
  pieces: [{ id: uuid(), kind: 'tension-shade', name: 'Shade' }],
  entries: 10,
  lastAt: '2026-05-04T09:30:00Z',
  heads: [HEAD],
  demo: false,
  standing: FULL,
  lastCopy: { ...SENT, heads: [...SENT.heads] },
  archived: false,
  ...more,
});
const boats = (list: readonly JobSummary[]): string[] => list.map(({ boat }) => boat);

describe('what a job is called', () => {
  it('by its own name where it has one', () => {
    expect(jobTitle({ name: 'Spring refit', customer: 'M. Loos', boat: 'Perla' })).toBe('Spring refit');
  });

  it('by customer and boat where it has none, or only the words for having none', () => {
    expect(jobTitle({ name: ' ', customer: 'M. Loos', boat: 'Perla' })).toBe('M. Loos – Perla');
    expect(jobTitle({ name: 'Job without a name', customer: '', boat: 'Perla' })).toBe('Perla');
    expect(jobTitle({ name: '', customer: '', boat: '' })).toBe('Job without a name');
  });
});

describe('search', () => {
  const list = [
    job({ customer: 'Zoë Ørn', boat: 'Mörkö' }),
    job({ customer: 'T. O’Brindle', boat: 'Second Wind' }),
    job({ name: 'Spring refit', boat: 'Perla 12', pieces: [{ id: uuid(), kind: 'table', name: 'Bow cover' }] }),
  ];

  it('without words finds everything, in the order it came', () => {
    expect(searchJobs(list, '')).toEqual(list);
    expect(searchJobs(list, ' -  ')).toEqual(list);
  });

  it.each([
    ['ZOE', 'Mörkö'],
    ['morko', 'Mörkö'],
    ['orn zo', 'Mörkö'],
    ['obrindle', 'Second Wind'],
    ["o'brindle wind", 'Second Wind'],
    ['refit', 'Perla 12'],
    ['perla cover', 'Perla 12'],
  ])('%s finds %s and no other', (text, boat) => {
    expect(boats(searchJobs(list, text))).toEqual([boat]);
  });

  it('wants every word', () => {
    expect(searchJobs(list, 'perla wind')).toEqual([]);
  });

  it('finds any text by itself, and folding twice is folding once', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), (text) => {
        const one = job({ customer: text });
        expect(searchJobs([one], text)).toEqual([one]);
        expect(folded(folded(text))).toBe(folded(text));
      }),
    );
  });
});

describe('order', () => {
  it('is the list’s own when latest comes first', () => {
    const list = [job({ boat: 'B' }), job({ boat: 'A' })];
    expect(orderJobs(list, 'latest', 'dock')).toEqual(list);
  });

  it('by name goes without case and accents, counts numbers, and puts the nameless last', () => {
    const list = ['Perla 10', '', 'étoile', 'perla 9', 'Zeta', 'Fjord'].map((boat) => job({ boat }));
    expect(boats(orderJobs(list, 'boat', 'dock'))).toEqual(['étoile', 'Fjord', 'perla 9', 'Perla 10', 'Zeta', '']);
  });

  const list = [
    job({ boat: 'done', standing: { ...FULL, cleared: 1 } }),
    job({ boat: 'waits', standing: FULL }),
    job({ boat: 'void', standing: { ...FULL, voided: 1 } }),
    job({ boat: 'half', standing: { ...FULL, done: 3 } }),
    job({ boat: 'unsent', lastCopy: null }),
    job({ boat: 'demo', demo: true }),
    job({ boat: 'asked', standing: { ...FULL, done: 19, asked: 1 } }),
  ];

  it('by need begins at the dock with what the shop asked again, and ends with what is cleared', () => {
    expect(boats(orderJobs(list, 'need', 'dock'))).toEqual([
      'asked',
      'unsent',
      'half',
      'void',
      'waits',
      'done',
      'demo',
    ]);
  });

  it('by need begins at the bench with what is to be decided', () => {
    expect(boats(orderJobs(list, 'need', 'bench'))).toEqual([
      'void',
      'waits',
      'unsent',
      'asked',
      'half',
      'done',
      'demo',
    ]);
  });

  it('loses nobody, doubles nobody, and leaves alike jobs as they were', () => {
    const jobs = fc.array(
      fc.record({ boat: fc.constantFrom('', 'A', 'b'), customer: fc.constantFrom('', 'X') }).map(job),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(jobs, fc.constantFrom(...ORDERS), (some, order) => {
        const ordered = orderJobs(some, order, 'dock');
        expect(new Set(ordered)).toEqual(new Set(some));
        expect(ordered).toHaveLength(some.length);
        expect(orderJobs(ordered, order, 'dock')).toEqual(ordered);
      }),
    );
  });
});
