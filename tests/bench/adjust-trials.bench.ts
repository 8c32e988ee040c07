/** Prints the slip trials with a number of jobs a cell that suits a benchmark; more as an argument. */
import process from 'node:process';
import { main } from './adjust-trials.ts';

main(Number(process.argv[2] ?? 40));
