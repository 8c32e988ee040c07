import { sayGlossary } from '../../../text/owner.ts';

export type Term = keyof ReturnType<typeof sayGlossary>['terms'];

/** A stretch of a text, and the trade's word it is, where it is one. */
export interface Told {
  text: string;
  term: Term | null;
}

/** Where one word means both, on a folding top it is one of the top's tubes, not the front of the boat. */
const bowOf = (kind: string | undefined): Term => (kind === 'folding-top' ? 'frame-bow' : 'bow');

/** A text in stretches, its trade's words apart so that each can be explained. The stretches make up the text again. */
export function toldInWords(text: string, kind?: string): Told[] {
  const { names } = sayGlossary();
  const byName = new Map(Object.entries(names).map(([term, name]) => [name, term as Term]));
  // English has one word for both, Spanish two.
  const shared = names['frame-bow'].startsWith(names.bow);
  if (shared) byName.delete(names['frame-bow']);
  const pattern = new RegExp(`(?<![\\p{L}-])(${[...byName.keys()].join('|')})(e?s)?(?![\\p{L}-])`, 'giu');
  const told: Told[] = [];
  let at = 0;
  for (const match of text.matchAll(pattern)) {
    const [whole, word = ''] = match;
    if (match.index > at) told.push({ text: text.slice(at, match.index), term: null });
    const term = byName.get(word.toLowerCase()) ?? null;
    told.push({ text: whole, term: shared && term === 'bow' ? bowOf(kind) : term });
    at = match.index + whole.length;
  }
  if (at < text.length) told.push({ text: text.slice(at), term: null });
  return told;
}

/** The trade's words of some texts, each once. */
export const termsIn = (texts: readonly string[], kind?: string): Term[] => [
  ...new Set(texts.flatMap((text) => toldInWords(text, kind).flatMap(({ term }) => term ?? []))),
];

const MARKS_BEFORE = /[^\s\p{L}\p{N}]+$/u;
const MARKS_AFTER = /^[^\s\p{L}\p{N}]+/u;

/** Brackets and commas go with the word they touch: beside a button a line may otherwise break. */
export function heldTogether(told: readonly Told[]): (Told & { before: string; after: string })[] {
  const held = told.map((stretch) => ({ ...stretch, before: '', after: '' }));
  for (const [i, word] of held.entries()) {
    if (word.term === null) continue;
    const [left, right] = [held[i - 1], held[i + 1]];
    if (left?.term === null) {
      word.before = MARKS_BEFORE.exec(left.text)?.[0] ?? '';
      left.text = left.text.slice(0, left.text.length - word.before.length);
    }
    if (right?.term === null) {
      word.after = MARKS_AFTER.exec(right.text)?.[0] ?? '';
      right.text = right.text.slice(word.after.length);
    }
  }
  return held;
}
