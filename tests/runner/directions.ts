import { z } from 'zod';
import { type Outcome, tool } from './step.ts';

const Report = z.object({
  summary: z.object({
    totalCruised: z.number(),
    violations: z.array(
      z.object({ from: z.string(), to: z.string(), rule: z.object({ name: z.string(), severity: z.string() }) }),
    ),
  }),
});

/** Imports that go against .dependency-cruiser.cjs. A run that saw no module at all has checked nothing and fails. */
export async function checkDirections(): Promise<Outcome> {
  const args = ['src', '--config', '.dependency-cruiser.cjs', '--output-type', 'json'];
  const { out } = await tool('dependency-cruiser/bin/dependency-cruise.mjs', args, { quiet: true });
  const { summary } = Report.parse(JSON.parse(out));
  for (const { rule, from, to } of summary.violations) console.error(`${rule.severity} ${rule.name}: ${from} -> ${to}`);
  console.log(`${summary.totalCruised} modules looked at, ${summary.violations.length} breaches.`);
  if (summary.totalCruised === 0) console.error('No module was looked at: the check itself is broken.');
  return { ok: summary.totalCruised > 0 && summary.violations.length === 0 };
}
