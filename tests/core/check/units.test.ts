import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/check/index.ts';
import { distances, Job, readingId } from './build.ts';

type Place = [number, number, number];
const LAYOUT: Record<string, Place> = {
  A: [0, 950, 0],
  B: [0, -950, 0],
  C: [2250, -750, 0],
  D: [2250, 750, 0],
  E: [3000, 0, 0],
};
const FASTENERS = [30, 180, 330, 640, 790];

/** One job with a handful of slips, typed in the one system or the other. */
function job(system: 'metric' | 'imperial'): Job {
  const lengths = distances(LAYOUT);
  const made = new Job({ system }).piece({
    points: LAYOUT,
    readings: [
      ...Object.keys(lengths),
      { name: 'round', kind: 'girth', points: ['A', 'D'] },
      { name: 'h', kind: 'height', points: ['E'] },
    ],
    runs: [{ name: 'edge', points: ['A', 'B'], whole: 'A-B' }],
    flat: true,
    boxes: [['A', 'B', 'C', 'D']],
    pairs: [
      ['A', 'B'],
      ['D', 'C'],
    ],
  });
  made.takes({ ...lengths, 'B-D': (lengths['B-D'] ?? 0) - 70, round: 2000, 'A-D': (lengths['A-D'] ?? 0) + 40 });
  made.take('C-E', (lengths['C-E'] ?? 0) + 30);
  made.take('A-E', 5 * (lengths['A-E'] ?? 0));
  made.add('reading.answer', { reading: readingId('h'), answer: 'could-not', reason: 'rain' });
  return made.runDetails('edge', { line: 'fastener-line' }).fasteners('edge', FASTENERS);
}

const plain = ({ id, severity, slot, basis, subjects }: Finding) => ({ id, severity, slot, basis, subjects });

describe('inches and millimetres', () => {
  const [metric, imperial] = [job('metric').findings(), job('imperial').findings()];
  it('find the same things in the same job', () => {
    expect(imperial.map(plain)).toEqual(metric.map(plain));
  });
  it('find something in it', () => {
    // Sides that differ are not among it: the readings of which that could be said are doubted already.
    expect(new Set(metric.map(({ rule }) => rule)).size).toBeGreaterThanOrEqual(5);
    expect(metric.map(({ rule }) => rule)).not.toContain('port-starboard');
  });
  it('differ in their numbers by no more than the rounding of the tape', () => {
    for (const [index, finding] of metric.entries()) {
      for (const [name, value] of Object.entries(finding.numbers)) {
        const other = imperial[index]?.numbers[name];
        if (typeof value === 'number')
          expect(Math.abs(value - Number(other)), `${finding.rule} ${name}`).toBeLessThan(6);
        else expect(other).toBe(value);
      }
    }
  });
});
