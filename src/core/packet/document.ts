import * as z from 'zod/mini';
import { Finding } from '../check/index.ts';
import { Entry, Id, Sha256, Sheet, Who } from '../job/index.ts';

export const FORMAT = 'tapetrue-packet';
/** A change that an older reader would misread raises major; what it can pass over raises minor. */
export const VERSION = { major: 1, minor: 2 } as const;

/** A picture of the packet. data: its bytes in base64 (RFC 4648), absent where it travels beside. */
export const PacketPhoto = z.looseObject({
  sha256: Sha256,
  mime: z.string().check(z.regex(/^image\/[a-z0-9.+-]{1,40}$/)),
  size: z.int().check(z.gt(0)),
  data: z.optional(z.string()),
});
export type PacketPhoto = z.infer<typeof PacketPhoto>;

/** When, on which device and by whom the packet was made. */
export const Made = z.looseObject({ at: z.iso.datetime({ offset: true }), device: Id, by: Who });
export type Made = z.infer<typeof Made>;

/** What a reader relies on: the logbook is the truth, sheet and findings are computed from it again. */
export const Envelope = z.looseObject({
  format: z.literal(FORMAT),
  version: z.looseObject({ major: z.literal(VERSION.major), minor: z.int().check(z.gte(0)) }),
  seal: Sha256,
  job: Id,
  made: Made,
  logbook: z.array(Entry).check(z.minLength(1)),
  photos: z.array(PacketPhoto),
});

/** The document that travels: one job, whole. Unknown fields are carried. Entries are sorted by id. */
export const Packet = z.extend(Envelope, { sheet: Sheet, findings: z.array(Finding) });
export type Packet = z.infer<typeof Packet>;
