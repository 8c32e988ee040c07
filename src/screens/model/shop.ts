import { signal } from '@preact/signals';
import { Template } from '../../core/guide/again/index.ts';
import type { ShopRules } from '../../core/job/index.ts';
import { type Deed, deed } from './open-job.ts';
import { store } from './services.ts';

/** What the shop set on this device. unread: templates on disk that this version cannot read; they stay where they are. */
export interface Shop {
  readonly rules: ShopRules;
  readonly templates: readonly Template[];
  readonly unread: readonly unknown[];
}

export const shop = signal<Shop | null>(null);

/** Reads what is stored and shows it. Throws StoreFailure. */
export async function readShop(): Promise<Shop> {
  const { settings } = store();
  const rules = (await settings.get('shop')) ?? {};
  const kept = (await settings.get('shop.templates')) ?? [];
  const parsed = kept.map((raw) => ({ raw, template: Template.safeParse(raw) }));
  const read: Shop = {
    rules,
    templates: parsed.flatMap(({ template }) => (template.success ? [template.data] : [])),
    unread: parsed.flatMap(({ raw, template }) => (template.success ? [] : [raw])),
  };
  shop.value = read;
  return read;
}

export async function saveRules(rules: ShopRules): Promise<void> {
  await store().settings.set('shop', rules);
  if (shop.value) shop.value = { ...shop.value, rules };
}

/** Changes the list as it is on disk now, whatever another tab did to it. */
export async function changeTemplates(change: (templates: readonly Template[]) => readonly Template[]): Promise<void> {
  const { rules, templates, unread } = await readShop();
  const changed = change(templates);
  await store().settings.set('shop.templates', [...changed, ...unread]);
  shop.value = { rules, templates: changed, unread };
}

/** What a new job takes along of the shop's settings; nothing where none are set or none can be read. */
export async function shopDeeds(): Promise<Deed[]> {
  const { rules } = await readShop().catch(() => ({ rules: {} }));
  return Object.keys(rules).length > 0 ? [deed('job.shop', rules)] : [];
}
