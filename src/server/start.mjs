/** `npm start`: everything a bare clone needs, then the app at an address. */
import process from 'node:process';
import { ensureBuilt, ensureInstalled, requireNode } from './setup.mjs';

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
// In this same process, so that whatever ends it ends the server.
const { register } = await import('tsx/esm/api');
register();
await import('./main.ts');
