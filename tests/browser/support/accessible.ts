import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface WithAxe {
  readonly axe: { run(root: Document, options: RunOptions): Promise<AxeResults> };
}

/** Throws when axe finds anything serious or critical on the page as it stands, and says what and where. */
export async function expectAccessible(page: Page): Promise<void> {
  // Through the debugger, since the app's own policy lets no foreign script in.
  await page.evaluate(source);
  const violations = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as WithAxe;
    return (await axe.run(document, { resultTypes: ['violations'] })).violations;
  });
  const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  if (grave.length === 0) return;
  const lines = grave.flatMap(({ id, help, nodes }) => [
    `${id}: ${help}`,
    ...nodes.map(({ html, failureSummary }) => `  ${html}\n    ${failureSummary?.replace(/\n\s*/g, ' ') ?? ''}`),
  ]);
  throw new Error(`axe at ${page.url()}:\n${lines.join('\n')}`);
}
