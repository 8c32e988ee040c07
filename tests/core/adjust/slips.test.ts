import { describe, expect, it } from 'vitest';
import { adjust, type Network, nameSlips, seededRandom } from '../../../src/core/adjust/index.ts';
import { misreadings } from '../../../src/core/adjust/slips/misreadings.ts';
import { bowJob } from '../../bench/adjust-jobs.ts';
import { cleanTrial, sizedTrial } from '../../bench/adjust-trials.ts';

const meant = (text: string, unit: 'in' | 'mm' = 'in') =>
  misreadings(text, unit).map((m) => `${m.kind} ${Math.round(m.mm * 10) / 10}`);
const inches = (n: number): number => Math.round(n * 254) / 10;

describe('what may have been meant by a text as typed', () => {
  it('digits swapped, 6 for 9, a foot, the burnt inch', () => {
    const list = meant('86 3/4"');
    expect(list).toContain(`digits-swapped ${inches(68.75)}`);
    expect(list).toContain(`six-for-nine ${inches(89.75)}`);
    expect(list).toContain(`whole-foot ${inches(74.75)}`);
    expect(list).toContain(`burnt-inch ${inches(85.75)}`);
    expect(list).toContain(`fraction-wrong-way ${inches(86.25)}`);
  });
  it('58 for 5 ft 8 in, 510 for 5 ft 10 in, and 5.8 ft', () => {
    expect(meant('58"')).toContain(`feet-inches-as-inches ${inches(68)}`);
    expect(meant('510"')).toContain(`feet-inches-as-inches ${inches(70)}`);
    expect(meant('5.8 ft')).toContain(`decimal-feet ${inches(68)}`);
    expect(meant(`5' 8"`)).toContain(`feet-inches-as-inches ${inches(58)}`);
  });
  it('metric: 100 mm, cm for mm', () => {
    expect(meant('1240 mm', 'mm')).toContain('hundred-millimetres 1140');
    expect(meant('124 mm', 'mm')).toContain('unit-mistaken 1240');
  });
  it('never the value typed itself, nothing below zero, nothing from nonsense', () => {
    for (const m of misreadings('9 1/2"', 'in')) {
      expect(m.mm).toBeGreaterThan(0);
      expect(Math.abs(m.mm - 241.3)).toBeGreaterThan(0.5);
    }
    expect(misreadings('about a metre', 'mm')).toEqual([]);
  });
});

/** A cover with one reading typed wrong. */
function withText(network: Network, id: string, text: string, value: number): Network {
  return { ...network, readings: network.readings.map((r) => (r.id === id ? { ...r, text, value } : r)) };
}

