import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { codeInText } from '../../../src/core/packet/link/index.ts';

/** The address in the message that is ready to be sent. */
export async function linkOf(page: Page): Promise<string> {
  const message = await page.getByTestId('link-message').inputValue();
  const address = message.split('\n').find((line) => line.startsWith('http')) ?? '';
  expect(codeInText(message)).toBe(address.split('#/r/')[1]);
  return address;
}

/** Opens a link as a tap in a message does: a page of its own, whatever was open before. */
export async function follow(page: Page, address: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(address);
}
