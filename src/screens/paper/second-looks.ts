import { measuredAsDrawn, waysToAsk } from '../../core/cloth/as-drawn.ts';
import { declarationOf } from '../../core/job/again/index.ts';
import { type Entry, FACT_KINDS, fold } from '../../core/job/index.ts';
import { now, uuid } from '../../device/clock.ts';
import { judgeJob } from '../../device/judge/index.ts';

/** Findings that want a reading to be read a second time. */
const WANT_SECOND: ReadonlySet<string> = new Set(['reading-unchecked', 'slip-unseen']);

/**
 * Readings of a piece that nothing else would check, so that they are read twice: asked of the engine with the piece measured
 * as it is drawn, in every way it may come to be asked. Where it has no shape even so, every needed reading is one of them.
 */
export async function secondLooks(entries: readonly Entry[], pieceId: string): Promise<ReadonlySet<string>> {
  const sheet = fold(entries);
  const piece = declarationOf(entries, pieceId);
  if (!piece) return new Set();
  const { system, fraction } = sheet;
  const answered = new Map(
    sheet.questions.flatMap(({ piece: of, slot, choice }) =>
      of === pieceId && choice !== null ? [[slot, choice]] : [],
    ),
  );
  const twice = new Set<string>();
  for (const way of waysToAsk(piece, answered)) {
    const drawn = measuredAsDrawn(piece, { system, fraction, newId: uuid, at: now() }, way);
    for (const id of await twiceIn(drawn, pieceId)) twice.add(id);
  }
  return twice;
}

async function twiceIn(entries: readonly Entry[], pieceId: string): Promise<string[]> {
  const judgement = await judgeJob(entries[0]?.job ?? '', entries).catch(() => null);
  const engine = judgement?.pieces.get(pieceId);
  if (judgement && engine?.complete && engine.adjustment.state === 'solved')
    return judgement.findings
      .filter(({ rule }) => WANT_SECOND.has(rule))
      .flatMap(({ subjects }) => subjects.flatMap(({ on, id }) => (on === 'reading' ? [id] : [])));
  return fold(entries)
    .readings.filter(({ kind, needed }) => needed && !FACT_KINDS.has(kind))
    .map(({ id }) => id);
}
