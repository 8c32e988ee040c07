import { ensureBuilt } from '../../src/server/setup.mjs';
import { ensureChromium } from './chromium.ts';
import { checkDirections } from './directions.ts';
import { checkSize } from './size.ts';
import { type Outcome, type Step, tool } from './step.ts';
import { runTests } from './tests.ts';

const TSC = 'typescript/bin/tsc';

/** Every check of the project, in the order `npm test` runs them: the quick ones first. */
export const steps: readonly Step[] = [
  { key: 'types', title: 'Types', run: checkTypes },
  {
    key: 'lint',
    title: 'Lint and format',
    run: () => passes('@biomejs/biome/bin/biome', ['check', '--error-on-warnings']),
  },
  {
    key: 'unused',
    title: 'Unused code',
    run: () => passes('knip/bin/knip.js', ['--config', '.knip.json', '--no-progress']),
  },
  { key: 'directions', title: 'Import directions', run: checkDirections },
  { key: 'build', title: 'Build', run: build },
  { key: 'size', title: 'Size of the first load', needs: ['build'], run: checkSize },
  { key: 'unit', title: 'Unit, reference, property and guard tests', run: () => runTests('unit') },
  { key: 'browser', title: 'Browser tests', needs: ['build'], run: browserTests },
];

async function passes(script: string, args: readonly string[]): Promise<Outcome> {
  return { ok: (await tool(script, args)).code === 0 };
}

/** The app, the core without DOM types, and everything that runs on Node: each has its own settings. */
async function checkTypes(): Promise<Outcome> {
  let ok = true;
  for (const project of ['tsconfig.json', 'src/core', 'tests']) {
    if ((await tool(TSC, ['-p', project])).code !== 0) ok = false;
  }
  return { ok };
}

async function build(): Promise<Outcome> {
  await ensureBuilt({ always: true });
  return { ok: true };
}

async function browserTests(): Promise<Outcome> {
  process.env.CHROMIUM = await ensureChromium();
  return await runTests('browser');
}
