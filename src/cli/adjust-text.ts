import type { Adjusted, AdjustedPiece } from './adjust.ts';

type Cell = string | number | null | undefined;

/** The same as a plain table: words to the left, millimetres to the hundredth to the right. */
export function adjustedText({ pieces, stop }: Adjusted): string {
  const parts = pieces.map((piece) => [...headOf(piece), ...bodyOf(piece)].join('\n'));
  return `${parts.join('\n\n')}\n\n${stop ? 'A stop stands: see tapetrue check.' : 'No stop.'}\n`;
}

function headOf(piece: AdjustedPiece): string[] {
  const lines = [`${piece.piece}: ${piece.state.replaceAll('-', ' ')}`];
  const { adjustment } = piece;
  if (adjustment)
    lines.push(
      `${adjustment.dimension === 2 ? 'flat' : 'in space'}, ${adjustment.freedom} spare, vtPv ${fixed(adjustment.weightedSquare, 3)}` +
        `${adjustment.unitError === null ? '' : `, unit error ${fixed(adjustment.unitError, 3)}`}, test ${adjustment.globalTest.verdict}`,
    );
  if (adjustment?.doubted)
    lines.push('NOT TO BE USED as it stands: readings contradict each other and bend the places below');
  for (const { point, ways } of piece.floating) lines.push(`${point} floats in ${ways} ${ways === 1 ? 'way' : 'ways'}`);
  for (const { point, side } of adjustment?.wrongSides ?? []) lines.push(`${point} does not lie ${side}`);
  return lines;
}

function bodyOf(piece: AdjustedPiece): string[] {
  const lines: string[] = [];
  const add = (rows: string[]): void => {
    if (rows.length > 0) lines.push('', ...rows);
  };
  add(
    tabled(
      ['point', 'x', 'y', 'z', 'sd x', 'sd y', 'sd z', '95 %', 'state'],
      piece.points.map(({ point, x, y, z, sigma, relative95, state }) => [
        point,
        ...[x, y, z, sigma?.x, sigma?.y, sigma?.z, relative95],
        state,
      ]),
    ),
  );
  add(
    tabled(
      ['reading', 'observed', 'residual', 'spare', 'w', 'smallest slip seen', 'control'],
      piece.readings.map((one) => [
        one.reading,
        ...[one.observed, one.residual, one.redundancy, one.standardised, one.smallestVisibleSlip],
        one.control,
      ]),
    ),
  );
  add(piece.oneSided.map((one) => `${one.reading}: ${fixed(one.slack)} longer than its chords`));
  add(piece.leftOut.map(({ reading, why }) => `${reading} takes no part: ${why}`));
  add(slipLines(piece));
  add(tapeLines(piece));
  return lines;
}

function slipLines({ slips, shapes }: AdjustedPiece): string[] {
  const tells = [...(shapes?.tellsApart ?? []), ...(slips?.tellsApart ?? [])].map(
    ({ from, to, predicted }) => `${from}-${to} would tell: ${predicted.map((mm) => fixed(mm, 1)).join(' or ')}`,
  );
  const found = slips?.explanations.slice(0, 5).map(({ slips: supposed, chance }) => {
    const words = supposed.map(
      ({ reading, wouldRead, kind, valueSigma }) =>
        `${reading}: ${valueSigma > 0 ? 'about ' : ''}${wouldRead} would fit, ${kind.replaceAll('-', ' ')}`,
    );
    return `${String(Math.round(chance * 100)).padStart(3)} % ${words.join('; ')}`;
  });
  return [
    ...(slips ? [`doubted (${slips.verdict}); read again: ${slips.readAgain.join(', ')}`] : []),
    ...(found ?? []),
    ...tells,
  ];
}

function tapeLines({ advice }: AdjustedPiece): string[] {
  if (!advice) return [];
  return advice.set.map(({ from, to, length }) => `next: ${from}-${to}, about ${fixed(length, 0)}`);
}

const fixed = (value: number, digits = 2): string => value.toFixed(digits);
const shown = (cell: Cell): string =>
  typeof cell === 'number' ? cell.toFixed(cell !== 0 && Math.abs(cell) < 1 ? 4 : 2) : (cell ?? '-');

function tabled(heads: readonly string[], rows: readonly (readonly Cell[])[]): string[] {
  if (rows.length === 0) return [];
  const cells = [heads, ...rows.map((row) => row.map(shown))];
  const widths = heads.map((_, place) => Math.max(...cells.map((row) => row[place]?.length ?? 0)));
  const last = heads.length - 1;
  return cells.map((row) =>
    row
      .map((cell, place) =>
        place === 0 || place === last ? cell.padEnd(widths[place] ?? 0) : cell.padStart(widths[place] ?? 0),
      )
      .join('  ')
      .trimEnd(),
  );
}
