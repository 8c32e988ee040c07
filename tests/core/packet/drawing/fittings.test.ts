import { describe, expect, it } from 'vitest';
import { fold, type Payload } from '../../../../src/core/job/index.ts';
import { parseCsv } from '../../../../src/core/packet/csv.ts';
import { fittingsCsv } from '../../../../src/core/packet/drawing/index.ts';
import { Scribe, triangle } from '../sample.ts';

type Note = Payload<'fitting.note'>;

/** A triangle that was fitted, with these notes. */
function fitted(notes: (piece: ReturnType<typeof triangle>) => readonly Omit<Note, 'piece'>[]) {
  const scribe = new Scribe();
  scribe.add('job.open', { name: 'A job', system: 'imperial', fraction: 16 });
  const piece = triangle(scribe.newId);
  scribe.add('piece.add', piece);
  for (const note of notes(piece)) scribe.add('fitting.note', { piece: piece.id, ...note });
  return { csv: fittingsCsv(fold(scribe.entries)), piece };
}
const cellsOf = (csv: string): string[][] => parseCsv(csv, ',').map(({ cells }) => cells);

describe('notes of a fitting as a list', () => {
  it('is its headings alone where nothing was noted', () => {
    expect(cellsOf(fitted(() => []).csv)).toEqual([
      ['piece', 'on', 'place', 'change mm', 'change', 'why', 'from boat', 'noted by', 'role', 'at'],
    ]);
  });

  it('says where, by how much, as typed too, why, and who noted it', () => {
    const { csv, piece } = fitted(({ readings: [reading], points: [point] }) => [
      { where: { on: 'reading', id: reading?.id ?? '' }, change: -9.525, text: '-3/8', why: 'Slack, two\nwrinkles' },
      { where: { on: 'point', id: point?.id ?? '' }, change: null, text: '', why: 'Chafes', from: 'Perla' },
      { where: null, change: null, text: '', why: 'Fits' },
    ]);
    const [, first = [], second = [], third = []] = cellsOf(csv);
    const labels = piece.readings[0]?.points.map((id) => piece.points.find((one) => one.id === id)?.label) ?? [];
    expect(first.slice(0, 7)).toEqual([
      piece.name,
      'reading',
      `${piece.readings[0]?.kind} ${labels.join('-')}`,
      '-9.525',
      '-3/8',
      'Slack, two\nwrinkles',
      '',
    ]);
    expect(second.slice(1, 7)).toEqual(['point', piece.points[0]?.label, '', '', 'Chafes', 'Perla']);
    expect(third.slice(1, 6)).toEqual(['piece', '', '', '', 'Fits']);
    for (const row of [first, second, third]) expect(row[9]).toMatch(/^\d{4}-\d\d-\d\dT/);
  });

  it('holds nothing that a spreadsheet computes, and what was typed comes back', () => {
    const { csv } = fitted(() => [{ where: null, change: null, text: '=1+1', why: '@cmd', from: '+SUM(A1)' }]);
    expect(csv).toContain(",'=1+1,'@cmd,'+SUM(A1),");
    expect(cellsOf(csv)[1]?.slice(4, 7)).toEqual(['=1+1', '@cmd', '+SUM(A1)']);
  });
});
