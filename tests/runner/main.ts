import process from 'node:process';
import { chosen, isBlocked, type Outcome, type Step } from './step.ts';
import { steps } from './steps.ts';

try {
  process.exitCode = await runAll(chosen(steps, process.argv.slice(2)));
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

/** Runs the steps in order, all of them even after a failure, and gives the exit code. */
async function runAll(wanted: readonly Step[]): Promise<number> {
  const wrong = new Set<string>();
  const times: string[] = [];
  let passed = 0;
  let failed = 0;
  for (const step of wanted) {
    console.log(`\n== ${step.title} ==`);
    const started = performance.now();
    const outcome = isBlocked(step, wrong) ? blocked(step) : await attempt(step);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    if (!outcome.ok) wrong.add(step.key);
    passed += outcome.passed ?? 0;
    // A check that fails without a failing test of its own counts as one failure.
    failed += Math.max(outcome.failed ?? 0, outcome.ok ? 0 : 1);
    const line = `${outcome.ok ? 'ok    ' : 'FAILED'} ${step.title}, ${seconds} s`;
    console.log(line);
    times.push(line);
  }
  const tested = wanted.some((step) => step.key === 'unit' || step.key === 'browser');
  if (tested && passed + failed === 0) console.error('No test ran at all.');
  console.log(`\n== Summary ==\n${times.join('\n')}\n\n${passed} passed, ${failed} failed`);
  return failed > 0 || (tested && passed === 0) ? 1 : 0;
}

function blocked(step: Step): Outcome {
  console.error(`Not run: it needs ${(step.needs ?? []).join(', ')}, which failed.`);
  return { ok: false };
}

async function attempt(step: Step): Promise<Outcome> {
  try {
    return await step.run();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return { ok: false };
  }
}
