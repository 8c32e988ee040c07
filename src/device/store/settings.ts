import * as z from 'zod/mini';
import { Id, Language, Line, Measurer, Role, ShopRules, Slot, System } from '../../core/job/index.ts';
import type { Connection } from './connection.ts';
import { write } from './transact.ts';

/** Everything this device remembers beside the jobs. Keys are permanent; a new meaning is a new key. */
export const settingShapes = {
  device: Id,
  person: z.object({ name: Line, role: Role }),
  /** Where the person was: written before the camera opens, read when the app starts again. */
  place: z.object({ job: Id, piece: z.nullable(Id), step: z.nullable(z.union([Slot, Id])) }),
  units: z.object({ system: System, fraction: z.union([z.literal(8), z.literal(16), z.literal(32)]) }),
  theme: z.enum(['system', 'light', 'dark']),
  /** By BCP 47; what the browser prefers where it was never chosen. */
  language: z.enum(['en', 'es']),
  /** The hand that holds the phone, and the metric unit the length pad stands on. */
  'pad.hand': z.enum(['right', 'left']),
  'pad.unit': z.enum(['mm', 'cm', 'm']),
  /** How a reading that was accepted is answered. */
  vibrate: z.boolean(),
  'read-back': z.boolean(),
  /** What the shop wrote the last time it asked somebody to measure. */
  'request.last': z.object({ shop: Line, contact: Line, language: Language, measurer: Measurer }),
  /** What the shop sets for itself; a new job takes it along. */
  shop: ShopRules,
  /** Pieces the shop keeps to be measured again. Each is parsed by itself, so that one that cannot be read costs no other. */
  'shop.templates': z.array(z.unknown()),
  /** In which order the list of jobs was left. */
  'jobs.order': z.enum(['latest', 'need', 'customer', 'boat']),
  /** Jobs whose first page an owner has read. */
  'owner.told': z.array(Id),
  /** When the person put the offer to install away; ISO 8601. */
  'install.dismissed': z.string(),
} as const;

export type SettingKey = keyof typeof settingShapes;
export type Setting<K extends SettingKey> = z.infer<(typeof settingShapes)[K]>;

export interface Settings {
  /** Null when never set, or when what is on disk does not parse. Throws StoreFailure. */
  get<K extends SettingKey>(key: K): Promise<Setting<K> | null>;
  /** Whether something is there, readable or not. Throws StoreFailure. */
  has(key: SettingKey): Promise<boolean>;
  /** Resolves when it is on disk. Throws StoreFailure; a setting is not kept in memory for later. */
  set<K extends SettingKey>(key: K, value: Setting<K>): Promise<void>;
  /** Takes a value from a file, if it parses; in place of what is here, readable or not, only where `over` says so. Whether it did. */
  bring(key: string, raw: unknown, over: boolean): Promise<boolean>;
  remove(key: SettingKey): Promise<void>;
}

export function settingsOver(connection: Connection): Settings {
  return {
    async get(key) {
      const raw = await connection.run((database) => database.get('settings', key));
      return parseSetting(key, raw);
    },
    async has(key) {
      return (await connection.run((database) => database.getKey('settings', key))) !== undefined;
    },
    async bring(key, raw, over) {
      if (!Object.hasOwn(settingShapes, key) || parseSetting(key as SettingKey, raw) === null) return false;
      if (!over && (await this.has(key as SettingKey))) return false;
      await this.set(key as SettingKey, raw as never);
      return true;
    },
    async set(key, value) {
      await connection.run((database) => write(database, (tx) => tx.objectStore('settings').put(value, key)));
    },
    async remove(key) {
      await connection.run((database) => write(database, (tx) => tx.objectStore('settings').delete(key)));
    },
  };
}

function parseSetting<K extends SettingKey>(key: K, raw: unknown): Setting<K> | null {
  const shape: z.ZodMiniType<Setting<K>> = settingShapes[key] as unknown as z.ZodMiniType<Setting<K>>;
  const parsed = shape.safeParse(raw);
  return parsed.success ? parsed.data : null;
}
