import { describe, expect, it } from 'vitest';
import { exchangeOf, judge } from '../../../src/core/check/index.ts';
import { owner } from './build.ts';
import { demoBow, guideNamed } from './demo-bow.ts';
import { Measured } from './measured.ts';

const shade = guideNamed('tension-shade');

function exchangeIn(measured: Measured) {
  const judgement = judge(measured.job.sheet()).pieces.get(measured.piece.id);
  const found = judgement ? exchangeOf(judgement) : null;
  const label = (id: string) => measured.piece.points.find((point) => point.id === id)?.label ?? '';
  return found && { points: found.points.map(label).sort().join('-'), pairs: found.pairs.length };
}

/** A shade of which an owner wrote these two on each other's line, at both looks. */
function mixedUp(a: string, b: string): Measured {
  const exact = new Measured(shade, { who: owner });
  const added = { [a]: exact.length(b) - exact.length(a), [b]: exact.length(a) - exact.length(b) };
  return new Measured(shade, { who: owner, added }).read(a, { added }).read(b, { added });
}

describe('the one exchange of two points', () => {
  it('is not thought of where everything fits', () => {
    expect(exchangeIn(new Measured(shade, { who: owner }))).toBeNull();
    expect(exchangeIn(new Measured(guideNamed('open-bow')))).toBeNull();
  });

  it('is not told where another slip is named', () => {
    expect(exchangeIn(new Measured(guideNamed('open-bow'), { typed: { ...demoBow, 'W1-P1': '21 3/4' } }))).toBeNull();
  });

  it.each([
    ['A-B', 'A-C', 'B-C'],
    ['A-C', 'A-D', 'C-D'],
    ['A-B', 'A-D', 'B-D'],
    ['B-D', 'C-D', 'B-C'],
    ['A-B', 'B-D', 'A-D'],
  ])('explains %s and %s mixed up at both looks of an owner, which nothing names', (a, b, points) => {
    expect(exchangeIn(mixedUp(a, b))?.points).toBe(points);
  });

  it('is told of all the lines it may have been on, where it may have been on several', () => {
    // From A or from D, B and C taken for each other bend the same four sides alike.
    expect(exchangeIn(mixedUp('A-B', 'A-C'))).toEqual({ points: 'B-C', pairs: 2 });
  });

  it('is not told where the two tapes have no point in common', () => {
    const typed = { ...demoBow, 'W1-T': '65 5/16', 'W2-S3': '94 9/16' };
    expect(exchangeIn(new Measured(guideNamed('open-bow'), { typed }))).toBeNull();
  });

  it('is told where it is what is named', () => {
    const typed = { ...demoBow, 'F-P2': demoBow['F-P3'] ?? '', 'F-P3': demoBow['F-P2'] ?? '' };
    expect(exchangeIn(new Measured(guideNamed('open-bow'), { typed }))).toEqual({ points: 'P2-P3', pairs: 1 });
  });
});
