import { type Acceptance, type Instruments, instrumentsOf, type Sheet } from '../job/index.ts';
import { rules } from './catalogue.ts';
import { makeContext } from './context.ts';
import type { Finding, RuleKey } from './finding.ts';
import { judgePiece } from './judgement.ts';
import { type Limits, limitsOf } from './limits.ts';
import type { PieceJudgement } from './piece-judgement.ts';
import type { Draft } from './rule.ts';
import { inWalkingOrder } from './walk.ts';

/** What a job is judged by: what its own shop set, unless something else is given. */
export interface CheckOptions {
  readonly limits: Limits;
  readonly instruments: Instruments;
}

/** All that can be said of a sheet. pieces: what the engine makes of each piece it can adjust, by its id. */
export interface Judgement {
  readonly findings: Finding[];
  readonly pieces: ReadonlyMap<string, PieceJudgement>;
}

/** The findings alone. */
export const check = (sheet: Sheet, options: Partial<CheckOptions> = {}): Finding[] => judge(sheet, options).findings;

/** What cannot be is said first: until it is mended, most of what the engine says of the same piece is only its echo. */
const LOUD: ReadonlySet<RuleKey> = new Set([
  'impossible-triangle',
  'box-diagonals',
  'impossible-tetrahedron',
  'takes-disagree',
]);
const ECHOES: ReadonlySet<RuleKey> = new Set(['reading-unchecked', 'two-shapes', 'point-loose', 'slip-unseen']);

/**
 * Where the engine names the one reading, that is said instead of the six lengths that cannot meet, and as gravely as they;
 * where it cannot, the impossible alone is said. While two looks at one reading differ, only that is.
 */
function withoutEchoes(findings: readonly Finding[]): Finding[] {
  const loud = new Set(findings.filter(({ rule, accepted }) => LOUD.has(rule) && !accepted).map(({ piece }) => piece));
  const named = new Map(
    findings
      .filter(({ rule, numbers }) => rule === 'reading-doubted' && numbers.verdict === 'named')
      .map(({ piece, subjects }) => [piece, new Set(subjects.map(({ id }) => id))]),
  );
  const open = findings.filter(({ rule, accepted }) => rule === 'takes-disagree' && !accepted);
  const unsettled = new Set(open.map(({ piece }) => piece));
  const twoLooks = new Set(
    open.flatMap(({ subjects }) => subjects.filter(({ on }) => on === 'reading').map(({ id }) => id)),
  );
  // That boats differ from side to side is no comfort about a reading that is thought to be wrong.
  const doubted = new Set(
    findings.flatMap(({ rule, subjects }) => (rule === 'reading-doubted' ? subjects.map(({ id }) => id) : [])),
  );
  return withoutTheSameLook(
    findings.flatMap((finding) => {
      const { rule, piece, subjects } = finding;
      if (rule === 'port-starboard' && subjects.some(({ id }) => doubted.has(id))) return [];
      if (finding.severity === 'stop' && subjects.some(({ id }) => twoLooks.has(id))) return [];
      const culprits = named.get(piece);
      if (rule === 'impossible-tetrahedron' && culprits && subjects.some(({ id }) => culprits.has(id))) return [];
      if (!loud.has(piece)) return [finding];
      if (rule === 'reading-doubted')
        return culprits && !unsettled.has(piece) ? [{ ...finding, severity: 'stop' as const, accepted: null }] : [];
      return ECHOES.has(rule) ? [] : [finding];
    }),
  );
}

/** A second look that another rule wants for a graver reason is said by that rule alone. */
function withoutTheSameLook(findings: readonly Finding[]): Finding[] {
  const wanted = new Set(
    findings
      .filter(({ rule }) => rule === 'reading-unchecked' || rule === 'slip-unseen')
      .flatMap(({ subjects }) => subjects.map(({ id }) => id)),
  );
  return findings.filter(
    ({ rule, subjects }) => rule !== 'missing-second-look' || !subjects.some(({ id }) => wanted.has(id)),
  );
}

/**
 * Every finding of every rule about a sheet, in walking order. Pure and deterministic; total on any sheet `fold` makes.
 */
export function judge(sheet: Sheet, options: Partial<CheckOptions> = {}): Judgement {
  const { limits = limitsOf(sheet.shop), instruments = instrumentsOf(sheet.shop) } = options;
  const context = makeContext(sheet, limits, instruments, judgePiece);
  const acceptances = new Map(sheet.acceptances.map((acceptance) => [keyOf(acceptance), acceptance]));
  const findings = rules.flatMap((rule) => rule.find(context).map((draft) => named(rule.key, draft, acceptances)));
  return {
    findings: inWalkingOrder(sheet, withoutEchoes(findings)),
    pieces: new Map(
      sheet.pieces.flatMap(({ id }) => {
        const judgement = context.judgement(id);
        return judgement ? [[id, judgement] as const] : [];
      }),
    ),
  };
}

const keyOf = ({ finding, basis }: Pick<Acceptance, 'finding' | 'basis'>): string => `${finding} ${basis}`;

function named(rule: RuleKey, draft: Draft, acceptances: ReadonlyMap<string, Acceptance>): Finding {
  const { severity, piece, subjects, numbers, slot } = draft;
  const ids = subjects.map((subject) => subject.id).sort();
  const id = `${rule}:${ids.join('+')}`;
  const basis = basisOf(draft.basis);
  const acceptance = severity === 'stop' ? undefined : acceptances.get(keyOf({ finding: id, basis }));
  const accepted = acceptance ? { reason: acceptance.reason, who: acceptance.who, at: acceptance.at } : null;
  return { id, rule, severity, piece, subjects: [...subjects], numbers, basis, slot, accepted };
}

const basisOf = (ids: readonly string[]): string => [...new Set(ids)].sort().join('+');
