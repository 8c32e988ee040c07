import type { Engine, Place } from './engine.ts';

/** How long a person waits for something to show before giving up, ms. */
const PATIENCE_MS = 15_000;
const GLANCE_MS = 60;

/** A person's hand on a phone, the same in every browser: sees what is shown, presses, types. */
export class Hand {
  readonly engine: Engine;

  constructor(engine: Engine) {
    this.engine = engine;
  }

  /** All that can be read on the screen, scrolled to or not. */
  async text(): Promise<string> {
    return String(await this.engine.read('document.body.innerText'));
  }

  /** The address's hash, readable. */
  async place(): Promise<string> {
    return decodeURIComponent(String(await this.engine.read('location.hash')));
  }

  async isThere(selector: string, name?: string | RegExp): Promise<boolean> {
    return (await this.engine.read(`${found(selector, name)} !== null`)) === true;
  }

  async count(selector: string): Promise<number> {
    return Number(await this.engine.read(`document.querySelectorAll(${JSON.stringify(selector)}).length`));
  }

  /** Waits for something to be so. what: as the failure calls it. */
  async until(what: string, isSo: () => Promise<boolean>): Promise<void> {
    const end = performance.now() + PATIENCE_MS;
    while (!(await isSo())) {
      if (performance.now() > end)
        throw new Error(
          `${this.engine.name}: waited in vain for ${what} at ${await this.place()}\n${await this.text()}`,
        );
      await new Promise((resolve) => setTimeout(resolve, GLANCE_MS));
    }
  }

  async sees(text: string | RegExp): Promise<void> {
    await this.until(`"${text}"`, async () => matches(await this.text(), text));
  }

  async seesElement(selector: string): Promise<void> {
    await this.until(selector, () => this.isThere(selector));
  }

  /** Presses a button or a link by what it is called. */
  press(name: string | RegExp): Promise<void> {
    return this.#on('press', 'button, a, summary', name, (expression) => this.engine.press(expression));
  }

  pressElement(selector: string, at?: Place): Promise<void> {
    return this.#on('press', selector, undefined, (expression) => this.engine.press(expression, at));
  }

  /** Presses what may be gone by then. */
  async pressIfThere(selector: string): Promise<void> {
    if (!(await this.isThere(selector))) return;
    await this.engine.press(found(selector)).catch(async (error: unknown) => {
      if (await this.isThere(selector)) throw error;
    });
  }

  /** Types into a field by its label. */
  write(label: string | RegExp, text: string): Promise<void> {
    return this.#on('write', 'input, textarea', label, (expression) => this.engine.write(expression, text));
  }

  async put(selector: string, path: string): Promise<void> {
    await this.until(selector, async () => (await this.count(selector)) > 0);
    await this.engine.put(`document.querySelector(${JSON.stringify(selector)})`, path);
  }

  /** Does something to an element as soon as it is there; again where the page was drawn anew under the hand. */
  async #on(
    deed: string,
    selector: string,
    name: string | RegExp | undefined,
    act: (expression: string) => Promise<void>,
  ) {
    await this.until(`${deed} ${name ?? selector}`, () => this.isThere(selector, name));
    try {
      await act(found(selector, name));
    } catch (error) {
      if (!(await this.isThere(selector, name))) throw error;
      await act(found(selector, name));
    }
  }
}

const matches = (text: string, wanted: string | RegExp): boolean =>
  typeof wanted === 'string' ? text.includes(wanted) : wanted.test(text);

/**
 * The first element that is shown and is called so: by its label, else by its own words. A string is its whole name. As an
 * expression for the page, null where there is none.
 */
function found(selector: string, name?: string | RegExp): string {
  const wanted =
    name === undefined
      ? 'true'
      : typeof name === 'string'
        ? `called === ${JSON.stringify(name)}`
        : `${name}.test(called)`;
  return `((all) => {
    for (const one of all) {
      const labels = one.labels ? [...one.labels].map((label) => label.innerText).join(' ') : '';
      const called = (one.getAttribute('aria-label') ?? (labels || one.innerText)).replace(/\\s+/g, ' ').trim();
      const { visibility, pointerEvents } = getComputedStyle(one);
      // What takes no tap yet is waited for, as it is by an eye that has to read it first.
      const shown = one.getClientRects().length > 0 && visibility === 'visible' && pointerEvents !== 'none';
      if (shown && !one.disabled && ${wanted}) return one;
    }
    return null;
  })(document.querySelectorAll(${JSON.stringify(selector)}))`;
}
