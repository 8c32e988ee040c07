import { receipt } from './en/receipt.ts';

/** What is said once a packet was handed over, apart from the rest. */
export const sayReceipt = (): typeof receipt => receipt;
