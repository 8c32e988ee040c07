import * as z from 'zod/mini';
import { Made } from '../../core/packet/document.ts';
import { faultOfShape } from '../../core/packet/plain.ts';

/**
 * A backup: everything a device keeps, as one text file of JSON lines (UTF-8, each line one JSON object and a line feed).
 *
 *   {"format":"tapetrue-backup","version":{"major":1,"minor":0},"made":{"at":…,"device":…,"by":…}}
 *   {"setting":{"key":…,"value":…}}                      a setting as it is stored
 *   {"job":{"id":…,"archived":…,"lastCopy":…}}            what only the device knows of a job; its entries follow
 *   {"entry":{…}}                                        an entry of that job, as in a packet
 *   {"damaged":…}                                        a record of that job that cannot be read, as it is
 *   {"stray":…}                                          a record that belongs to no job, as it is
 *   {"photo":{"sha256":…,"mime":…,"size":…,"data":…,"whole":…}}   base64 (RFC 4648); whole: the bytes have their hash
 *   {"end":{"counts":{…},"seal":…}}                      the last line
 *
 * The seal is the SHA-256 of every byte before the last line, so that any tool can check it. It shows damage and a file that
 * was cut off; it does not prove who made it. A reader of a later minor version passes over lines it does not know.
 */
export const FORMAT = 'tapetrue-backup';
export const VERSION = { major: 1, minor: 0 } as const;

export const Header = z.looseObject({
  format: z.literal(FORMAT),
  version: z.looseObject({ major: z.literal(VERSION.major), minor: z.int().check(z.gte(0)) }),
  made: Made,
});
export type Header = z.infer<typeof Header>;

const count = z.int().check(z.gte(0));
/** damaged: unreadable records, strays among them. */
export const Counts = z.object({ jobs: count, entries: count, damaged: count, photos: count, settings: count });
export type Counts = z.infer<typeof Counts>;

export const JobLine = z.looseObject({ id: z.string() });
export const SettingLine = z.object({ key: z.string(), value: z.unknown() });
const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));
export const PhotoLine = z.looseObject({
  sha256: hash,
  mime: z.string(),
  size: z.int().check(z.gt(0)),
  data: z.string(),
  whole: z.boolean(),
});
export const EndLine = z.object({ counts: Counts, seal: hash });

/** What a line is, by its one key; null where it is no line of a backup. */
export function lineOf(text: string): { key: string; value: unknown } | null {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) return null;
  const [only, ...others] = Object.entries(parsed);
  if (only === undefined) return null;
  // What could not be read on the disk need not be fit to be read here.
  if (only[0] !== 'damaged' && only[0] !== 'stray' && faultOfShape(parsed)) return null;
  return others.length === 0 ? { key: only[0], value: only[1] } : { key: '', value: parsed };
}
