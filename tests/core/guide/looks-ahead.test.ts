import { describe, expect, it } from 'vitest';
import { check } from '../../../src/core/check/index.ts';
import { looksAhead } from '../../../src/core/guide/looks-ahead.ts';
import { installer, owner } from '../check/build.ts';
import { guideNamed } from '../check/demo-bow.ts';
import { Measured } from '../check/measured.ts';

const shade = guideNamed('tension-shade');
const ahead = ({ job }: Measured) => looksAhead(job.sheet(), check(job.sheet()));

describe('looks that lie ahead', () => {
  it('are none for what an installer measured', () => {
    expect(ahead(new Measured(shade, { who: installer }))).toEqual({ all: 0, done: 0, last: 0 });
  });
  it('are one more at everything needed, from before the round is over', () => {
    expect(ahead(new Measured(shade, { who: owner }))).toEqual({ all: 10, done: 0, last: 0 });
    expect(ahead(new Measured(shade, { who: owner, open: ['h-D'] }))).toEqual({ all: 10, done: 0, last: 0 });
  });
  it('are done one by one, and a third is counted apart, so that no number of them falls', () => {
    const measured = new Measured(shade, { who: owner }).read('A-B');
    expect(ahead(measured)).toEqual({ all: 10, done: 1, last: 0 });
    measured.read('A-C', { added: { 'A-C': 304.8 } });
    expect(ahead(measured)).toEqual({ all: 10, done: 2, last: 1 });
    measured.read('A-C');
    expect(ahead(measured)).toEqual({ all: 10, done: 2, last: 0 });
  });
});
