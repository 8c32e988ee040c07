/** `npm test`: installs what is missing, then runs every check (tests/runner/). */
import process from 'node:process';
import { ensureInstalled, requireNode, runTyped } from '../src/server/setup.mjs';

requireNode();
await ensureInstalled();
process.exitCode = await runTyped('tests/runner/main.ts', process.argv.slice(2));
