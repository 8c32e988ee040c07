import type { Acceptance, Sheet } from '../job/index.ts';
import { rules } from './catalogue.ts';
import { makeContext } from './context.ts';
import type { Finding, RuleKey } from './finding.ts';
import { judgePiece } from './judgement.ts';
import { defaultLimits, type Limits } from './limits.ts';
import type { PieceJudgement } from './piece-judgement.ts';
import type { Draft } from './rule.ts';
import { defaultInstruments, type Instruments } from './sigma.ts';
import { inWalkingOrder } from './walk.ts';

/** What a shop may set for itself. */
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

/** What cannot be is said first: until it is mended, the engine's doubts about the same piece are only its echo. */
const LOUD: ReadonlySet<RuleKey> = new Set([
  'impossible-triangle',
  'box-diagonals',
  'impossible-tetrahedron',
  'takes-disagree',
]);
const ECHOES: ReadonlySet<RuleKey> = new Set([
  'reading-doubted',
  'reading-unchecked',
  'two-shapes',
  'point-loose',
  'slip-unseen',
]);

function withoutEchoes(findings: readonly Finding[]): Finding[] {
  const loud = new Set(findings.filter(({ rule, accepted }) => LOUD.has(rule) && !accepted).map(({ piece }) => piece));
  return findings.filter(({ rule, piece }) => !(ECHOES.has(rule) && loud.has(piece)));
}

/**
 * Every finding of every rule about a sheet, in walking order. Pure and deterministic; total on any sheet `fold` makes.
 */
export function judge(sheet: Sheet, options: Partial<CheckOptions> = {}): Judgement {
  const { limits = defaultLimits, instruments = defaultInstruments } = options;
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
