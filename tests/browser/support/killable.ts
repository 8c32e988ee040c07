import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { type Browser, chromium, type Page } from 'playwright-core';
import { chromiumPath } from '../../runner/chromium.ts';
import { type Faults, watchFaults } from './faults.ts';
import { SCREENS } from './phone.ts';
import { CHROMIUM_ARGS } from './profile.ts';

/** A browser that a test can end the way a phone's system does: at once, in the middle of anything. */
export interface Killable {
  readonly page: Page;
  readonly faults: Faults;
  /** SIGKILL by process id. The profile stays as it is at that moment. */
  kill(): Promise<void>;
}

const START_LIMIT_MS = 30_000;

/** Starts Chromium by itself on a profile, which the caller keeps. Use `click`, not `tap`: it has no touch screen. */
export async function openKillable(appUrl: string, profile: string): Promise<Killable> {
  const args = [...CHROMIUM_ARGS, '--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`];
  const child = spawn(chromiumPath(), [...args, 'about:blank'], { stdio: ['ignore', 'ignore', 'pipe'] });
  let browser: Browser | undefined;
  const kill = async () => {
    await killByPid(child);
    await browser?.close();
  };
  try {
    browser = await chromium.connectOverCDP(await debuggerAddress(child));
    const context = browser.contexts()[0] ?? (await browser.newContext());
    const faults = await watchFaults(context, appUrl);
    const page = await context.newPage();
    await page.setViewportSize(SCREENS.phone.viewport);
    return { page, faults, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

async function killByPid(child: ChildProcess): Promise<void> {
  if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  process.kill(child.pid, 'SIGKILL');
  await gone;
}

function debuggerAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const fail = (why: string) => reject(new Error(`Chromium ${why}. It said:\n${said}`));
    const timer = setTimeout(() => fail('did not start in time'), START_LIMIT_MS);
    child.once('error', reject);
    child.once('exit', () => fail('ended at once'));
    child.stderr?.setEncoding('utf8').on('data', (chunk: string) => {
      said += chunk;
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (address === undefined) return;
      clearTimeout(timer);
      resolve(address);
    });
  });
}
