import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold, type Sheet } from '../../../src/core/job/index.ts';
import { readTable, writeTable } from '../../../src/core/packet/index.ts';
import { Scribe, sampleJob, tableContext, triangle } from './sample.ts';

const HEAD = 'kind,from,to,reading,note,piece,via,baseline,run,sequence,sigma,direction\r\n';

/** A table read back as a sheet, by a reader with a unit of its own. */
function again(text: string, units: 'in' | 'mm' = 'in'): Sheet {
  const reading = readTable(text, tableContext({ units }));
  if (!reading.ok) throw new Error(JSON.stringify(reading));
  return fold(reading.entries);
}

const rowsOf = (sheet: Sheet): string[] => writeTable(sheet).split('\r\n').slice(1, -1);

describe('writeTable', () => {
  it('writes an empty sheet as its headings', () => {
    expect(writeTable(fold([]))).toBe(HEAD);
  });

  it('writes every take that counts, with a unit where the text had none', () => {
    const sheet = fold(sampleJob().entries);
    expect(rowsOf(sheet)).toEqual([
      'flat,*,,,,Locker lid,,,,,,',
      'straight,A,B,300 mm,,Locker lid,,,,,,',
      'straight,A,B,300.4 mm,,Locker lid,,,,,,',
      'straight,B,C,400 mm,,Locker lid,,,,,,',
      'straight,C,A,500 mm,,Locker lid,,,,,,',
    ]);
  });

  it('leaves struck takes out', () => {
    const scribe = sampleJob();
    const take = scribe.entries.find((entry) => entry.kind === 'take.add')?.id ?? '';
    scribe.add('take.strike', { take, reason: 'slack' });
    expect(rowsOf(fold(scribe.entries))[1]).toBe('straight,A,B,300.4 mm,,Locker lid,,,,,,');
  });

  it('writes closed answers with their reason and open readings without a value', () => {
    const scribe = new Scribe();
    const piece = triangle(scribe.newId);
    scribe.add('piece.add', piece);
    scribe.add('reading.answer', {
      reading: piece.readings[0]?.id ?? '',
      answer: 'could-not',
      reason: 'rail, in the way',
    });
    expect(rowsOf(fold(scribe.entries)).slice(1, 3)).toEqual([
      'straight,A,B,could-not,"rail, in the way",Locker lid,,,,,,',
      'straight,B,C,,,Locker lid,,,,,,',
    ]);
  });

  it('tells points of one label apart, and pieces of one name', () => {
    const scribe = new Scribe();
    scribe.add('piece.add', triangle(scribe.newId));
    scribe.add('piece.add', triangle(scribe.newId));
    const sheet = fold(scribe.entries);
    expect(rowsOf(sheet)[5]).toBe('straight,A (Locker lid 2),B (Locker lid 2),,,Locker lid 2,,,,,,');
    expect(again(writeTable(sheet)).points).toHaveLength(6);
  });

  it('names the places of fasteners that have no point', () => {
    const scribe = new Scribe();
    const piece = triangle(scribe.newId);
    const run = scribe.newId();
    const points = piece.points.slice(0, 2).map((point) => point.id);
    scribe.add('piece.add', {
      ...piece,
      runs: [{ id: run, slot: 'edge', points, whole: piece.readings[0]?.id ?? null, needed: true }],
    });
    scribe.add('run.detail', { run, field: 'manner', value: 'gaps' });
    for (const rank of [1, 2]) {
      const reading = scribe.newId();
      scribe.add('fastener.add', { fastener: scribe.newId(), run, reading, rank, type: 'snap', presence: 'there' });
      scribe.add('take.add', { reading, text: `${rank * 6}`, unit: 'in', value: rank * 152.4 });
    }
    const sheet = fold(scribe.entries);
    expect(rowsOf(sheet).filter((row) => row.startsWith('running'))).toEqual([
      'running,A,edge-1,6 in,,Locker lid,,,edge,1,,',
      'running,edge-1,edge-2,12 in,,Locker lid,,,edge,2,,',
    ]);
    const [back] = again(writeTable(sheet), 'mm').runs;
    expect([back?.manner, back?.slot, back?.stations.length]).toEqual(['gaps', 'edge', 2]);
  });

  it('lets no text become a formula', () => {
    const scribe = new Scribe();
    const piece = triangle(scribe.newId);
    const [point] = piece.points;
    if (point) point.label = '=cmd()';
    scribe.add('piece.add', { ...piece, name: '@piece' });
    const text = writeTable(fold(scribe.entries));
    expect(text).toContain("straight,'=cmd(),B,,,'@piece");
    expect(again(text).points[0]?.label).toBe('=cmd()');
  });

  it.each([
    ['a decimal comma', '3,755', 'm', 3755],
    ['a dash', '12-3', 'ft', 3733.8],
    ['a fraction', '3 1/2', 'in', 88.9],
    ['a text that is not its value', 'about ten', 'cm', 100],
  ] as const)('writes %s so that any reader reads its value', (_, text, unit, value) => {
    const scribe = new Scribe();
    const piece = triangle(scribe.newId);
    scribe.add('piece.add', piece);
    scribe.add('take.add', { reading: piece.readings[0]?.id ?? '', text, unit, value });
    const written = writeTable(fold(scribe.entries));
    for (const units of ['in', 'mm'] as const) expect(again(written, units).readings[0]?.value).toBeCloseTo(value, 6);
  });
});

