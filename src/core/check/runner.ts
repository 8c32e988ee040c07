import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Acceptance, Sheet } from '../job/index.ts';
import { rules } from './catalogue.ts';
import { makeContext } from './context.ts';
import type { Finding, RuleKey } from './finding.ts';
import { defaultLimits, type Limits } from './limits.ts';
import type { Draft } from './rule.ts';
import { defaultInstruments, type Instruments } from './sigma.ts';
import { inWalkingOrder } from './walk.ts';

/** What a shop may set for itself. */
export interface CheckOptions {
  readonly limits: Limits;
  readonly instruments: Instruments;
}

/** An entry that accepts a finding carries id and basis as one line each; a longer basis travels as its digest. */
const LONGEST_BASIS = 400;

/**
 * Every finding of every rule about a sheet, in walking order. Pure and deterministic; total on any sheet `fold` makes.
 */
export function check(sheet: Sheet, options: Partial<CheckOptions> = {}): Finding[] {
  const context = makeContext(sheet, options.limits ?? defaultLimits, options.instruments ?? defaultInstruments);
  const acceptances = new Map(sheet.acceptances.map((acceptance) => [keyOf(acceptance), acceptance]));
  const findings = rules.flatMap((rule) => rule.find(context).map((draft) => named(rule.key, draft, acceptances)));
  return inWalkingOrder(sheet, findings);
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

function basisOf(ids: readonly string[]): string {
  const joined = [...new Set(ids)].sort().join('+');
  return joined.length <= LONGEST_BASIS ? joined : `sha256-${bytesToHex(sha256(utf8ToBytes(joined)))}`;
}
