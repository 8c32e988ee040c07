import { withdraw } from './en/withdraw.ts';
import { inLanguage } from './rooms.ts';

/** The words about withdrawing something for good, apart from the rest: they are seldom needed. */
export function sayWithdraw(): typeof withdraw {
  return inLanguage('withdraw', withdraw);
}
