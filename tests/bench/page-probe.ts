import type { Page } from 'playwright-core';
import { z } from 'zod';

/** What a page went through while something was done in it. */
export interface Felt {
  /** Milliseconds, from the page's own clock. */
  took: number;
  /** The longest pause of a timer that should beat every 5 ms. */
  longestPause: number;
  /** The longest task of 50 ms or more; 0 when there was none. */
  longestTask: number;
  /** Bytes, at the highest sample: the heaps of the page and of its workers, buffers outside the heap among them. */
  heap: number;
}

const HeapUsage = z.object({ usedSize: z.number(), backingStorageSize: z.number().default(0) });
const Answer = z.object({ result: HeapUsage.optional() });
const SAMPLE_MS = 15;

/** Does something in a page and tells what it cost: `begin` sets it off, `until` is true in the page when it is over. */
export async function feel(page: Page, begin: () => Promise<void>, until: () => boolean): Promise<Felt> {
  const pulse = await page.evaluateHandle(takePulse);
  const heap = await sampleHeap(page);
  await begin();
  await page.waitForFunction(until, undefined, { timeout: 120_000, polling: 20 });
  const felt = await pulse.evaluate((taken) => taken.stop());
  return { ...felt, heap: await heap.stop() };
}

/**
 * Runs in the page. Time counts from the first change of the address or of a field. Methods only: the tool that runs
 * this file wraps named functions into something the page does not know.
 */
function takePulse() {
  const pulse = {
    began: 0,
    last: performance.now(),
    longestPause: 0,
    longestTask: 0,
    handleEvent() {
      pulse.began ||= performance.now();
    },
    beat() {
      const now = performance.now();
      if (pulse.began > 0) pulse.longestPause = Math.max(pulse.longestPause, now - pulse.last);
      pulse.last = now;
    },
    see(tasks: PerformanceEntry[]) {
      for (const task of tasks)
        if (task.startTime + task.duration > pulse.began)
          pulse.longestTask = Math.max(pulse.longestTask, task.duration);
    },
  };
  addEventListener('change', pulse, { capture: true });
  addEventListener('hashchange', pulse, { capture: true });
  const timer = setInterval(pulse.beat, 5);
  const observer = new PerformanceObserver((list) => pulse.see(list.getEntries()));
  observer.observe({ type: 'longtask' });
  return {
    stop() {
      pulse.beat();
      pulse.see(observer.takeRecords());
      clearInterval(timer);
      observer.disconnect();
      removeEventListener('change', pulse, { capture: true });
      removeEventListener('hashchange', pulse, { capture: true });
      const { began, longestPause, longestTask } = pulse;
      return { took: performance.now() - began, longestPause, longestTask };
    },
  };
}

/** Looks at the heaps again and again. Workers come and go meanwhile; each is asked as long as it lives. */
async function sampleHeap(page: Page): Promise<{ stop(): Promise<number> }> {
  const session = await page.context().newCDPSession(page);
  const workers = new Map<string, number>();
  session.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type === 'worker') workers.set(sessionId, 0);
  });
  session.on('Target.detachedFromTarget', ({ sessionId }) => void workers.delete(sessionId));
  session.on('Target.receivedMessageFromTarget', ({ sessionId, message }) => {
    const { result } = Answer.parse(JSON.parse(message));
    if (result && workers.has(sessionId)) workers.set(sessionId, result.usedSize + result.backingStorageSize);
  });
  await session.send('HeapProfiler.collectGarbage');
  await session.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  let peak = 0;
  let isOver = false;
  const message = JSON.stringify({ id: 1, method: 'Runtime.getHeapUsage' });
  const sample = async (): Promise<void> => {
    while (!isOver) {
      for (const sessionId of workers.keys())
        session.send('Target.sendMessageToTarget', { sessionId, message }).catch(() => undefined);
      const { usedSize, backingStorageSize } = HeapUsage.parse(await session.send('Runtime.getHeapUsage'));
      peak = Math.max(peak, usedSize + backingStorageSize + [...workers.values()].reduce((sum, size) => sum + size, 0));
      await new Promise((resolve) => setTimeout(resolve, SAMPLE_MS));
    }
  };
  const sampling = sample();
  return {
    async stop() {
      isOver = true;
      await sampling;
      await session.detach();
      return peak;
    },
  };
}
