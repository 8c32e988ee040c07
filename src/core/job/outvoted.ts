/** Standard deviations of a difference beyond which two takes of one reading are told apart. */
export const TAKE_SIGMAS = 3.3;

interface Look {
  readonly value: number;
  readonly sigma: number;
}

/**
 * The looks at one reading (in the order they were taken) that count together; null where they settle nothing. Two must agree
 * with each other; of more, those count that agree with the one in the middle of them, if they are more than agree round any
 * other, and the last look is among them: whoever looked again and saw something else has reopened the question. Values
 * are never bent: a look counts as it was typed, or not at all.
 */
export function agreement<T extends Look>(looks: readonly T[], sigmas = TAKE_SIGMAS): readonly T[] | null {
  const last = looks.at(-1);
  if (last === undefined) return null;
  const groups = looks.map((middle) => roundThe(middle, looks, sigmas));
  const best = groups.reduce((a, b) => (b.length > a.length || (b.length === a.length && width(b) < width(a)) ? b : a));
  const rivalled = groups.some((group) => group.length === best.length && !group.some((look) => best.includes(look)));
  const alone = best.length < 2 && looks.length > 1;
  return alone || rivalled || !best.includes(last) ? null : best;
}

const roundThe = <T extends Look>(middle: T, looks: readonly T[], sigmas: number): T[] =>
  looks.filter(({ value, sigma }) => Math.abs(value - middle.value) <= sigmas * Math.hypot(sigma, middle.sigma));

const width = (group: readonly Look[]): number =>
  Math.max(...group.map(({ value }) => value)) - Math.min(...group.map(({ value }) => value));

/** The looks that two or more others outvote; none while nothing is settled. */
export function outvoted<T extends Look>(looks: readonly T[]): ReadonlySet<T> {
  const counting = agreement(looks);
  return new Set(counting ? looks.filter((look) => !counting.includes(look)) : []);
}
