import { at } from '../array.ts';
import { settleFrame } from '../frame.ts';
import type { Network, Vector } from '../model.ts';
import { type Problem, prepare, settleKinds, weights } from '../problem.ts';
import type { Adjustment, Solution } from '../result.ts';
import { findShape } from '../search.ts';
import { decidingTapes } from '../shapes.ts';
import { chiSquareUpperQuantile } from '../statistics.ts';
import { type Outlook, outlookAt } from './outlook.ts';
import { type Guess, guessSwaps, guessTwo, trySwaps } from './pairs.ts';
import { guessPeeled } from './peel.ts';
import type { Explanation, SlipReport, SupposedSlip } from './report.ts';
import { accusable, type Idea, ideasFor, preparedOf, type Suspect, suspectFor } from './suspects.ts';
import { inTheSameWriting, typedLength } from './text.ts';

/** Chance that any one reading is a slip, before anything is known (a guess; one test found 20 %, a guided job fewer). */
const LOG_SLIP = Math.log(0.01);
/** A reading that was read again and agreed is this much less likely to be the wrong one. */
const LOG_CONFIRMED = Math.log(0.02);

/**
 * Names the slips behind an adjustment that is doubted: leaves suspects out, asks what each should have been, and
 * weighs every mistake people make, from the text as typed and from the network, against the fit it would give.
 * Deterministic. Readings nothing checks are never accused.
 */
export function nameSlips(network: Network, adjustment: Adjustment): SlipReport {
  if (adjustment.state === 'did-not-converge') return emptyReport('unlocated', []);
  const { solution } = adjustment;
  const impossible = solution.oneSided.filter((o) => o.impossible).map((o) => o.reading);
  if (!solution.doubted) return emptyReport('nothing-doubted', impossible);
  const problem = prepare(network);
  const weight = weights(problem);
  const positions = new Map(solution.points.map((p): [string, Vector] => [p.id, p.position]));
  const found = findShape(problem, weight, positions);
  settleKinds(problem, found.robust);
  const outlook = outlookAt(problem, found.robust, weight);
  const starts = [found.robust, found.solution.x];
  const fits = chiSquareUpperQuantile(1e-3, Math.max(1, solution.freedom - 1));
  const rows = shortlist(problem, outlook, solution, 14);
  const few = solution.freedom <= 3;
  const suspects = rows.map((row) =>
    suspectFor(outlook, weight, row, few ? [...starts, shapeWithout(network, problem, row)] : starts, fits),
  );
  const guesses: Guess[] = [];
  const ideas = new Map<Suspect, Idea[]>(suspects.map((s) => [s, ideasFor(outlook, s)]));
  for (const [suspect, list] of ideas) {
    for (const idea of list) {
      guesses.push({
        parts: [{ suspect, idea }],
        square: suspect.square + idea.misfit ** 2 * Number(idea.kind !== 'unexplained' && idea.belongsTo === undefined),
        score: -0.5 * suspect.square + idea.score + prior(suspect),
        x: suspect.x,
      });
    }
  }
  guesses.push(...guessSwaps(outlook, weight, found.robust, LOG_SLIP));
  const explained = (): boolean => guesses.some((g) => g.square < fits);
  if (few || !explained()) guesses.push(...trySwaps(outlook, weight, rows, starts, fits, LOG_SLIP));
  if (!explained() && solution.freedom > 2) guesses.push(...guessTwo(outlook, weight, starts, prior, fits));
  if (!explained() && solution.freedom > 3) {
    guesses.push(...guessPeeled(outlook, weight, starts, solution.freedom, prior));
  }
  return report(problem, guesses, impossible, solution);
}

/**
 * The shape found as if the row's reading had never been taken. With few spares a gross slip bends everything, and no
 * start that knows of it leads out of the bend.
 */
function shapeWithout(network: Network, problem: Problem, row: number): Float64Array {
  const id = problem.prepared[preparedOf(problem, row)]?.reading.id;
  const rest = prepare({ ...network, readings: network.readings.filter((r) => r.id !== id) });
  return settleFrame(rest, findShape(rest, weights(rest), undefined).robust, weights(rest)).x;
}

const prior = (suspect: Suspect): number => LOG_SLIP + (suspect.reading.confirmed === true ? LOG_CONFIRMED : 0);

const emptyReport = (verdict: SlipReport['verdict'], impossible: readonly string[]): SlipReport => ({
  verdict: verdict === 'nothing-doubted' && impossible.length > 0 ? 'unlocated' : verdict,
  explanations: [],
  readAgain: impossible,
  tellsApart: [],
  impossible,
});

