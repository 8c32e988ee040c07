import { type JobRequest, requestEntries } from '../../core/packet/link/index.ts';
import { now, uuid } from '../../device/clock.ts';
import type { Setting } from '../../device/store/index.ts';
import { device, store } from './services.ts';
import { readShop } from './shop.ts';

/** What the shop said of itself the last time it asked somebody to measure; null where it never has. */
export const readLastRequest = (): Promise<Setting<'request.last'> | null> =>
  store()
    .settings.get('request.last')
    .catch(() => null);

/** Begins the job that somebody is asked to measure, as the shop keeps it; its id. Throws StoreFailure. */
export async function makeRequest(asked: Omit<JobRequest, 'job' | 'device' | 'at' | 'limits'>): Promise<string> {
  const { rules } = await readShop().catch(() => ({ rules: {} }));
  const request: JobRequest = {
    ...trimmed(asked),
    job: uuid(),
    device: device.value,
    at: now(),
    ...(Object.keys(rules).length > 0 ? { limits: rules } : {}),
  };
  await store().importEntries(request.job, requestEntries(request), []);
  const { shop, contact, language, measurer } = request;
  await store()
    .settings.set('request.last', { shop, contact, language, measurer })
    .catch(() => undefined);
  return request.job;
}

function trimmed<T extends Record<'by' | 'customer' | 'boat' | 'shop' | 'contact' | 'note', string>>(asked: T): T {
  const { by, customer, boat, shop, contact, note } = asked;
  return {
    ...asked,
    by: by.trim(),
    customer: customer.trim(),
    boat: boat.trim(),
    shop: shop.trim(),
    contact: contact.trim(),
    note: note.trim(),
  };
}
