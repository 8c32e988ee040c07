import { describe, expect, it } from 'vitest';
import { judge, type RoundPoint, roundOf } from '../../../src/core/check/index.ts';
import { guideOf } from '../../../src/core/guide/pieces/index.ts';
import { Measured } from './measured.ts';

const bow = guideOf('open-bow');
if (!bow) throw new Error('there is no guide for a bow');

function around(measured: Measured): Map<string, RoundPoint> {
  const sheet = measured.job.sheet();
  const { findings, pieces } = judge(sheet);
  const { id } = measured.piece;
  const labels = new Map(sheet.points.map((point) => [point.id, point.label]));
  return new Map(roundOf(sheet, id, findings, pieces.get(id)).map((row) => [labels.get(row.point) ?? '', row]));
}

const standings = (rows: Map<string, RoundPoint>) =>
  Object.fromEntries([...rows].map(([label, { standing }]) => [label, standing]));

describe('the round of the boat', () => {
  it('names every point that is measured, in the order of the walk, all missing before anything is read', () => {
    const rows = around(new Measured(bow, { open: bow.walk.map(({ slot }) => slot) }));
    expect([...rows.keys()].slice(0, 6)).toEqual(['W1', 'W2', 'F', 'P1', 'P2', 'P3']);
    expect(new Set([...rows.values()].map(({ standing }) => standing))).toEqual(new Set(['missing']));
    expect(rows.get('W1')?.slot).toBe('W1-W2');
  });

  it('calls a point checked within a few millimetres once all that is asked for was read', () => {
    const again = bow.walk.flatMap((step) =>
      step.on === 'reading' && step.reading.kind !== 'straight' && step.reading.kind !== 'girth' ? [step.slot] : [],
    );
    const rows = around(new Measured(bow, { twice: again }));
    expect(new Set(Object.values(standings(rows)))).toEqual(new Set(['checked']));
    const sure = rows.get('P2')?.sure ?? Number.NaN;
    expect(sure).toBeGreaterThan(0);
    expect(sure).toBeLessThan(6);
  });

  it('says which point lacks how many readings and leads to the first of them', () => {
    const rows = around(new Measured(bow, { open: ['W2-T', 'P3-T'] }));
    expect(rows.get('T')).toMatchObject({ standing: 'missing', open: 2, slot: 'W2-T' });
    expect(rows.get('P1')?.standing).toBe('checked');
  });

  it('calls fixed but not checked what was read once and nothing else would show', () => {
    const rows = around(new Measured(bow));
    expect(rows.get('G')?.standing).toBe('fixed');
  });

  it('leads to the reading that contradicts', () => {
    const rows = around(new Measured(bow, { added: { 'W1-T': 300 } }));
    expect(rows.get('T')).toMatchObject({ standing: 'doubtful', slot: 'W1-T' });
    expect(rows.get('S1')?.standing).toBe('checked');
  });
});
