import { describe, expect, it } from 'vitest';
import { fold, type Sheet } from '../../../src/core/job/index.ts';
import { looksLikeTable, readTable, type TableContext, type TableReading } from '../../../src/core/packet/index.ts';
import { tableContext as context } from './sample.ts';

const HEAD = 'kind,from,to,reading,note,piece,via,baseline,run,sequence,sigma,direction\n';
const read = (rows: string, more: Partial<TableContext> = {}): TableReading => readTable(HEAD + rows, context(more));

function sheetOf(reading: TableReading): Sheet {
  if (!reading.ok) throw new Error(JSON.stringify(reading));
  return fold(reading.entries);
}

/** A reading as a person would say it. */
function told(sheet: Sheet): string[] {
  const label = (id: string): string => sheet.points.find((point) => point.id === id)?.label ?? '?';
  const labels = (name: string, ids: readonly string[] | undefined): string =>
    ids ? ` ${name} ${ids.map(label).join('-')}` : '';
  return sheet.readings.map((reading) => {
    const takes = reading.takes.map((take) => Number(take.value.toFixed(6))).join(' ');
    const more = `${labels('via', reading.via)}${labels('over', reading.baseline)}${reading.toward ? ` to ${reading.toward}` : ''}`;
    return `${reading.kind} ${reading.points.map(label).join('-')}${more} = ${takes || reading.state}`;
  });
}

