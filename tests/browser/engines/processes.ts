import { type ChildProcess, type SpawnOptions, spawn } from 'node:child_process';
import { once } from 'node:events';
import process from 'node:process';

/** Starts a program in a process group of its own, so that all it starts can be ended with it. */
export function startGroup(program: string, args: readonly string[], options: SpawnOptions): ChildProcess {
  return spawn(program, [...args], { ...options, detached: true });
}

/** Ends a program that `startGroup` started, and everything in its group, at once. */
export async function endGroup(child: ChildProcess): Promise<void> {
  await end(child, (pid) => process.kill(-pid, 'SIGKILL'));
}

/** Ends one program at once. */
export async function endProcess(child: ChildProcess | null): Promise<void> {
  if (child) await end(child, (pid) => process.kill(pid, 'SIGKILL'));
}

async function end(child: ChildProcess, kill: (pid: number) => void): Promise<void> {
  const { pid } = child;
  if (pid === undefined) return;
  const gone = child.exitCode === null && child.signalCode === null ? once(child, 'exit') : null;
  try {
    kill(pid);
  } catch {
    // All of it has gone by itself.
  }
  await gone;
}
