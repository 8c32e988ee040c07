import type { BrowserContext } from 'playwright-core';

/** What went wrong in a browser without anybody asking: the test that caused it must not pass. */
export interface Faults {
  readonly list: readonly string[];
  /** From here on, a fault that matches is what the test wants. */
  allow(...patterns: readonly RegExp[]): void;
  /** Throws when anything went wrong. */
  check(): void;
}

/** Watches every page of a context: console errors, uncaught errors, policy violations, requests to another origin. */
export async function watchFaults(context: BrowserContext, appUrl: string): Promise<Faults> {
  const { origin } = new URL(appUrl);
  const list: string[] = [];
  const allowed: RegExp[] = [];
  const add = (fault: string) => {
    if (!allowed.some((pattern) => pattern.test(fault))) list.push(fault);
  };
  context.on('console', (message) => {
    if (message.type() === 'error') add(`console: ${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (error) => add(`error: ${error.error().stack ?? error.error().message}`));
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (protocol.startsWith('http') && asked !== origin) add(`request: ${request.method()} ${request.url()}`);
  });
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`policy: ${event.violatedDirective} blocked ${event.blockedURI}`);
    });
  });
  return {
    list,
    allow: (...patterns) => void allowed.push(...patterns),
    check() {
      if (list.length > 0) throw new Error(`The browser had faults:\n${list.join('\n')}`);
    },
  };
}
