import type { Counted, Tally } from '../../core/guide/tally.ts';
import { sayReceipt } from '../../text/receipt.ts';

/** How many measurements are there of those asked for. */
export const measurementsText = ({ measurements }: Tally): string => said('measurements', measurements);

/** The looks after the first: how many are taken, or what is left of the last ones. */
export function againText({ again: { all, done, last } }: Tally): string {
  const words = sayReceipt().tally;
  return [all > 0 && words.again(done, all), last > 0 && words.last(last)].filter(Boolean).join(', ');
}

/** Whatever is asked for besides measurements, each under its own name. */
export const othersText = ({ photos, answers, edges }: Tally): string[] => [
  ...some('photos', photos),
  ...some('answers', answers),
  ...some('edges', edges),
];

type Kind = 'measurements' | 'photos' | 'answers' | 'edges';

const said = (kind: Kind, { done, all, leftOut }: Counted): string => sayReceipt().tally[kind](done, all, leftOut);
export const some = (kind: Kind, counted: Counted): string[] => (counted.all > 0 ? [said(kind, counted)] : []);
