import { apart, Job } from './build.ts';

type Place = readonly [number, number, number];

/** A flat deck: three marks, and an edge from P by way of T to S, all taped to all; invented. */
export const DECK: Readonly<Record<string, [number, number, number]>> = {
  W1: [0, 900, 0],
  W2: [0, -900, 0],
  F: [1450, 0, 0],
  P: [100, 1000, 0],
  T: [2000, 0, 0],
  S: [100, -1000, 0],
};

export const toDeck = (place: Place, from: readonly string[]): Record<string, number> =>
  Object.fromEntries(from.map((name) => [name, apart(DECK[name] ?? [0, 0, 0], place)]));

/** The deck as measured, with the edge's line told, its fasteners at these places, and these questions open. */
export function deck(fasteners: readonly number[] = [], questions: readonly string[] = []): Job {
  const names = Object.keys(DECK);
  const pairs = names.flatMap((a, i) => names.slice(i + 1).map((b) => `${a}-${b}`));
  const job = new Job().piece({
    flat: true,
    points: { ...DECK },
    roles: { W1: 'mark', W2: 'mark', F: 'mark', P: 'edge', T: 'edge', S: 'edge' },
    sides: { W1: ['port'], W2: ['starboard'], F: ['forward'] },
    readings: pairs,
    runs: [{ name: 'edge', points: ['P', 'T', 'S'] }],
    questions: questions.map((slot) => ({ slot })),
  });
  for (const pair of pairs) {
    const [a = '', b = ''] = pair.split('-');
    job.take(pair, apart(DECK[a] ?? [0, 0, 0], DECK[b] ?? [0, 0, 0]));
  }
  return job.runDetails('edge', { line: 'fastener-line' }).fasteners('edge', fasteners);
}
