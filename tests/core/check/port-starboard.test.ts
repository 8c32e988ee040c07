import { describe, expect, it } from 'vitest';
import { Job, readingId } from './build.ts';

const key = 'port-starboard';
const POINTS = { P1: null, S1: null, P2: null, S2: null, F: null, G: null };
const PAIRS: [string, string][] = [
  ['P1', 'S1'],
  ['P2', 'S2'],
];
const job = (
  readings: (
    | string
    | { name: string; kind: 'out' | 'height' | 'girth'; points: string[]; baseline?: string[]; via?: string[] }
  )[],
) => new Job().piece({ points: POINTS, readings, pairs: PAIRS });

describe(key, () => {
  it('says nothing about sides that agree', () => {
    expect(job(['P1-P2', 'S1-S2']).takes({ 'P1-P2': 900, 'S1-S2': 910 }).of(key)).toEqual([]);
  });
  it('says nothing at the limit of 25 mm', () => {
    expect(job(['P1-P2', 'S1-S2']).takes({ 'P1-P2': 900, 'S1-S2': 925 }).of(key)).toEqual([]);
  });
  it('says nothing while one side is open', () => {
    expect(job(['P1-P2', 'S1-S2']).takes({ 'P1-P2': 900 }).of(key)).toEqual([]);
  });
  it('says nothing about a reading across the boat, which is its own mirror image', () => {
    expect(job(['P1-S1']).takes({ 'P1-S1': 2000 }).of(key)).toEqual([]);
  });
  it('says nothing about readings of different places or kinds', () => {
    const other = job(['P1-F', 'S2-F', { name: 'S1-F', kind: 'girth', points: ['S1', 'F'] }]);
    expect(other.takes({ 'P1-F': 900, 'S2-F': 1500, 'S1-F': 1200 }).of(key)).toEqual([]);
  });
  it('says nothing about half-breadths written with opposite signs', () => {
    const out = (name: string) => ({ name: `out-${name}`, kind: 'out' as const, points: [name], baseline: ['F', 'G'] });
    expect(
      job([out('P1'), out('S1')])
        .takes({ 'out-P1': 900, 'out-S1': -905 })
        .of(key),
    ).toEqual([]);
  });
  it('notes sides that differ, once, and never more than that', () => {
    expect(job(['P1-F', 'F-S1']).takes({ 'P1-F': 940, 'F-S1': 900 }).of(key)).toMatchObject([
      {
        severity: 'note',
        numbers: { port: 940, starboard: 900, difference: 40, limit: 25 },
        subjects: [{ id: readingId('P1-F') }, { id: readingId('F-S1') }],
      },
    ]);
  });
  it('compares the two diagonals', () => {
    expect(job(['P1-S2', 'S1-P2']).takes({ 'P1-S2': 2000, 'S1-P2': 2060 }).of(key)).toHaveLength(1);
  });
  it('compares girths by the points they pass, heights by their base', () => {
    const girths = job([
      { name: 'gp', kind: 'girth', points: ['P1', 'F'], via: ['P2'] },
      { name: 'gs', kind: 'girth', points: ['F', 'S1'], via: ['S2'] },
    ]);
    expect(girths.takes({ gp: 1500, gs: 1600 }).of(key)).toHaveLength(1);
    const heights = job([
      { name: 'hp', kind: 'height', points: ['P1'], baseline: ['F', 'G'] },
      { name: 'hs', kind: 'height', points: ['S1'], baseline: ['G', 'F'] },
    ]);
    expect(heights.takes({ hp: 500, hs: 440 }).of(key)).toMatchObject([{ numbers: { difference: 60 } }]);
  });
});
