import type { Database } from './schema.ts';
import { OneBreath, write } from './transact.ts';

const KEYS = Array.from({ length: 16 }, (_, index) => `ballast.${index}`);
/** Below the size at which Chromium puts a value into a file of its own. */
const VALUE_BYTES = 32_000;
const ROUNDS = 10;
/** What is written in all, in bytes: more than the 4 MB after which Chromium begins a new log. */
export const BALLAST_BYTES = KEYS.length * VALUE_BYTES * ROUNDS;

/**
 * Makes the browser begin a new log file by writing and removing some 5 MB of noise.
 *
 * Why: when a disk is full to the last byte, Chromium leaves a torn record at the end of its database log and closes
 * the connection. As soon as there is room it goes on writing behind the torn record, and at its next start it takes
 * that for damage and throws the whole database away, entries of months included (seen with Chromium 156 on a full
 * file system: eight entries acknowledged, none left after a restart; all eight left when this ran before it). With
 * a new log begun, what was read is in a table file and the torn log is deleted. Noise, because values are packed.
 */
export async function beginNewLog(database: Database): Promise<void> {
  for (let round = 0; round < ROUNDS; round += 1) {
    await write(database, async (tx) => {
      const writes = new OneBreath();
      for (const key of KEYS)
        writes.ask(tx.objectStore('settings').put(crypto.getRandomValues(new Uint8Array(VALUE_BYTES)), key));
      await writes.done();
    });
  }
  await write(database, async (tx) => {
    const writes = new OneBreath();
    for (const key of KEYS) writes.ask(tx.objectStore('settings').delete(key));
    await writes.done();
  });
}
