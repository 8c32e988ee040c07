import { spawn } from 'node:child_process';
import { join } from 'node:path';
import process from 'node:process';
import { root } from '../../src/server/setup.mjs';

/** What came of one step. Counts are tests; a step without tests of its own has none. */
export interface Outcome {
  readonly ok: boolean;
  readonly passed?: number;
  readonly failed?: number;
}

export interface Step {
  /** What `--only=` calls it. */
  readonly key: string;
  readonly title: string;
  /** Keys of steps without which this one cannot run. */
  readonly needs?: readonly string[];
  run(): Promise<Outcome>;
}

/** Runs a tool of node_modules. Its output goes to the terminal, or is given back when `quiet`. */
export async function tool(
  script: string,
  args: readonly string[],
  { quiet = false, cwd = root }: { quiet?: boolean; cwd?: string } = {},
): Promise<{ code: number; out: string }> {
  const child = spawn(process.execPath, [join(root, 'node_modules', script), ...args], {
    cwd,
    stdio: ['ignore', quiet ? 'pipe' : 'inherit', 'inherit'],
  });
  let out = '';
  child.stdout?.setEncoding('utf8').on('data', (chunk: string) => {
    out += chunk;
  });
  return await new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code) => resolve({ code: code ?? 1, out }));
  });
}

/** Which steps to run and which to leave out, because something they need went wrong. */
export function isBlocked(step: Step, wrong: ReadonlySet<string>): boolean {
  return (step.needs ?? []).some((key) => wrong.has(key));
}

/** The steps an `--only=a,b` asks for; all of them without it. Throws on a name nobody has. */
export function chosen(steps: readonly Step[], args: readonly string[]): readonly Step[] {
  const unknown = args.find((arg) => !arg.startsWith('--only='));
  if (unknown !== undefined) throw new Error(`Not an option: ${unknown}. There is --only=${keys(steps)}`);
  const only = args.flatMap((arg) => arg.slice('--only='.length).split(','));
  const stranger = only.find((key) => !steps.some((step) => step.key === key));
  if (stranger !== undefined) throw new Error(`No step is called "${stranger}". There are: ${keys(steps)}`);
  return only.length === 0 ? steps : steps.filter((step) => only.includes(step.key));
}

function keys(steps: readonly Step[]): string {
  return steps.map((step) => step.key).join(',');
}
