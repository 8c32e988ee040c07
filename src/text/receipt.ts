import { receipt } from './en/receipt.ts';
import { inLanguage } from './rooms.ts';

/** What is said once a packet was handed over, apart from the rest. */
export const sayReceipt = (): typeof receipt => inLanguage('receipt', receipt);
