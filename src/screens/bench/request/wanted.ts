import type { Guide } from '../../../core/guide/index.ts';
import { guides } from '../../../core/guide/pieces/index.ts';
import type { PieceKind } from '../../../core/job/index.ts';
import type { JobRequest } from '../../../core/packet/link/index.ts';

/** The pieces ticked so far, with what the shop knows of each; in the order of the guides. */
export type Wanted = ReadonlyMap<PieceKind, Readonly<Record<string, string>>>;

export function ticked(wanted: Wanted, kind: PieceKind, on: boolean): Wanted {
  const next = new Map(wanted);
  if (on) next.set(kind, {});
  else next.delete(kind);
  return next;
}

/** choice '': left open, to be asked at the boat. What was only asked because of it is left open too. */
export function answered(wanted: Wanted, kind: PieceKind, slot: string, choice: string): Wanted {
  const { [slot]: _, ...others } = wanted.get(kind) ?? {};
  const answers = choice === '' ? others : { ...others, [slot]: choice };
  const guide = guides.find((one) => one.kind === kind);
  const asked = new Set(guide ? questionsOf(guide, answers).map((question) => question.slot) : []);
  const kept = Object.entries(answers).filter(([key]) => asked.has(key));
  return new Map(wanted).set(kind, Object.fromEntries(kept));
}

/** The questions of a guide that are asked as these answers stand. */
export function questionsOf({ walk }: Guide, answers: Readonly<Record<string, string>>) {
  return walk
    .filter((step) => step.on === 'question')
    .filter(({ when }) => !when || when.is.includes(answers[when.question] ?? ''));
}

export const piecesOf = (wanted: Wanted, nameOf: (kind: PieceKind) => string): JobRequest['pieces'] =>
  guides.flatMap(({ kind }) => {
    const answers = wanted.get(kind);
    return answers ? [{ kind, name: nameOf(kind), answers: { ...answers } }] : [];
  });
