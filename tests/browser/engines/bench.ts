import { expect } from 'vitest';
import { codeInText } from '../../../src/core/packet/link/index.ts';
import { type Phone, withPhone } from '../support/phone.ts';

/** The shop, at a desk, in Chromium. */
export class Bench {
  readonly #app: string;
  readonly #profile: string;

  constructor(app: string, profile: string) {
    this.#app = app;
    this.#profile = profile;
  }

  /** Asks an owner for a tension shade; the link. */
  ask(): Promise<string> {
    return this.#at(async (phone) => {
      const { page } = phone;
      await page.getByRole('link', { name: 'Ask an owner to measure' }).click();
      await page.getByRole('checkbox', { name: 'Tension shade' }).check();
      await page.getByRole('textbox', { name: 'Customer' }).fill('R. Sample');
      await page.getByRole('textbox', { name: 'Boat' }).fill('Perla');
      await page.getByRole('textbox', { name: 'Your shop' }).fill('A canvas shop');
      await page.getByRole('textbox', { name: /^How to reach you/ }).fill('555 0100');
      await page.getByRole('textbox', { name: 'Your name' }).fill('Robin');
      await page.getByTestId('make-link').click();
      return await linkOf(phone);
    });
  }

  /** Opens a packet and asks again for all that the app proposes and for some more; what slips were suspected, and the link. */
  askAgain(packet: string, more: readonly string[]): Promise<{ slips: string; link: string }> {
    return this.#at(async (phone) => {
      const { page } = phone;
      await open(phone, packet);
      expect(await page.getByTestId('clear').count()).toBe(0);
      await page.getByText('One thing stands in the way of cutting').waitFor();
      const slips = await page.getByRole('region', { name: 'Suspected slips' }).innerText();
      await page.getByTestId('ask-again').click();
      for (const name of more) await page.getByRole('checkbox', { name: `Ask again for ${name}` }).check();
      await page.getByTestId('make-ask').click();
      await page.getByTestId('ask-by-link').click();
      return { slips, link: await linkOf(phone) };
    });
  }

  /** Merges the answer and clears the piece to cut. */
  clear(packet: string): Promise<void> {
    return this.#at(async (phone) => {
      const { page } = phone;
      await open(phone, packet);
      await page.getByTestId('clear').click();
      await page.getByTestId('clear-sure').click();
      await page.getByText(/Clear to cut, said/).waitFor();
    });
  }

  /** The job as a packet, as it stands here. */
  packet(): Promise<string> {
    return this.#at(async ({ page }) => {
      await page
        .getByRole('link', { name: /R. Sample/ })
        .first()
        .click();
      await page.getByTestId('send-back').click();
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId('download-back').click()]);
      const stream = await download.createReadStream();
      const parts: Buffer[] = [];
      for await (const part of stream) parts.push(Buffer.from(part));
      return Buffer.concat(parts).toString('utf8');
    });
  }

  async #at<T>(deed: (phone: Phone) => Promise<T>): Promise<T> {
    let came: { value: T } | undefined;
    await withPhone(this.#app, { profile: this.#profile, screen: 'desk' }, async (phone) => {
      await phone.open('#/bench');
      came = { value: await deed(phone) };
    });
    if (came === undefined) throw new Error('nothing came of it');
    return came.value;
  }
}

async function open({ page }: Phone, packet: string): Promise<void> {
  const buffer = Buffer.from(packet, 'utf8');
  const file = { name: 'packet.json', mimeType: 'application/json', buffer };
  await page.locator('input[type=file][multiple]').setInputFiles(file);
  await page.getByText(/R. Sample – Perla: \d+ new entr/).waitFor();
  await page
    .getByRole('link', { name: /R. Sample/ })
    .first()
    .click();
  await page.getByRole('heading', { name: 'Decide' }).waitFor();
  await page.getByTestId('ask-again').waitFor();
}

/** The address in the message that is ready to be sent. */
async function linkOf({ page }: Phone): Promise<string> {
  await page.getByRole('img', { name: 'Code that holds the link' }).waitFor();
  const message = await page.getByTestId('link-message').inputValue();
  const address = message.split('\n').find((line) => line.startsWith('http')) ?? '';
  expect(codeInText(message)).toBe(address.split('#/r/')[1]);
  return address;
}
