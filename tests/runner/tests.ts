import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import { type Outcome, tool } from './step.ts';

const Report = z.object({
  success: z.boolean(),
  numPassedTests: z.number(),
  numFailedTests: z.number(),
  testResults: z.array(z.object({ status: z.string(), assertionResults: z.array(z.unknown()) })),
});

/** Runs one project of vitest and counts by its own report. No test at all is a failure. */
export async function runTests(project: 'unit' | 'browser'): Promise<Outcome> {
  const folder = mkdtempSync(join(tmpdir(), 'tapetrue-report-'));
  const file = join(folder, 'report.json');
  try {
    const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
    const { code } = await tool('vitest/vitest.mjs', ['run', '--project', project, ...reporters]);
    return existsSync(file) ? outcome(code, readFileSync(file, 'utf8')) : { ok: false };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Reads vitest's JSON report. A file that could not even be loaded has no tests of its own and counts as one failure. */
export function outcome(code: number, report: string): Outcome {
  const { success, numPassedTests, numFailedTests, testResults } = Report.parse(JSON.parse(report));
  const unloaded = testResults.filter((result) => result.status === 'failed' && result.assertionResults.length === 0);
  const failed = numFailedTests + unloaded.length;
  return { ok: code === 0 && success && failed === 0 && numPassedTests > 0, passed: numPassedTests, failed };
}
