import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import puppeteer, { type ElementHandle } from 'puppeteer-core';
import { firefoxPath } from '../../runner/engines.ts';
import { type Engine, SCREEN } from './engine.ts';
import { endProcess } from './processes.ts';

/** Debian's Firefox at phone size, by mouse: its driver has no touch screen. */
export async function startFirefox(profile: string): Promise<Engine> {
  const home = join(profile, 'home');
  mkdirSync(home, { recursive: true });
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: firefoxPath(),
    headless: true,
    userDataDir: join(profile, 'firefox'),
    env: { ...process.env, HOME: home },
    extraPrefsFirefox: { 'intl.accept_languages': 'en-US', 'intl.locale.requested': 'en-US' },
  });
  const page = await browser.newPage();
  await page.setViewport({ ...SCREEN, deviceScaleFactor: 2 });
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error instanceof Error ? (error.stack ?? error.message) : String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  const element = async (expression: string): Promise<ElementHandle<Element>> => {
    const found = (await page.evaluateHandle(expression)).asElement();
    if (found === null) throw new Error(`nothing on the page for ${expression}`);
    return found as ElementHandle<Element>;
  };
  return {
    name: 'Firefox',
    go: async (address) => {
      await page.goto('about:blank');
      await page.goto(address);
    },
    reload: async () => void (await page.reload()),
    read: (expression) => page.evaluate(expression),
    async press(expression, at) {
      const target = await element(expression);
      const box = at && (await target.boundingBox());
      await target.click(box ? { offset: { x: box.width * at[0], y: box.height * at[1] } } : {});
    },
    write: async (expression, text) => (await element(expression)).type(text),
    put: async (expression, path) => ((await element(expression)) as ElementHandle<HTMLInputElement>).uploadFile(path),
    picture: async () => Buffer.from(await page.screenshot()),
    async end() {
      await endProcess(browser.process());
      await browser.disconnect().catch(() => undefined);
      if (faults.length > 0) throw new Error(`Firefox had faults:\n${faults.join('\n')}`);
    },
  };
}
