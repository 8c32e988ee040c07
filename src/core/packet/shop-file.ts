import * as z from 'zod/mini';
import { shopFaults } from '../check/shop-fields.ts';
import { Template } from '../guide/again/index.ts';
import { ShopRules, System } from '../job/index.ts';
import { faultOfShape } from './plain.ts';

const FORMAT = 'tapetrue-shop';
const VERSION = { major: 1, minor: 0 } as const;

/** What a shop set for itself, as a file: for its other devices and for its installers. It names no person and no device. */
const ShopFile = z.object({
  format: z.literal(FORMAT),
  version: z.object({ major: z.literal(VERSION.major), minor: z.int().check(z.gte(0)) }),
  at: z.iso.datetime({ offset: true }),
  units: z.object({ system: System, fraction: z.union([z.literal(8), z.literal(16), z.literal(32)]) }),
  rules: ShopRules,
  templates: z.array(Template).check(z.maxLength(500)),
});
type ShopFile = z.infer<typeof ShopFile>;
export type ShopFileContent = Pick<ShopFile, 'at' | 'units' | 'rules' | 'templates'>;

/**
 * Why a file was not taken.
 * not-json: no JSON at all. foreign: JSON, but no shop settings. newer: made by a later version. damaged: cannot be read to
 * the end. unusable: numbers no shop can mean, or that contradict each other. too-large: more than any shop has.
 */
export type ShopFileRefusal = 'not-json' | 'foreign' | 'newer' | 'damaged' | 'unusable' | 'too-large';
export type ShopFileReading =
  | { readonly ok: true; readonly content: ShopFileContent }
  | { readonly ok: false; readonly why: ShopFileRefusal };

/** Characters; a template takes some twenty thousand. */
const LARGEST = 10_000_000;

export function writeShopFile({ at, units, rules, templates }: ShopFileContent): string {
  const file: ShopFile = { format: FORMAT, version: VERSION, at, units, rules, templates };
  return `${JSON.stringify(file, null, 1)}\n`;
}

/** Reads a file of shop settings. Never throws, whatever it is given. */
export function readShopFile(text: string): ShopFileReading {
  if (text.length > LARGEST) return refuse('too-large');
  const parsed = parseJson(text);
  if (!parsed.ok) return refuse('not-json');
  const { value } = parsed;
  if (!isRecord(value) || value.format !== FORMAT) return refuse('foreign');
  if (faultOfShape(value)) return refuse('damaged');
  const { major, minor } = isRecord(value.version) ? value.version : {};
  if (!Number.isSafeInteger(major) || !Number.isSafeInteger(minor)) return refuse('damaged');
  const file = ShopFile.safeParse(value);
  if (Number(major) > VERSION.major || (!file.success && Number(minor) > VERSION.minor)) return refuse('newer');
  if (!file.success) return refuse('damaged');
  if (shopFaults(file.data.rules).length > 0) return refuse('unusable');
  const { at, units, rules, templates } = file.data;
  return { ok: true, content: { at, units, rules, templates } };
}

const refuse = (why: ShopFileRefusal): ShopFileReading => ({ ok: false, why });

function parseJson(text: string): { ok: true; value: unknown } | { ok: false } {
  try {
    return { ok: true, value: JSON.parse(text.startsWith('\ufeff') ? text.slice(1) : text) };
  } catch {
    return { ok: false };
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
