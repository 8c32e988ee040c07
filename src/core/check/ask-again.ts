import type { Ask, Sheet } from '../job/index.ts';
import type { Finding, RuleKey } from './finding.ts';
import { gates } from './gates.ts';
import type { PieceJudgement } from './piece-judgement.ts';

/** Something the shop may ask again. */
export type AskItem = Pick<Ask['items'][number], 'on' | 'id'>;

/** Doubts only a tape can settle: looks that differ, looks that were not taken. */
const TO_READ: ReadonlySet<RuleKey> = new Set(['takes-disagree', 'missing-second-look']);

/**
 * What the shop begins to ask again with: the readings that are suspected, the things that stops speak of (of several readings
 * only those suspected, where any is), readings of which the looks differ or the second is missing; except what is
 * asked already.
 */
export function askAgain(
  sheet: Sheet,
  findings: readonly Finding[],
  piece: string,
  judgement: PieceJudgement | undefined,
): AskItem[] {
  const slips = judgement?.slips;
  const suspects = slips && slips.verdict !== 'nothing-doubted' ? slips.readAgain : [];
  const items = [
    ...suspects.map((id) => askable(sheet, id)),
    ...standingItems(sheet, findings, piece, new Set(suspects)),
  ].filter(({ on, id }) => !isAsked(sheet, piece, on, id));
  return [...new Map(items.map((item) => [`${item.on}:${item.id}`, item])).values()];
}

export const isAsked = (sheet: Sheet, piece: string, on: AskItem['on'], id: string): boolean =>
  sheet.asks.some(
    (ask) => ask.piece === piece && ask.items.some((item) => item.open && item.on === on && item.id === id),
  );

/** The place of a fastener is read again on its edge: it has no step of its own. */
export function askable(sheet: Sheet, id: string): AskItem {
  const reading = sheet.readings.find((candidate) => candidate.id === id);
  return reading?.run !== undefined && reading.slot === null ? { on: 'run', id: reading.run } : { on: 'reading', id };
}

function standingItems(
  sheet: Sheet,
  findings: readonly Finding[],
  piece: string,
  suspects: ReadonlySet<string>,
): AskItem[] {
  return gates(sheet, findings, piece)
    .cut.standing.filter(({ severity, rule }) => (severity === 'stop' ? rule !== 'asked-again' : TO_READ.has(rule)))
    .flatMap(({ subjects, numbers }) => {
      const { suspect } = numbers;
      if (typeof suspect === 'string') return [{ on: 'reading' as const, id: suspect }];
      const likely = subjects.filter(({ on, id }) => on === 'reading' && suspects.has(id));
      return likely.length > 0 ? likely : subjects;
    })
    .flatMap(({ on, id }): AskItem[] => {
      if (on === 'reading') return [askable(sheet, id)];
      return on === 'run' || on === 'shot' || on === 'question' ? [{ on, id }] : [];
    });
}
