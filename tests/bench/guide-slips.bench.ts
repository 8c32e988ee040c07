/**
 * For every guide and every way it is measured: what share of slips in each needed reading is noticed. `npm run bench
 * guide-slips [jobs] [kind]`; heavy, for each slip is a whole job judged.
 */
import process from 'node:process';
import { guides } from '../../src/core/guide/pieces/index.ts';
import { EFFORTS } from '../core/check/efforts.ts';
import { type Result, type Share, slipShares } from './guide-slips.ts';

const percent = (n: number, of: number): string => (of === 0 ? '-' : `${((100 * n) / of).toFixed(1)} %`);

function row(name: string, { clean, shares, twice }: Result): string {
  const cells = Object.values(shares).flatMap((bySlot) => {
    const all = [...bySlot.values()];
    const sum = (of: keyof Share): number => all.reduce((total, share) => total + share[of], 0);
    const worst = [...bySlot].sort(([, a], [, b]) => a.noticed / a.slips - b.noticed / b.slips)[0];
    const least = worst ? `${percent(worst[1].noticed, worst[1].slips)} (${worst[0]})` : '-';
    return [String(sum('slips')), percent(sum('noticed'), sum('slips')), least, percent(sum('named'), sum('noticed'))];
  });
  return `| ${[name, `${clean.accused} of ${clean.jobs}`, twice.join(' '), ...cells].join(' | ')} |`;
}

const [jobs = '4', only] = process.argv.slice(2);
console.log('A foot more or less, then two digits swapped: slips, noticed, least noticed reading, named alone.');
console.log(
  '| guide | clean jobs doubted | read twice | foot | noticed | least | named | digits | noticed | least | named |',
);
console.log(`|${'---|'.repeat(11)}`);
for (const guide of guides)
  if (only === undefined || guide.kind === only)
    for (const { answers } of EFFORTS[guide.kind] ?? [])
      console.log(
        row(`${guide.kind} ${Object.values(answers).join(' ')}`, slipShares({ guide, answers }, Number(jobs))),
      );
