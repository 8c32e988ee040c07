import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { addFastener } from '../../src/screens/dock/step/edge/edge-acts.ts';
import { partsOf } from '../../src/screens/dock/step/edge/edge-view.ts';
import { loadJob, type OpenJob, openJob } from '../../src/screens/model/open-job.ts';
import { startServices, store } from '../../src/screens/model/services.ts';
import { begunPhone, RUN } from '../core/job/support.ts';
import { wipe } from '../device/store/support.ts';

const phone = begunPhone();
const JOB = phone.entries[0]?.job ?? '';

beforeEach(async () => {
  const page = { addEventListener: () => undefined, removeEventListener: () => undefined };
  vi.stubGlobal('document', { documentElement: { dataset: {} }, ...page });
  await wipe();
  const opened = await startServices();
  await opened.importEntries(JOB, phone.entries, []);
  await loadJob(JOB);
});
afterEach(async () => {
  store().close();
  await wipe();
  vi.unstubAllGlobals();
});

it('fasteners that are typed faster than the disk writes stand one behind the other, as they were typed', async () => {
  const begun = openJob.value as OpenJob;
  const run = begun.sheet.runs.find(({ id }) => id === RUN);
  const [part] = run ? partsOf(begun, run) : [];
  if (!run || !part) throw new Error('the job has no edge');
  // Each from the screen as it was before any of them was written.
  const typed = [100, 200, 300, 400].map((value) =>
    addFastener(run, part, 'snap', { text: String(value), unit: 'mm', value }),
  );
  const readings = await Promise.all(typed);
  const { fasteners = [] } = openJob.value?.sheet ?? {};
  expect(fasteners.map(({ rank }) => rank)).toEqual([1, 2, 3, 4]);
  expect(fasteners.map(({ reading }) => reading)).toEqual(readings);
});