describe('readTable takes', () => {
  it.each([
    ['straight', 'straight,A,B,3755,', 'straight A-B = 3755'],
    ['girth', 'girth,A,B,3755,,,P1|P2', 'girth A-B via P1-P2 = 3755'],
    ['height', 'height,A,,120,,,,W1|W2', 'height A over W1-W2 = 120'],
    ['height over nothing named', 'height,A,,-120,', 'height A = -120'],
    ['along', 'along,P,,900,,,,S|E', 'along P over S-E = 900'],
    ['out', 'out,P,,250,,,,S E,,,,port', 'out P over S-E to port = 250'],
    ['running', 'running,A,P1,200,,,,,edge,1', 'running A-P1 = 200'],
    ['lean', 'lean,A,,15,,,,,,,,aft', 'lean A to aft = 0.261799'],
    ['lean with its sign', 'lean,A,,-7.5°,', 'lean A = -0.1309'],
    ['centre', 'centre,A,,,', 'centre A = 0'],
    ['mirror', 'mirror,A,B,,', 'mirror A-B = 0'],
    ['level', 'level,A,B,,,,C', 'level A-C-B = 0'],
    ['plumb', 'plumb,A,B,0,', 'plumb A-B = 0'],
    ['flat', 'flat,A,B,,,,C|D', 'flat A-C-D-B = 0'],
    ['known', 'known,A,,1.5 2 -0.25,', 'known A = 0'],
    ['none here', 'straight,A,B,none here,', 'straight A-B = none-here'],
    ['could not', 'straight,A,B,could-not,rail in the way', 'straight A-B = could-not'],
    ['a reading not taken yet', 'straight,A,B,,', 'straight A-B = open'],
  ])('%s', (_, row, expected) => {
    expect(told(sheetOf(read(row)))).toEqual([expected]);
  });

  it('the same pair again as a second take, whichever way round', () => {
    const sheet = sheetOf(read('straight,A,B,100,\nstraight,B,A,101,\ngirth,A,B,110,,,P|Q\ngirth,B,A,111,,,Q|P\n'));
    expect(told(sheet)).toEqual(['straight A-B = 100 101', 'girth A-B via P-Q = 110 111']);
  });

  it('a height over another plane as another reading', () => {
    expect(told(sheetOf(read('height,A,,1,,,,W1|W2\nheight,A,,2,,,,W1|W3\n')))).toHaveLength(2);
  });

  it('bare numbers in the table’s unit, and any other with its own', () => {
    const rows = `straight,A,B,10,\nstraight,B,C,10 cm,\nstraight,C,D,"1' 0 1/2""",\n`;
    expect(told(sheetOf(read(rows, { units: 'in' })))).toEqual([
      'straight A-B = 254',
      'straight B-C = 100',
      'straight C-D = 317.5',
    ]);
  });

  it('the text as it was typed', () => {
    const sheet = sheetOf(read(`straight,A,B,12' 3 1/2",bow rail`));
    expect(sheet.readings[0]).toMatchObject({ note: 'bow rail', takes: [{ text: `12' 3 1/2"`, unit: 'ft' }] });
  });

  it('a standard deviation, as a length or an angle', () => {
    const sheet = sheetOf(read('straight,A,B,100,,,,,,,0.5 cm\nlean,A,,10,,,,,,,1\n'));
    expect(sheet.readings.map((reading) => reading.takes[0]?.sigma)).toEqual([5, Math.PI / 180]);
  });

  it('coordinates in metres or in the unit behind them', () => {
    const sheet = sheetOf(
      read('known,A,,1.1 -2 3.3,\nknown,B,,10 20 mm,\nknown,C,,1ft 2ft 3ft,\nknown,D,,"1, 2, 3 cm",\n'),
    );
    expect(sheet.points.map((point) => point.nominal)).toEqual([
      [1100, -2000, 3300],
      [10, 20, 0],
      [304.8, 609.6, 914.4],
      [10, 20, 30],
    ]);
    expect(sheet.points.every((point) => point.role === 'mark')).toBe(true);
  });

  it('sides of points, one or more', () => {
    const sheet = sheetOf(read('straight,A,B,1,\nside,A,,port,\nside,B,,Starboard aft,\n'));
    expect(sheet.points.map((point) => point.sides)).toEqual([['port'], ['starboard', 'aft']]);
  });

  it('a plane table, and one plane piece of two', () => {
    const rows = 'straight,A,B,1,,P1\nstraight,C,D,1,,P2\n';
    const flat = (more: string): boolean[] => sheetOf(read(rows + more)).pieces.map((piece) => piece.flat);
    expect([flat(''), flat('flat,*,,,\n'), flat('flat,*,,,,P2\n')]).toEqual([
      [false, false],
      [true, true],
      [false, true],
    ]);
  });

  it('a label as one point in all pieces', () => {
    const sheet = sheetOf(read('straight,A,B,1,,P1\nstraight,A,C,1,,P2\n'));
    expect(sheet.points.map((point) => [point.label, point.pieces.length])).toEqual([
      ['A', 2],
      ['B', 1],
      ['C', 1],
    ]);
  });

  it('what is said of a point alone for the piece that measures it', () => {
    const sheet = sheetOf(read('side,A,,port,\nknown,B,,1 1,\nstraight,A,B,1,,Shade\nside,Z,,aft,\n'));
    expect(sheet.pieces.map((piece) => piece.name)).toEqual(['Shade', 'Piece']);
    expect(sheet.points.map((point) => [point.label, point.pieces.length])).toEqual([
      ['A', 1],
      ['B', 1],
      ['Z', 1],
    ]);
  });

  it('a cumulative run with its whole', () => {
    const sheet = sheetOf(
      read('running,A,P2,500,,,,,edge,2\nrunning,A,P1,200,,,,,edge,1\nstraight,A,Z,900,,,,,edge\n'),
    );
    const [run] = sheet.runs;
    const at = (id: string | null | undefined) => sheet.readings.find((reading) => reading.id === id)?.value;
    expect(run).toMatchObject({ slot: 'edge', manner: 'cumulative' });
    expect(run?.stations.map(at)).toEqual([200, 500]);
    expect(at(run?.whole)).toBe(900);
    expect(run?.points.map((id) => sheet.points.find((point) => point.id === id)?.label)).toEqual([
      'A',
      'P1',
      'P2',
      'Z',
    ]);
  });

  it('a run gap to gap, told by how its rows follow, with a gap read twice', () => {
    const sheet = sheetOf(
      read('running,A,P1,200,,,,,e\nrunning,A,P1,201,,,,,e\nrunning,P1,P2,300,,,,,e\nrunning,P2,Z,400,,,,,e\n'),
    );
    expect(sheet.runs[0]).toMatchObject({ manner: 'gaps' });
    expect(told(sheet)).toEqual(['running A-P1 = 200 201', 'running P1-P2 = 300', 'running P2-Z = 400']);
  });

  it('columns in any order, any case, with others between, which it names', () => {
    const reading = readTable('Reading;weather;FROM;To;Kind\n375,5 cm;dry;A;B;Straight\n', context());
    expect(reading).toMatchObject({ ok: true, unknownColumns: ['weather'] });
    expect(told(sheetOf(reading))).toEqual(['straight A-B = 3755']);
  });

  it('decimal commas between semicolons', () => {
    const reading = readTable(
      'kind;from;to;reading;sigma\nstraight;A;B;1234,5;0,5\nlean;A;;7,5;\nknown;A;;1,5 2,5;\n',
      context(),
    );
    expect(told(sheetOf(reading)).slice(0, 2)).toEqual(['straight A-B = 1234.5', 'lean A = 0.1309']);
    expect(sheetOf(reading).points[0]?.nominal).toEqual([1500, 2500, 0]);
  });

  it('notes of figures beside readings with a unit', () => {
    expect(sheetOf(read('straight,A,B,10 in,755')).readings[0]).toMatchObject({ value: 254, note: '755' });
  });

  it('the job’s name, its unit and a chain of entries', () => {
    const reading = read('straight,A,B,1,', { units: 'in' });
    const entries = reading.ok ? reading.entries : [];
    expect(sheetOf(reading)).toMatchObject({
      details: { name: 'Job' },
      system: 'imperial',
      pieces: [{ kind: 'table', name: 'Piece' }],
    });
    expect(entries.map((entry) => entry.seen)).toEqual([[], ...entries.slice(0, -1).map((entry) => [entry.id])]);
    expect(sheetOf(reading).carried).toEqual([]);
  });
});

