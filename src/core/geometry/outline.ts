import type { Sheet } from '../job/index.ts';

/** The line round a piece. open: the last side, back to the first point, is no edge that anybody declared. */
export interface Outline {
  readonly points: readonly string[];
  readonly open: boolean;
}

/**
 * The points round a piece, in order: its edges joined end to end, or its box where that goes round more of it, or its
 * corners and edge points as they were declared. Null for a piece with fewer than three of them.
 */
export function outlineOf(sheet: Sheet, piece: string): Outline | null {
  const runs = sheet.runs.filter((run) => run.piece === piece).map((run) => run.points);
  const boxes = sheet.pieces.find(({ id }) => id === piece)?.boxes ?? [];
  const candidates = [chained(runs), ...boxes.map((box): Outline => ({ points: [...box], open: false }))];
  const best = candidates.reduce<Outline | null>(
    (most, one) => (one && one.points.length >= Math.max(3, (most?.points.length ?? 0) + 1) ? one : most),
    null,
  );
  if (best) return best;
  const round = sheet.points
    .filter(({ pieces, role }) => pieces.includes(piece) && ROUND.has(role))
    .map(({ id }) => id);
  return round.length >= 3 ? { points: round, open: false } : null;
}

const ROUND: ReadonlySet<string> = new Set(['corner', 'edge', 'mount']);

/** Edges that meet at their ends make one line; those that meet nothing are left out. */
function chained(runs: readonly (readonly string[])[]): Outline | null {
  const [first, ...rest] = runs;
  if (!first) return null;
  let line = [...first];
  let left = rest.filter((run) => run.length > 1);
  for (;;) {
    const next = left.find((run) => ends(run).some((end) => end === line.at(-1) || end === line[0]));
    if (!next) break;
    left = left.filter((run) => run !== next);
    line = joined(line, next);
    if (line.length > 2 && line[0] === line.at(-1)) return { points: line.slice(0, -1), open: false };
  }
  return { points: line, open: true };
}

const ends = (run: readonly string[]): (string | undefined)[] => [run[0], run.at(-1)];

function joined(line: readonly string[], run: readonly string[]): string[] {
  if (run[0] === line.at(-1)) return [...line, ...run.slice(1)];
  if (run.at(-1) === line.at(-1)) return [...line, ...run.slice(0, -1).reverse()];
  if (run.at(-1) === line[0]) return [...run.slice(0, -1), ...line];
  return [...run.slice(1).reverse(), ...line];
}
