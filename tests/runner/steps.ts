import { ensureBuilt } from '../../src/server/setup.mjs';
import { ensureChromium, ensureEzdxf, ensurePoppler, ensureScipy } from './chromium.ts';
import { checkDirections } from './directions.ts';
import { ensureEngines } from './engines.ts';
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
  { key: 'unit', title: 'Unit, reference, property and guard tests', run: unitTests },
  { key: 'browser', title: 'Browser tests', needs: ['build'], run: browserTests },
];

function unitTests(): Promise<Outcome> {
  ensureScipy();
  ensureEzdxf();
  return runTests('unit');
}

async function passes(script: string, args: readonly string[]): Promise<Outcome> {
  return { ok: (await tool(script, args)).code === 0 };
}

/** The app, the core without DOM types, and everything that runs on Node: each has its own settings. */
async function checkTypes(): Promise<Outcome> {
  const projects = ['tsconfig.json', 'src/core', 'tests'];
  const runs = await Promise.all(projects.map((project) => tool(TSC, ['-p', project], { quiet: true })));
  // A file that belongs to two of them is named once.
  const lines = new Set(runs.flatMap(({ out }) => out.split('\n')));
  for (const line of lines) if (line.trim() !== '') console.error(line);
  return { ok: runs.every(({ code }) => code === 0) };
}

async function build(): Promise<Outcome> {
  await ensureBuilt({ always: true });
  return { ok: true };
}

async function browserTests(): Promise<Outcome> {
  process.env.CHROMIUM = await ensureChromium();
  ensurePoppler();
  ensureEngines();
  return await runTests('browser');
}
