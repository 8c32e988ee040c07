import type { ElementHandle } from 'playwright-core';
import { openPhone } from '../support/phone.ts';
import type { Engine } from './engine.ts';

/** Debian's Chromium at phone size, by touch. appUrl: where requests may go. */
export async function startChromium(appUrl: string, profile: string): Promise<Engine> {
  const phone = await openPhone(appUrl, { profile });
  const { page } = phone;
  const element = async (expression: string): Promise<ElementHandle> => {
    const found = (await page.evaluateHandle(expression)).asElement();
    if (found === null) throw new Error(`nothing on the page for ${expression}`);
    return found;
  };
  return {
    name: 'Chromium',
    go: async (address) => {
      await page.goto('about:blank');
      await page.goto(address);
    },
    reload: async () => void (await page.reload()),
    read: (expression) => page.evaluate(expression),
    async press(expression, at) {
      const target = await element(expression);
      const box = at && (await target.boundingBox());
      const position = box && { x: box.width * at[0], y: box.height * at[1] };
      await target.tap({ timeout: 5_000, ...(position && { position }) });
    },
    write: async (expression, text) => (await element(expression)).type(text),
    put: async (expression, path) => (await element(expression)).setInputFiles(path),
    picture: () => page.screenshot(),
    end: () => phone.close(),
  };
}
