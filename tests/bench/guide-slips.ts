/**
 * What share of slips in each reading of a guide is noticed, and by a finding that names the one reading. Shapes and noise
 * are invented and seeded. A slip is noticed where a stop or a doubt stands that the same job without the slip does not have.
 */
import { check, type Finding } from '../../src/core/check/index.ts';
import type { Guide } from '../../src/core/guide/index.ts';
import type { Who } from '../../src/core/job/index.ts';
import { installer } from '../core/check/build.ts';
import { deviates, Measured, type Place } from '../core/check/measured.ts';

interface Trial {
  readonly guide: Guide;
  readonly answers: Readonly<Record<string, string>>;
  readonly who?: Who;
}

export interface Share {
  slips: number;
  noticed: number;
  /** Of those noticed: how many by a finding that names this reading and no other. */
  named: number;
}

const FOOT = 304.8;
const SLIPS: Readonly<Record<string, (mm: number) => number[]>> = {
  foot: (mm) => [mm + FOOT, ...(mm > FOOT + 50 ? [mm - FOOT] : [])],
  digits: (mm) => swapped(mm),
};

/** Two neighbouring digits of the whole inches the other way round: 68 for 86. */
function swapped(mm: number): number[] {
  // A station may lie a little before its string begins.
  const inches = Math.floor(Math.abs(mm) / 25.4);
  const digits = String(inches);
  return [...digits.slice(1)].flatMap((_, i) => {
    const turned = Number(digits.slice(0, i) + digits[i + 1] + digits[i] + digits.slice(i + 2));
    return turned === inches || turned === 0 ? [] : [mm + Math.sign(mm) * (turned - inches) * 25.4];
  });
}

/** How far a true point lies from where the guide expects it, mm: one standard deviation. */
const WANDER = 40;

/** A boat like the guide's, with everything asked read once and what must be read twice read twice. */
function jobOf({ guide, answers, who = installer }: Trial, seed: number) {
  const places = new Map<string, Place>();
  const wander = deviates(seed);
  for (const { slot, nominal } of guide.points) {
    const [x, y, z] = nominal;
    places.set(slot, [x + WANDER * wander(), y + WANDER * wander(), guide.flat ? z : z + WANDER * wander()]);
  }
  const place = (slot: string, nominal: Place): Place => places.get(slot) ?? nominal;
  const measured = (more: object): Measured =>
    new Measured(guide, { who, answers, place, noise: deviates(seed + 1), ...more });
  const once = measured({});
  const twice = check(once.job.sheet())
    .filter(({ rule }) => rule === 'reading-unchecked' || rule === 'slip-unseen')
    .flatMap(({ subjects }) => once.names(subjects.filter(({ on }) => on === 'reading')));
  const again = [...new Set(twice)];
  return { measured: (slip?: readonly [string, number]) => withSlip(measured, again, slip), again };
}

/** The slip is made the first time the tape is read; the second look, where there is one, is sound. */
function withSlip(measured: (more: object) => Measured, twice: readonly string[], slip?: readonly [string, number]) {
  const made = measured(slip ? { added: { [slip[0]]: slip[1] } } : {});
  for (const slot of twice) made.read(slot, { added: {} });
  return made;
}

const loud = (findings: readonly Finding[]): Finding[] =>
  findings.filter(({ severity, accepted }) => severity !== 'note' && accepted === null);

export interface Result {
  readonly twice: readonly string[];
  readonly clean: { jobs: number; accused: number };
  /** By slip, by slot. */
  readonly shares: Readonly<Record<string, ReadonlyMap<string, Share>>>;
}

export function slipShares(trial: Trial, jobs: number, seed = 1): Result {
  const shares = Object.fromEntries(Object.keys(SLIPS).map((kind) => [kind, new Map<string, Share>()]));
  const clean = { jobs, accused: 0 };
  const twice = new Set<string>();
  for (let k = 0; k < jobs; k++) {
    const job = jobOf(trial, seed + 10 * k);
    for (const slot of job.again) twice.add(slot);
    const sound = job.measured();
    const before = new Set(loud(check(sound.job.sheet())).map(({ id }) => id));
    if (before.size > 0) clean.accused++;
    const needed = sound.job.sheet().readings.filter((one) => one.needed && one.kind !== 'running');
    for (const { slot, id, value } of needed) {
      if (slot === null || value === null) continue;
      for (const [kind, make] of Object.entries(SLIPS))
        for (const wrong of make(value)) {
          const findings = loud(check(job.measured([slot, wrong - value]).job.sheet()));
          const more = findings.filter((finding) => !before.has(finding.id));
          const share = shares[kind]?.get(slot) ?? { slips: 0, noticed: 0, named: 0 };
          share.slips++;
          if (more.length > 0) share.noticed++;
          if (
            more.some(
              ({ subjects }) =>
                subjects.filter(({ on }) => on === 'reading').length === 1 && subjects.some((s) => s.id === id),
            )
          )
            share.named++;
          shares[kind]?.set(slot, share);
        }
    }
  }
  return { twice: [...twice], clean, shares };
}
