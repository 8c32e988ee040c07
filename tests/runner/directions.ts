import { z } from 'zod';
import { root } from '../../src/server/setup.mjs';
import { type Outcome, tool } from './step.ts';

const Report = z.object({
  summary: z.object({
    totalCruised: z.number(),
    violations: z.array(
      z.object({ from: z.string(), to: z.string(), rule: z.object({ name: z.string(), severity: z.string() }) }),
    ),
  }),
});
type Summary = z.infer<typeof Report>['summary'];

/** What .dependency-cruiser.cjs says about `src` in a folder: the project's own, or a planted one in a test. */
export async function cruise(folder: string = root): Promise<Summary> {
  const config = `${root}.dependency-cruiser.cjs`;
  const args = ['src', '--config', config, '--output-type', 'json'];
  const { out } = await tool('dependency-cruiser/bin/dependency-cruise.mjs', args, { quiet: true, cwd: folder });
  return Report.parse(JSON.parse(out)).summary;
}

/** Imports that go the wrong way. A run that saw no module at all has checked nothing and fails. */
export async function checkDirections(): Promise<Outcome> {
  const { totalCruised, violations } = await cruise();
  for (const { rule, from, to } of violations) console.error(`${rule.severity} ${rule.name}: ${from} -> ${to}`);
  console.log(`${totalCruised} modules looked at, ${violations.length} breaches.`);
  if (totalCruised === 0) console.error('No module was looked at: the check itself is broken.');
  return { ok: totalCruised > 0 && violations.length === 0 };
}
