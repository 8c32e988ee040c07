/**
 * Owners who slip: what the second looks catch. `npm run bench owners [owners] [kind] [seed]`; the default is 500 for each guide
 * and rate. 0 % shows what a sound owner is asked for nothing.
 */
import process from 'node:process';
import { guides } from '../../src/core/guide/pieces/index.ts';
import { EFFORTS } from '../core/check/efforts.ts';
import { type Outcome, oneOwner } from './owners.ts';

const KINDS = ['tension-shade', 'open-bow', 'cockpit-cover', 'box-cover', 'cushion'];
const RATES = [0, 0.01, 0.05, 0.2];
const percent = (n: number, of: number): string => (of === 0 ? '-' : `${((100 * n) / of).toFixed(1)} %`);

function row(outcomes: readonly Outcome[]): string[] {
  const count = (of: (one: Outcome) => boolean): string => percent(outcomes.filter(of).length, outcomes.length);
  const cleared = outcomes.filter(({ rounds }) => rounds !== null);
  const mean = (of: (one: Outcome) => number): string =>
    (outcomes.reduce((sum, one) => sum + of(one), 0) / outcomes.length).toFixed(1);
  return [
    count(({ rounds }) => rounds === 0),
    count(({ rounds }) => rounds !== null && rounds <= 1),
    count(({ rounds }) => rounds !== null && rounds > 1),
    count(({ rounds }) => rounds === null),
    `${cleared.filter(({ bad }) => bad).length} (${percent(cleared.filter(({ bad }) => bad).length, cleared.length)})`,
    mean(({ wrong }) => wrong),
    mean(({ takes }) => takes),
    mean(({ asked }) => asked),
  ];
}

const [owners = '500', only = '', seed = '1', looks = 'yes'] = process.argv.slice(2);
console.log(
  '| guide | attempts wrong | cleared unasked | after one ask at most | after more | never | bad of cleared | slips a job | takes a job | asked again |',
);
console.log(`|${'---|'.repeat(10)}`);
for (const kind of KINDS.filter((one) => one.includes(only))) {
  const guide = guides.find((one) => one.kind === kind);
  const [effort] = EFFORTS[guide?.kind ?? 'free'] ?? [];
  if (!guide || !effort) continue;
  for (const rate of RATES) {
    const one = { guide, answers: effort.answers, rate, looks: looks === 'yes' };
    const outcomes = Array.from({ length: Number(owners) }, (_, k) => oneOwner(one, 1000 * Number(seed) + 7 * k + 1));
    console.log(`| ${[kind, percent(rate, 1), ...row(outcomes)].join(' | ')} |`);
    if (process.env.WORST)
      console.log(
        outcomes
          .filter(({ bad }) => bad)
          .map(({ worst }) => worst)
          .join('; '),
      );
  }
}
