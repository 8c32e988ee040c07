import type { PacketRefusal, RowRefusal, TableReading } from '../core/packet/index.ts';

export const USAGE = `Usage:
  tapetrue check FILE                what is missing, impossible or doubtful, as JSON
  tapetrue adjust FILE [--json]      where the points lie, how sure, which readings do not fit, what to tape next
  tapetrue draw FILE [--as FORM]     a piece to scale, or its points, fasteners or what was noted at the fitting as a list
  tapetrue convert TABLE [options]   a readings table (CSV) as a packet
  tapetrue table FILE                the readings of a packet as CSV
  tapetrue --help

FILE is a packet or a readings table, told by its content; - reads the standard input.

Options of convert, and of adjust, check, draw and table where FILE is a readings table:
  --out FILE      write here instead of the standard output (adjust, convert, draw, table)
  --name TEXT     the job's name (default: the file's name)
  --by TEXT       who made the table (default: table)
  --units in|mm   the unit of a number without one (default: in)
  --keep-good     take the rows that can be read even where others cannot

Option of adjust:
  --json          everything, for a program; without it a plain table

Options of draw:
  --as FORM       svg (real size), dxf, tiles (real size, an SVG a sheet), or a list of points, fasteners or fittings (CSV);
                  default svg
  --piece TEXT    the name of the piece, where a job has more than one (svg, dxf, tiles)
  --paper PAPER   a4 or letter, for tiles (default: letter); their names begin as --out says
  --units in|mm   the unit of a DXF file (default: in)

Exit code: 0 fine; 1 check or adjust found a stop; 2 the file or the call was not understood.
`;

const REFUSALS: Readonly<Record<PacketRefusal['why'], string>> = {
  'not-json': 'The file is neither a packet nor a readings table.',
  foreign: 'The file is JSON, but not a packet of this program.',
  newer: 'The packet was made by a newer version, which this one cannot read.',
  damaged: 'The packet is damaged: its content is not what was sealed.',
  empty: 'The packet holds no entries.',
  'two-jobs': 'The packet holds entries of another job.',
  unreadable: 'The packet cannot be read.',
};

export function refusalSentence({ why, detail }: PacketRefusal): string {
  const about = [detail.version && `version ${detail.version}`, detail.at && `at ${detail.at}`, detail.id].filter(
    Boolean,
  );
  return about.length > 0 ? `${REFUSALS[why]} (${about.join(', ')})` : REFUSALS[why];
}

const ROW_FAULTS: Readonly<Record<RowRefusal['code'], string>> = {
  'unknown-kind': 'the kind is not known',
  'missing-cell': 'a cell is missing',
  'column-not-used': 'this kind does not use the column',
  'unreadable-cell': 'the cell cannot be read',
  'text-too-long': 'the text is too long',
  'same-point-twice': 'the same point stands there twice',
  'star-needs-flat': 'only a row of kind flat may say * for every point',
  'comma-in-number': 'a number seems torn at its comma; put it in quotes or part the cells by semicolons',
  'too-many-cells': 'there are more cells than headings',
  'text-after-quote': 'text stands behind a closing quote',
  'open-quote': 'a quote is not closed',
  'known-twice': 'the point has its coordinates already',
  'sides-contradict': 'the point was said to lie on the opposite side',
  'run-out-of-line': 'the row goes on from neither the start of its run nor the row before',
  'run-whole-twice': 'the run has a whole between other points already',
};

export function rowSentence({ line, code, column, understood, why }: RowRefusal): string {
  const about = [
    column && `column ${column}`,
    why,
    understood !== undefined && understood !== '' && `understood: ${understood}`,
  ].filter(Boolean);
  return `Line ${line}: ${ROW_FAULTS[code]}${about.length > 0 ? ` (${about.join('; ')})` : ''}.`;
}

/** Why a table was not taken, one sentence a line. */
export function tableSentences(reading: Extract<TableReading, { ok: false }>): string[] {
  switch (reading.why) {
    case 'not-a-table':
      return [`The table lacks the columns: ${reading.missingColumns.join(', ')}.`];
    case 'empty':
      return ['The table has no rows.', ...reading.refused.map(rowSentence)];
    case 'too-long':
      return [`The table has ${reading.rows} rows, more than a job can have.`];
    case 'rows-refused':
      return [
        ...reading.refused.map(rowSentence),
        `${reading.refused.length} of ${reading.rows} rows were refused; nothing was taken. --keep-good takes the others.`,
      ];
  }
}
