import { describe, expect, it } from 'vitest';
import { Job, readingId } from './build.ts';

const key = 'girth-short';
const girth = { name: 'round', kind: 'girth' as const, points: ['A', 'D'], via: ['B', 'C'] };
const job = (readings: string[] = []) =>
  new Job().piece({ points: { A: null, B: null, C: null, D: null }, readings: [girth, ...readings] });

describe(key, () => {
  it('says nothing about a girth with no chord to compare', () => {
    expect(job().takes({ round: 10 }).of(key)).toEqual([]);
  });
  it('says nothing about a girth longer than its chord, however much', () => {
    expect(job(['A-D']).takes({ round: 4000, 'A-D': 2000 }).of(key)).toEqual([]);
  });
  it('says nothing about a girth as long as its chord', () => {
    expect(job(['A-D']).takes({ round: 2000, 'A-D': 2000 }).of(key)).toEqual([]);
  });
  it('says nothing about one a little shorter: the tapes explain it', () => {
    // 4 · √(5² + 1.6²) = 21 mm.
    expect(job(['A-D']).takes({ round: 1985, 'A-D': 2000 }).of(key)).toEqual([]);
  });
  it('says nothing about chords that do not reach from end to end', () => {
    expect(job(['A-B', 'B-C']).takes({ round: 1000, 'A-B': 900, 'B-C': 900 }).of(key)).toEqual([]);
  });
  it('stops at a girth shorter than its chord', () => {
    const [finding] = job(['A-D']).takes({ round: 1900, 'A-D': 2000 }).of(key);
    expect(finding).toMatchObject({
      severity: 'stop',
      slot: 'round',
      numbers: { girth: 1900, chords: 2000, short: 100 },
    });
    expect(finding?.subjects.map(({ id }) => id)).toEqual([readingId('round'), readingId('A-D')]);
  });
  it('stops at a girth longer than its chord but shorter than the chords along it', () => {
    const chords = { 'A-B': 800, 'B-D': 1500, 'A-D': 1900, 'A-C': 300 };
    expect(
      job(Object.keys(chords))
        .takes({ round: 2000, ...chords })
        .of(key),
    ).toMatchObject([{ numbers: { chords: 2300 } }]);
  });
  it('follows the points of the run whose whole it is', () => {
    const whole = { name: 'whole', kind: 'girth' as const, points: ['A', 'C'], run: 'edge' };
    const made = new Job().piece({
      points: { A: null, B: null, C: null },
      readings: [whole, 'A-B', 'B-C'],
      runs: [{ name: 'edge', points: ['A', 'B', 'C'], whole: 'whole' }],
    });
    expect(made.takes({ whole: 1500, 'A-B': 1000, 'B-C': 1000 }).of(key)).toMatchObject([
      { numbers: { chords: 2000 } },
    ]);
  });
});
