import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitOver } from '../../../src/core/adjust/index.ts';
import { changesBetween, judge, twinsBySlot } from '../../../src/core/check/index.ts';
import { guideNamed } from './demo-bow.ts';
import { Measured } from './measured.ts';

type Vector = readonly [number, number, number];
const judged = (made: Measured) => {
  const sheet = made.job.sheet();
  return { sheet, ...judge(sheet) };
};
const bow = (manner: ConstructorParameters<typeof Measured>[1] = {}) => new Measured(guideNamed('open-bow'), manner);

describe('what changed between two states of a job', () => {
  it('is nothing between a state and itself', () => {
    const state = judged(bow());
    const [changes] = changesBetween(state, state);
    expect(changes).toMatchObject({ readings: [], came: [], gone: [] });
    expect(changes?.fit?.rms).toBeCloseTo(0, 6);
  });

  it('names the reading that was read again, the finding that went, and how far its point moved', () => {
    const made = bow({ added: { 'W1-T': 254 } });
    const before = judged(made);
    const wrong = made.job.sheet().readings.find(({ id }) => id === made.reading('W1-T'));
    made.job.add('take.strike', { take: wrong?.takes[0]?.id ?? '', reason: 'misread' });
    made.read('W1-T', { added: {} });
    const after = judged(made);
    const [changes] = changesBetween(before, after);
    expect(changes?.readings).toEqual([
      { reading: made.reading('W1-T'), before: wrong?.value, after: (wrong?.value ?? 0) - 254 },
    ]);
    expect(changes?.gone.map(({ rule }) => rule)).toContain('reading-doubted');
    // What a contradiction had drowned is heard now: G has only its one height.
    expect(changes?.came.map(({ rule }) => rule)).toEqual(['reading-unchecked']);
  });

  it('lays the shapes that are shown over each other: without the reading that does not fit, and says so', () => {
    const made = bow({ added: { 'W1-T': 254 } });
    const before = judged(made);
    const wrong = made.job.sheet().readings.find(({ id }) => id === made.reading('W1-T'));
    made.job.add('take.strike', { take: wrong?.takes[0]?.id ?? '', reason: 'misread' });
    made.read('W1-T', { added: {} });
    const [changes] = changesBetween(before, judged(made));
    expect(changes).toMatchObject({ bent: false, without: { before: [made.reading('W1-T')], after: [] } });
    // The one bad tape is not in either, so nothing moved by more than a tape is sure of.
    expect(changes?.fit?.rms).toBeLessThan(1);
  });

  it('finds the same parts of a sister boat by their slots, and the point that lies elsewhere on her', () => {
    const first = judged(bow());
    const sister = judged(bow({ place: (slot, [x, y, z]) => (slot === 'P2' ? [x + 60, y, z] : [x, y, z]) }));
    const renamed = JSON.parse(
      JSON.stringify(sister.sheet).replace(/[0-9a-f]{8}-[0-9a-f]{4}-7/g, (id) => id.replace('-7', '-4')),
    );
    const other = { sheet: renamed, ...judge(renamed) };
    const [changes] = changesBetween(first, other, twinsBySlot(first.sheet, renamed));
    const label = (id: string) => other.sheet.points.find((point: { id: string }) => point.id === id)?.label;
    const [furthest] = [...(changes?.fit?.gaps ?? [])].sort((a, b) => b[1] - a[1]);
    expect(label(furthest?.[0] ?? '')).toBe('P2');
    expect(furthest?.[1]).toBeGreaterThan(40);
    expect(changes?.readings.length).toBeGreaterThan(3);
  });
});

const coordinate = fc.double({ min: -3000, max: 3000, noNaN: true });
const places: fc.Arbitrary<Vector[]> = fc.array(fc.tuple(coordinate, coordinate, coordinate), {
  minLength: 4,
  maxLength: 12,
});
const named = (list: readonly Vector[]) => new Map(list.map((place, i) => [`${i}`, place]));

describe('one shape laid over another', () => {
  it('leaves no gap when the other is the same shape turned and shifted', () => {
    fc.assert(
      fc.property(places, fc.double({ min: -3, max: 3, noNaN: true }), (list, angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const turned = list.map(([x, y, z]): Vector => [c * x - s * y + 500, s * x + c * y - 80, z + 30]);
        expect(fitOver(named(list), named(turned), 3)?.rms).toBeLessThan(1e-3);
      }),
    );
  });

  it('never mirrors: a mirrored shape keeps gaps', () => {
    const list: Vector[] = [
      [0, 0, 0],
      [1000, 0, 0],
      [0, 700, 0],
      [200, 300, 0],
    ];
    const mirrored = list.map(([x, y, z]): Vector => [x, -y, z]);
    expect(fitOver(named(list), named(mirrored), 2)?.rms).toBeGreaterThan(100);
  });

  it('gives no answer for too few points', () => {
    expect(fitOver(named([[0, 0, 0]]), named([[1, 1, 0]]), 2)).toBeNull();
  });
});
