import { describe, expect, it } from 'vitest';
import { distances, Job, readingId } from './build.ts';

const key = 'implausible-value';
type Place = [number, number, number];
const LAYOUT: Record<string, Place> = { A: [0, 950, 0], B: [0, -950, 0], C: [2250, 750, 0], D: [2250, -750, 0] };
const TRUE = distances(LAYOUT);
const plain = (kind: 'straight' | 'girth' = 'straight') =>
  new Job().piece({ points: { A: null, B: null }, readings: [{ name: 'A-B', kind }] });
const onLayout = () => new Job().piece({ points: LAYOUT, readings: Object.keys(TRUE) });

describe(key, () => {
  it.each([20, 300, 2500, 24_000])('says nothing about a straight of %i mm that has no layout', (mm) => {
    expect(plain().takes({ 'A-B': mm }).of(key)).toEqual([]);
  });
  it.each([0.3, 0.6, 1, 1.7, 3.8])('says nothing about a boat %d times the layout', (scale) => {
    const job = onLayout();
    for (const [name, mm] of Object.entries(TRUE)) job.take(name, mm * scale);
    expect(job.of(key)).toEqual([]);
  });
  it('says nothing about a piece much longer for its width than the layout', () => {
    const long = distances({ ...LAYOUT, C: [5000, 750, 0], D: [5000, -750, 0] });
    expect(onLayout().takes(long).of(key)).toEqual([]);
  });
  it('says nothing about points the layout has close together', () => {
    const job = new Job().piece({ points: { A: [0, 0, 0], B: [100, 0, 0] }, readings: ['A-B'] });
    expect(job.takes({ 'A-B': 900 }).of(key)).toEqual([]);
  });
  it('says nothing about heights of zero or below', () => {
    const job = new Job().piece({ points: { A: null }, readings: [{ name: 'h', kind: 'height', points: ['A'] }] });
    expect(job.takes({ h: 0 }).of(key)).toEqual([]);
    job.add('take.strike', { take: job.entries.at(-1)?.id, reason: '' });
    expect(job.takes({ h: -120 }).of(key)).toEqual([]);
  });
  it('says nothing about a first fastener at the very corner', () => {
    const job = new Job().piece({ points: { A: null, B: null }, runs: [{ name: 'edge', points: ['A', 'B'] }] });
    expect(job.fasteners('edge', [0, 150]).of(key)).toEqual([]);
  });

  it('stops at a length that cannot be', () => {
    expect(plain().takes({ 'A-B': 0 }).of(key)).toMatchObject([{ severity: 'stop', numbers: { value: 0 } }]);
    expect(plain('girth').takes({ 'A-B': -20 }).of(key)).toMatchObject([{ severity: 'stop' }]);
  });
  it('stops at a gap of nothing', () => {
    const job = new Job().piece({ points: { A: null, B: null }, runs: [{ name: 'edge', points: ['A', 'B'] }] });
    expect(job.runDetails('edge', { manner: 'gaps' }).fasteners('edge', [30, 0]).of(key)).toMatchObject([
      { severity: 'stop', subjects: [{ id: readingId('edge 1') }] },
    ]);
  });
  it('doubts millimetres typed as inches, without a layout, and names the unit', () => {
    expect(plain().type('A-B', '3755', 'in').of(key)).toMatchObject([
      { severity: 'doubt', numbers: { unit: 'mm', instead: 3755, expected: null } },
    ]);
  });
  it.each([
    ['A-B', '190', 'mm', 'cm', 1900],
    ['A-B', '1900', 'in', 'mm', 1900],
    ['A-B', '75', 'ft', 'in', 1905],
    ['A-B', '62', 'ft', 'in', 1574.8],
    ['A-B', '1900', 'cm', 'mm', 1900],
    ['A-B', '2', 'in', 'm', 2000],
    ['A-B', '6', 'in', 'ft', 1828.8],
    ['A-B', '62', 'mm', 'in', 1574.8],
    ['A-C', '78', 'cm', 'in', null],
    ['A-B', '510', 'in', 'feet-inches', 1778],
  ] as const)('reads %s typed as %s %s: %s would fit', (name, text, unit, fits, instead) => {
    const findings = onLayout().type(name, text, unit).of(key);
    if (instead === null) expect(findings).toEqual([]);
    else {
      expect(findings).toMatchObject([{ severity: 'doubt', numbers: { unit: fits, quantity: 'length' } }]);
      expect(findings[0]?.numbers.instead).toBeCloseTo(instead, 6);
    }
  });
  it('doubts a value no unit would mend, without naming one', () => {
    expect(onLayout().type('A-B', '9000', 'mm').of(key)).toMatchObject([{ numbers: { unit: null, instead: null } }]);
  });
  it('finds one centimetre reading among inches once the others agree', () => {
    const job = onLayout();
    const { 'A-B': cloth, ...others } = TRUE;
    job.takes(others).type('A-B', String(Math.round((cloth ?? 0) / 10)), 'in');
    expect(job.of(key)).toMatchObject([
      { severity: 'doubt', subjects: [{ id: readingId('A-B') }], numbers: { unit: 'cm', instead: 1900 } },
    ]);
  });
  it('doubts a lean nothing on a boat has', () => {
    const job = new Job().piece({ points: { A: null }, readings: [{ name: 'lean', kind: 'lean', points: ['A'] }] });
    job.add('take.add', { reading: readingId('lean'), text: '75', unit: 'deg', value: (75 * Math.PI) / 180 });
    expect(job.of(key)).toMatchObject([{ severity: 'doubt', numbers: { quantity: 'angle', unit: null } }]);
  });
});
