import type { ChildProcess } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { Builder, Capabilities, type WebDriver, type WebElement } from 'selenium-webdriver';
import { webkitDriverPath, xvfbPath } from '../../runner/engines.ts';
import { type Engine, SCREEN } from './engine.ts';
import { endGroup, startGroup } from './processes.ts';

const HOST = fileURLToPath(new URL('webkit-host.py', import.meta.url));
const START_LIMIT_MS = 30_000;

/** Debian's WebKitGTK at phone size, by mouse, on a screen that nobody sees. */
export async function startWebkit(profile: string): Promise<Engine> {
  const started: ChildProcess[] = [];
  const stop = async () => {
    for (const child of started.reverse()) await endGroup(child);
  };
  try {
    const display = await startScreen(started);
    const port = await freePort();
    const home = join(profile, 'home');
    mkdirSync(home, { recursive: true });
    const env = { ...process.env, DISPLAY: display, HOME: home, WEBKIT_HOST_DATA: join(profile, 'webkit'), ...QUIET };
    started.push(startGroup(webkitDriverPath(), [`--port=${port}`, '--host=127.0.0.1'], { env, stdio: 'ignore' }));
    await answers(port);
    const driver = await new Builder()
      .usingServer(`http://127.0.0.1:${port}`)
      .withCapabilities(
        new Capabilities({
          browserName: 'webkit-host',
          'webkitgtk:browserOptions': { binary: HOST, args: [] },
        }),
      )
      .build();
    return drive(driver, stop);
  } catch (error) {
    await stop();
    throw error;
  }
}

/** No bus, no settings and no accessibility service of a desktop. */
const QUIET = { NO_AT_BRIDGE: '1', GSETTINGS_BACKEND: 'memory', LANG: 'en_US.UTF-8', LANGUAGE: 'en_US' };

/** A page's own errors: this driver tells nobody. They are kept in the page and asked for before it goes. */
const LISTEN = `(() => {
  if (globalThis.heardFaults) return;
  globalThis.heardFaults = [];
  const hear = (what) => globalThis.heardFaults.push(String(what));
  addEventListener('error', (event) => hear(event.message ?? event.target?.src));
  addEventListener('unhandledrejection', (event) => hear(event.reason?.stack ?? event.reason));
  document.addEventListener('securitypolicyviolation', (event) => hear(event.violatedDirective + ' ' + event.blockedURI));
})()`;

function drive(driver: WebDriver, stop: () => Promise<void>): Engine {
  const faults: string[] = [];
  const read = (expression: string): Promise<unknown> => driver.executeScript(`return (${expression});`);
  const collect = async () => {
    const heard = await read('globalThis.heardFaults ?? []').catch(() => []);
    if (Array.isArray(heard)) faults.push(...heard.map(String));
  };
  const element = async (expression: string): Promise<WebElement> => {
    const found: WebElement | null = await driver.executeScript(`return (${expression});`);
    if (found === null) throw new Error(`nothing on the page for ${expression}`);
    return found;
  };
  return {
    name: 'WebKitGTK',
    async go(address) {
      await collect();
      await driver.get('about:blank');
      await driver.get(address);
      await read(LISTEN);
    },
    async reload() {
      await collect();
      await driver.navigate().refresh();
      await read(LISTEN);
    },
    read,
    async press(expression, at) {
      const target = await element(expression);
      if (at === undefined) return await target.click();
      const { width, height } = await target.getRect();
      const [x, y] = [Math.round(width * (at[0] - 0.5)), Math.round(height * (at[1] - 0.5))];
      await driver.actions().move({ origin: target, x, y }).click().perform();
    },
    write: async (expression, text) => (await element(expression)).sendKeys(text),
    put: async (expression, path) => (await element(expression)).sendKeys(path),
    picture: async () => Buffer.from(await driver.takeScreenshot(), 'base64'),
    async end() {
      await collect();
      await stop();
      if (faults.length > 0) throw new Error(`WebKitGTK had faults:\n${faults.join('\n')}`);
    },
  };
}

/** An X server without a screen on the next free number, which it says itself. */
async function startScreen(started: ChildProcess[]): Promise<string> {
  const size = `${SCREEN.width + 200}x${SCREEN.height + 200}x24`;
  const args = ['-displayfd', '3', '-screen', '0', size, '-nolisten', 'tcp'];
  const child = startGroup(xvfbPath(), args, { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] });
  started.push(child);
  const number = await new Promise<string>((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('Xvfb did not start in time')), START_LIMIT_MS);
    child.once('exit', () => reject(new Error('Xvfb ended at once')));
    let said = '';
    child.stdio[3]?.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (!said.includes('\n')) return;
      clearTimeout(timer);
      resolve(said.trim());
    });
  });
  return `:${number}`;
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  await new Promise((resolve) => server.close(resolve));
  if (address === null || typeof address === 'string') throw new Error('no free port');
  return address.port;
}

async function answers(port: number): Promise<void> {
  const until = performance.now() + START_LIMIT_MS;
  for (;;) {
    const there = await fetch(`http://127.0.0.1:${port}/status`).then(
      (answer) => answer.ok,
      () => false,
    );
    if (there) return;
    if (performance.now() > until) throw new Error('WebKitWebDriver did not answer in time');
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}
