import type { PieceKind } from '../../job/index.ts';
import { choiceOf, listSlot } from '../in-the-way.ts';
import type { Rule } from '../rule.ts';

/** Answers to where the shore-power cord leaves that name a side of the boat. */
const SIDES: ReadonlySet<string> = new Set(['port', 'starboard', 'forward', 'aft', 'bow', 'stern']);

/** The end of the boat that a piece leaves open: a cord that leaves there does not meet its cloth. */
const OPEN_END: Partial<Record<PieceKind, ReadonlySet<string>>> = {
  'open-bow': new Set(['aft', 'stern']),
  'cockpit-cover': new Set(['forward', 'bow']),
};

/**
 * The shore-power cord leaves on a side that was named, and no exit for it is among the things in the way: doubt; the cloth
 * would be cut without one. Subjects: the question, the piece. numbers: side.
 */
export const missingCordExit: Rule = {
  key: 'missing-cord-exit',
  find: (context) =>
    context.sheet.pieces.flatMap(({ id, kind }) => {
      const side = choiceOf(context, id, 'cord');
      if (side === null || !SIDES.has(side) || OPEN_END[kind]?.has(side)) return [];
      if (context.sheet.obstructions.some((thing) => thing.piece === id && thing.kind === 'cord-exit')) return [];
      return [
        {
          severity: 'doubt' as const,
          piece: id,
          slot: listSlot(context, id) ?? 'cord',
          subjects: [
            { on: 'question' as const, id: 'cord' },
            { on: 'piece' as const, id },
          ],
          numbers: { side },
          basis: [`cord=${side}`],
        },
      ];
    }),
};