describe('readTable refuses', () => {
  it.each([
    ['an unknown kind', 'diagonal,A,B,1,', { code: 'unknown-kind', column: 'kind' }],
    ['no first point', 'straight,,B,1,', { code: 'missing-cell', column: 'from' }],
    ['no second point', 'straight,A,,1,', { code: 'missing-cell', column: 'to' }],
    ['a second point too many', 'height,A,B,1,', { code: 'column-not-used', column: 'to' }],
    ['no baseline', 'along,A,,1,', { code: 'missing-cell', column: 'baseline' }],
    ['half a baseline', 'out,A,,1,,,,S', { code: 'missing-cell', column: 'baseline' }],
    ['a running without its run', 'running,A,B,1,', { code: 'missing-cell', column: 'run' }],
    ['a column the kind does not use', 'straight,A,B,1,,,P', { code: 'column-not-used', column: 'via' }],
    [
      'nonsense, with what was understood',
      `straight,A,B,12' 3 elbows,`,
      { code: 'unreadable-cell', why: 'not-a-length', understood: '12 ft 3' },
    ],
    ['an angle that is none', 'lean,A,,steep,', { code: 'unreadable-cell', why: 'not-an-angle' }],
    ['an angle beyond a half turn', 'lean,A,,181,', { code: 'unreadable-cell', why: 'angle-too-large' }],
    ['coordinates that are none', 'known,A,,1.5,', { code: 'unreadable-cell', why: 'not-coordinates' }],
    ['coordinates in mixed units', 'known,A,,1m 2 3mm,', { code: 'unreadable-cell', why: 'not-coordinates' }],
    ['a side that is none', 'side,A,,left,', { code: 'unreadable-cell', why: 'not-a-side' }],
    ['a side left out', 'side,A,,,', { code: 'missing-cell', column: 'reading' }],
    ['a direction that is none', 'lean,A,,5,,,,,,,,left', { code: 'unreadable-cell', column: 'direction' }],
    ['a standard deviation of nought', 'straight,A,B,1,,,,,,,0', { code: 'unreadable-cell', column: 'sigma' }],
    ['a place that is no whole number', 'running,A,B,1,,,,,e,1.5', { code: 'unreadable-cell', column: 'sequence' }],
    ['a point measured to itself', 'straight,A,A,1,', { code: 'same-point-twice' }],
    ['every point, but not flat', 'straight,*,B,1,', { code: 'star-needs-flat' }],
    ['a label without end', `straight,${'x'.repeat(41)},B,1,`, { code: 'text-too-long', column: 'from' }],
    ['more cells than headings', 'straight,A,B,1,,,,,,,,,x', { code: 'too-many-cells' }],
    ['a number torn at its comma', 'straight,A,B,3,755', { code: 'comma-in-number', understood: '3,755' }],
    ['a torn number with its unit', 'straight,A,B,3,755 mm', { code: 'comma-in-number', understood: '3,755 mm' }],
    ['an ambiguous comma in quotes', 'straight,A,B,"3,755",', { code: 'unreadable-cell', why: 'ambiguous-comma' }],
    ['text behind a quote', 'straight,"A"x,B,1,', { code: 'text-after-quote' }],
    ['an open quote', 'straight,"A,B,1,', { code: 'open-quote' }],
  ])('%s', (_, row, expected) => {
    const reading = read(row);
    expect(reading).toMatchObject({ ok: false, why: 'rows-refused', refused: [{ line: 2, ...expected }] });
  });

  it.each([
    ['coordinates twice', 'known,A,,1 1,\nknown,A,,1 2,\n', { line: 3, code: 'known-twice' }],
    ['opposite sides', 'side,A,,port,\nside,A,,starboard,\n', { line: 3, code: 'sides-contradict' }],
    [
      'a run that jumps',
      'running,A,P,1,,,,,e\nrunning,P,Q,1,,,,,e\nrunning,X,Y,1,,,,,e\n',
      { line: 4, code: 'run-out-of-line', understood: 'Q' },
    ],
    [
      'a run with two starts',
      'running,A,P,1,,,,,e\nrunning,A,Q,2,,,,,e\nrunning,B,R,3,,,,,e\n',
      { line: 4, code: 'run-out-of-line', understood: 'A' },
    ],
    ['two wholes of a run', 'straight,A,Z,9,,,,,e\nstraight,A,Y,8,,,,,e\n', { line: 3, code: 'run-whole-twice' }],
  ])('rows that contradict others: %s', (_, rows, expected) => {
    expect(read(rows)).toMatchObject({ ok: false, why: 'rows-refused', refused: [expected] });
  });

  const mixed = 'straight,A,B,1,\nstraight,B,C,far,\n"straight",C,"D\nE",3,\nfoo,,,,\n';
  it('all rows when one is refused, and names each by its line', () => {
    const reading = read(mixed);
    expect(reading).toMatchObject({ ok: false, rows: 4, refused: [{ line: 3 }, { line: 6 }] });
    expect(reading).not.toHaveProperty('entries');
  });

  it('only the bad rows when asked to keep the good', () => {
    const reading = read(mixed, { keepGood: true });
    expect(reading).toMatchObject({ ok: true, rows: 4, refused: [{ line: 3 }, { line: 6 }] });
    expect(told(sheetOf(reading))).toEqual(['straight A-B = 1', 'straight C-D\nE = 3']);
  });

  it('what is no table', () => {
    expect(readTable('hello', context())).toMatchObject({
      ok: false,
      why: 'not-a-table',
      missingColumns: ['kind', 'from', 'reading'],
    });
    expect(readTable('', context())).toMatchObject({ ok: false, why: 'not-a-table' });
    expect(read('')).toMatchObject({ ok: false, why: 'empty' });
    expect(read('foo,A,B,1,', { keepGood: true })).toMatchObject({ ok: false, why: 'empty', refused: [{ line: 2 }] });
    expect(read('straight,A,B,1,\n'.repeat(20_001))).toMatchObject({ ok: false, why: 'too-long', rows: 20_001 });
  });
});

describe('looksLikeTable', () => {
  it.each([
    ['kind,from,to,reading,note\n', true],
    ['\ufeffNote;Reading;Kind;From', true],
    ['kind\tfrom\treading', true],
    ['kind,from,to', false],
    ['{"kind":1,"from":2,"reading":3}', false],
    ['', false],
  ])('%j: %s', (text, expected) => {
    expect(looksLikeTable(text)).toBe(expected);
  });
});