/** Rows whose absence would help the fit most, by the linear forecast around the robust shape and by the solution's w. */
function shortlist(problem: Problem, outlook: Outlook, solution: Solution, wanted: number): number[] {
  const n = problem.rows;
  const rows = accusable(problem, outlook);
  const drop = (r: number): number => at(outlook.u, r) ** 2 / at(outlook.s, r * n + r);
  const byFit = [...rows].sort((a, b) => drop(b) - drop(a)).slice(0, wanted);
  const w = new Map(solution.readings.map((r) => [r.id, Math.abs(r.standardised ?? 0)]));
  const rowOf = (r: number): number =>
    w.get(problem.prepared[problem.rowStart.findLastIndex((f) => f <= r)]?.reading.id ?? '') ?? 0;
  const byW = [...rows].sort((a, b) => rowOf(b) - rowOf(a)).slice(0, 6);
  return [...new Set([...byFit, ...byW])];
}

/** Merges guesses that mean the same values, and turns scores into shares of belief. */
function report(
  problem: Problem,
  guesses: readonly Guess[],
  impossible: readonly string[],
  solution: Solution,
): SlipReport {
  if (guesses.length === 0) return { ...emptyReport('unlocated', impossible) };
  const top = Math.max(...guesses.map((g) => g.score));
  const merged = new Map<string, { lead: Guess; belief: number; kinds: Set<Idea['kind']> }>();
  for (const g of [...guesses].sort((a, b) => b.score - a.score)) {
    const belief = Math.exp(g.score - top);
    if (belief < 1e-6) break;
    const key = sameMeaning(g, merged) ?? meaning(g);
    const entry = merged.get(key);
    if (entry === undefined) merged.set(key, { lead: g, belief, kinds: new Set(g.parts.map((p) => p.idea.kind)) });
    else {
      entry.belief += belief;
      for (const p of g.parts) entry.kinds.add(p.idea.kind);
    }
  }
  const ranked = [...merged.values()].sort((a, b) => b.belief - a.belief);
  const total = ranked.reduce((sum, e) => sum + e.belief, 0);
  const explanations = ranked.slice(0, 16).map((e): Explanation => {
    const slips = e.lead.parts.map(({ suspect, idea }) => supposed(suspect, idea, e.kinds));
    return { slips, chance: e.belief / total, weightedSquare: e.lead.square };
  });
  const leaders = ranked.filter((e) => e.belief > 0.1 * (ranked[0]?.belief ?? 1)).slice(0, 4);
  const freedomLeft = Math.max(1, solution.freedom - (ranked[0]?.lead.parts.length ?? 1));
  const explained = (ranked[0]?.lead.square ?? Number.POSITIVE_INFINITY) < chiSquareUpperQuantile(1e-4, freedomLeft);
  const first = explanations[0]?.chance ?? 0;
  // With one spare the network cannot tell readings apart at all: the text alone must then be as good as certain.
  const sure = solution.freedom > 1 ? 0.7 : 0.95;
  return {
    verdict: !explained ? 'unlocated' : first >= sure ? 'named' : 'tied',
    explanations,
    readAgain: [...new Set(explanations.flatMap((e) => e.slips.map((s) => s.reading)))].slice(0, 5),
    tellsApart:
      leaders.length > 1
        ? decidingTapes(
            problem,
            leaders.map((e) => e.lead.x),
            3,
          )
        : [],
    impossible,
  };
}

const meaning = (g: Guess): string =>
  g.parts.map((p) => `${p.suspect.reading.id}=${p.idea.value.toFixed(2)}`).join('&');

/** An estimate without a value of its own joins the explanation whose value it cannot tell from its own. */
function sameMeaning(g: Guess, merged: ReadonlyMap<string, { lead: Guess }>): string | undefined {
  for (const [key, { lead }] of merged) {
    if (lead.parts.length !== g.parts.length) continue;
    const same = lead.parts.every((p, i) => {
      const q = g.parts[i];
      return (
        q !== undefined && q.suspect.reading.id === p.suspect.reading.id && Math.abs(q.idea.value - p.idea.value) < 1
      );
    });
    if (same) return key;
  }
  return undefined;
}

function supposed(suspect: Suspect, idea: Idea, kinds: ReadonlySet<Idea['kind']>): SupposedSlip {
  const { reading } = suspect;
  const typed = reading.text === undefined ? undefined : typedLength(reading.text, reading.unit ?? 'mm');
  const wouldRead =
    reading.kind === 'lean' ? `${((idea.value * 180) / Math.PI).toFixed(1)}°` : inTheSameWriting(idea.value, typed);
  return {
    reading: reading.id,
    kind: idea.kind,
    alsoKinds: [...kinds].filter((k) => k !== idea.kind),
    value: idea.value,
    valueSigma: idea.valueSigma,
    wouldRead,
    ...(idea.belongsTo === undefined ? {} : { belongsTo: idea.belongsTo }),
  };
}