/** Tables as people may write them, in every kind. */
const label = fc.oneof(
  fc.constantFrom('A', 'B', 'C', 'P1', 'P2', 'Port bow', "O'Hara", 'a,b', '=x', 'é;1', '-3', '"q"'),
  fc
    .string({ minLength: 1, maxLength: 12 })
    .map((text) => text.trim())
    .filter((text) => text !== '' && text !== '*' && !/[|¦]/.test(text)),
);
const length = fc.oneof(
  fc.integer({ min: 1, max: 9000 }).map((value) => `${value} mm`),
  fc.tuple(fc.nat(12), fc.nat(11), fc.nat(15)).map(([feet, inches, parts]) => `${feet}' ${inches} ${parts}/16"`),
  fc.constantFrom('', '120', '37 1/2', '12-3-1/2', 'none-here', '1.25 m', '-18'),
);
const text = fc.string({ maxLength: 10 });
const piece = fc.constantFrom('', 'Shade', 'Cover 2');
const quoted = (cells: readonly string[]): string =>
  cells.map((cell) => `"${(/^'*[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell).replaceAll('"', '""')}"`).join(',');
const two = fc.uniqueArray(label, { minLength: 2, maxLength: 2 });
const three = fc.uniqueArray(label, { minLength: 3, maxLength: 3 });
const row = fc.oneof(
  fc
    .tuple(two, length, text, piece)
    .map(([[a = '', b = ''], value, note, name]) => ['straight', a, b, value, note, name]),
  fc
    .tuple(three, length, piece)
    .map(([[a = '', b = '', c = ''], value, name]) => ['girth', a, b, value, '', name, `${c}|`]),
  fc
    .tuple(three, length)
    .map(([[a = '', b = '', c = ''], value]) => ['out', a, '', value, '', '', '', `${b}|${c}`, '', '', '', 'port']),
  fc
    .tuple(label, fc.integer({ min: -90, max: 90 }))
    .map(([a, angle]) => ['lean', a, '', `${angle}`, '', '', '', '', '', '', '1.5', 'aft']),
  fc.tuple(label, fc.constantFrom('port', 'centre aft')).map(([a, side]) => ['side', a, '', side]),
  fc
    .tuple(label, fc.double({ min: -50, max: 50, noNaN: true }))
    .map(([a, x]) => ['known', a, '', `${x.toFixed(4)} 2 1`]),
  fc
    .tuple(two, fc.constantFrom('mirror', 'level', 'plumb', 'flat'))
    .map(([[a = '', b = ''], kind]) => [kind, a, b, '']),
  fc
    .tuple(
      label.filter((name) => name !== 'start'),
      fc.constantFrom('e', 'f'),
    )
    .map(([a, run]) => ['running', 'start', a, '100 mm', '', '', '', '', run]),
  fc.constant(['flat', '*', '', '']),
);

describe('a table written from a sheet', () => {
  it('is read back as the same readings, whatever the reader’s unit', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
        const source = [HEAD.trim(), ...rows.map(quoted)].join('\n');
        const first = readTable(source, tableContext({ keepGood: true }));
        fc.pre(first.ok);
        if (!first.ok) return;
        const sheet = fold(first.entries);
        const written = writeTable(sheet);
        for (const units of ['in', 'mm'] as const) {
          const back = again(written, units);
          expect(writeTable(back)).toBe(written);
          const values = (one: Sheet) =>
            one.readings.map(({ kind, value, state }) => [kind, state, value === null ? null : value.toFixed(6)]);
          expect(values(back)).toEqual(values(sheet));
          const labels = (one: Sheet) => one.points.map((point) => point.label).sort();
          expect(labels(back)).toEqual(labels(sheet));
        }
      }),
      { numRuns: 150 },
    );
  }, 30_000);
});
