/** `npm start`: everything a bare clone needs, then the app at an address. */
import process from 'node:process';
import { ensureBuilt, ensureInstalled, requireNode, runTyped } from './setup.mjs';

const args = process.argv.slice(2);
// These two answer at once; neither needs a build.
const onlyTells = args.includes('--help') || args.includes('--headers');

requireNode();
await ensureInstalled();
if (!onlyTells && !args.includes('--no-build')) {
  try {
    await ensureBuilt();
  } catch (error) {
    console.error(error.message);
    process.exit(1);
  }
}
// Ctrl-C reaches the server as well; this waits for it, so that it can close its connections.
process.on('SIGINT', () => {});
process.exitCode = await runTyped('src/server/main.ts', args);
