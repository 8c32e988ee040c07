import type { Sheet } from '../job/index.ts';
import type { Finding, Severity } from './finding.ts';

const WEIGHT: Record<Severity, number> = { stop: 0, doubt: 1, note: 2 };

/** The findings in the order a person walks: by piece, then by step, the gravest first; ties by id. */
export function inWalkingOrder(sheet: Sheet, findings: readonly Finding[]): Finding[] {
  const pieceRank = new Map(sheet.pieces.map((piece, index) => [piece.id, index]));
  const steps = new Map(
    sheet.pieces.map((piece) => [piece.id, new Map(piece.walk.map((slot, index) => [slot, index]))]),
  );
  const placed = findings.map((finding) => ({
    finding,
    piece: pieceRank.get(finding.piece ?? '') ?? sheet.pieces.length,
    step: steps.get(finding.piece ?? '')?.get(finding.slot ?? '') ?? Number.MAX_SAFE_INTEGER,
  }));
  placed.sort(
    (a, b) =>
      a.piece - b.piece ||
      a.step - b.step ||
      WEIGHT[a.finding.severity] - WEIGHT[b.finding.severity] ||
      (a.finding.id < b.finding.id ? -1 : 1),
  );
  return placed.map(({ finding }) => finding);
}
