/** Letters that run from right to left, and marks that make others do so (Unicode Standard Annex 9). */
const TURNS = /[\u0590-\u08ff\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufeff]/u;
const FORCES = /[\u202a-\u202e\u2066\u2067]/gu;
const OPENS = '\u2068';
const CLOSES = '\u2069';

/** What somebody typed, so that it turns nothing that is said before or after it: in an isolate, without marks that force. */
export function isolated(typed: string): string {
  if (!TURNS.test(typed)) return typed;
  const free = typed.replace(FORCES, '');
  const paired = free.split(OPENS).length === free.split(CLOSES).length;
  return `${OPENS}${paired ? free : free.replaceAll(OPENS, '').replaceAll(CLOSES, '')}${CLOSES}`;
}

/** The same words; whatever is put into one of their sentences stands isolated in it. */
export function isolating<T>(words: T): T {
  return mapped(
    words,
    (sentence) =>
      (...given) =>
        sentence(...given.map(heeded)),
  );
}

const heeded = (given: unknown): unknown =>
  typeof given === 'string'
    ? isolated(given)
    : mapped(
        given,
        (tell) =>
          (...asked) =>
            heeded(tell(...asked)),
        heeded,
      );

type Telling = (...given: unknown[]) => unknown;

/** The same lists and objects all the way down, their functions and what else they hold made anew. */
function mapped<T>(one: T, told: (tell: Telling) => Telling, held = (more: unknown) => mapped(more, told)): T {
  if (typeof one === 'function') return told(one as unknown as Telling) as T;
  if (Array.isArray(one)) return one.map(held) as T;
  if (typeof one !== 'object' || one === null || Object.getPrototypeOf(one) !== Object.prototype) return one;
  return Object.fromEntries(Object.entries(one).map(([key, more]) => [key, held(more)])) as T;
}
