import { withdraw } from './en/withdraw.ts';

/** The words about withdrawing something for good, apart from the rest: they are seldom needed. */
export function sayWithdraw(): typeof withdraw {
  return withdraw;
}