describe('naming a slip', () => {
  const sound = bowJob(seededRandom(12), 'inches').network;
  const reading = sound.readings.find((r) => r.id === 'P2-W2');
  const text = reading?.text ?? '';
  const [whole = ''] = text.split(' ');
  const swapped = [...whole.replace('"', '')].reverse().join('');
  const wrong = text.replace(whole.replace('"', ''), swapped);
  const value = (reading?.value ?? 0) + (Number(swapped) - Number(whole.replace('"', ''))) * 25.4;

  it('says nothing about a sound job', () => {
    const report = nameSlips(sound, adjust(sound));
    expect(report).toMatchObject({ verdict: 'nothing-doubted', explanations: [], readAgain: [] });
  });
  it('names digits swapped, with the value that fits', () => {
    const network = withText(sound, 'P2-W2', wrong, value);
    const report = nameSlips(network, adjust(network));
    expect(report.verdict).toBe('named');
    expect(report.explanations[0]?.slips[0]).toMatchObject({
      reading: 'P2-W2',
      kind: 'digits-swapped',
      wouldRead: text,
    });
    expect(report.explanations[0]?.slips[0]?.value).toBeCloseTo(reading?.value ?? 0, 6);
    expect(report.readAgain[0]).toBe('P2-W2');
  });
  it('believes a reading that was read again less readily wrong', () => {
    const network = withText(sound, 'P2-W2', wrong, value);
    const confirmed = {
      ...network,
      readings: network.readings.map((r) => (r.id === 'P2-W2' ? { ...r, confirmed: true } : r)),
    };
    const before = nameSlips(network, adjust(network)).explanations.find((e) => e.slips[0]?.reading === 'P2-W2');
    const after = nameSlips(confirmed, adjust(confirmed)).explanations.find((e) => e.slips[0]?.reading === 'P2-W2');
    expect(after?.chance ?? 0).toBeLessThanOrEqual(before?.chance ?? 0);
  });
  it('never accuses a reading nothing checks', () => {
    const hanging = {
      ...sound,
      points: [...sound.points, { id: 'X', label: 'X', sides: ['port' as const, 'forward' as const] }],
      readings: [
        ...sound.readings,
        {
          id: 'X-W1',
          kind: 'straight' as const,
          points: ['X', 'W1'],
          value: 900,
          sigma: 1,
          text: '900',
          unit: 'mm' as const,
        },
        {
          id: 'X-F',
          kind: 'straight' as const,
          points: ['X', 'F'],
          value: 1100,
          sigma: 1,
          text: '1100',
          unit: 'mm' as const,
        },
      ],
    };
    const network = withText(hanging, 'P2-W2', wrong, value);
    const report = nameSlips(network, adjust(network));
    const accused = report.explanations.flatMap((e) => e.slips.map((s) => s.reading));
    expect(accused).toContain('P2-W2');
    expect(accused.some((id) => id.startsWith('X'))).toBe(false);
  });
  it('one spare: everybody ties and nobody is named', () => {
    const box: Network = {
      dimension: 2,
      points: ['A', 'B', 'C', 'D'].map((id) => ({ id, label: id })),
      readings: [
        ['A', 'B', 3000],
        ['B', 'C', 2000],
        ['C', 'D', 3000],
        ['D', 'A', 2000],
        ['A', 'C', 3605.6],
        ['B', 'D', 3640],
      ].map(([a, b, v]) => ({
        id: `${a}${b}`,
        kind: 'straight',
        points: [`${a}`, `${b}`],
        value: Number(v),
        sigma: 1.5,
      })),
    };
    const report = nameSlips(box, adjust(box));
    expect(report.verdict).toBe('tied');
    expect(new Set(report.explanations.flatMap((e) => e.slips.map((s) => s.reading))).size).toBe(6);
  });
});

// A small share of the trials in tests/bench/adjust-trials.ts, with fixed seeds.
describe('slip trials', () => {
  it('clean covers and shades are left alone', { timeout: 300_000 }, () => {
    expect(cleanTrial('bow', 21, 200).accused).toBeLessThanOrEqual(2);
    expect(cleanTrial('shade', 22, 200).accused).toBeLessThanOrEqual(2);
  });
  it('one slip, four times the smallest visible or more', { timeout: 300_000 }, () => {
    const t = sizedTrial('bow', 23, 60, 1, 4, Number.POSITIVE_INFINITY);
    expect(t.doubted).toBe(60);
    expect(t.first / t.jobs).toBeGreaterThanOrEqual(0.98);
    expect(t.inThree / t.jobs).toBeGreaterThanOrEqual(0.98);
  });
  it('twice the smallest visible or more', { timeout: 300_000 }, () => {
    const t = sizedTrial('bow', 24, 60, 1, 2, Number.POSITIVE_INFINITY);
    expect(t.doubted).toBe(60);
    expect(t.first / t.jobs).toBeGreaterThanOrEqual(0.9);
  });
  it('two slips', { timeout: 300_000 }, () => {
    const t = sizedTrial('bow', 25, 20, 2, 4, Number.POSITIVE_INFINITY);
    expect(t.first / t.jobs).toBeGreaterThanOrEqual(0.9);
  });
  it('a shade has one spare: the truth is on the short list', { timeout: 300_000 }, () => {
    const t = sizedTrial('shade', 26, 60, 1, 2, 4);
    expect(t.listed / t.doubted).toBeGreaterThanOrEqual(0.9);
    expect(t.misnamed / t.doubted).toBeLessThanOrEqual(0.05);
  });
});
