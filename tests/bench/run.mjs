/** `npm run bench`: sets up, builds, then runs every tests/bench/*.bench.ts, one after another. Each prints its own table. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { ensureBuilt, ensureInstalled, requireNode, root, runTyped } from '../../src/server/setup.mjs';

const wanted = process.argv[2] ?? '';
const files = readdirSync(join(root, 'tests/bench')).filter(
  (name) => name.endsWith('.bench.ts') && name.includes(wanted),
);

requireNode();
await ensureInstalled();
await ensureBuilt();

let failed = 0;
for (const file of files.sort()) {
  console.log(`\n== ${file.replace('.bench.ts', '')} ==`);
  // One after another, each in a process of its own, so that none feels another's heap.
  if ((await runTyped(join('tests/bench', file), process.argv.slice(3))) !== 0) failed += 1;
}
if (files.length === 0) console.error('There is no benchmark to run.');
process.exitCode = failed > 0 || files.length === 0 ? 1 : 0;
