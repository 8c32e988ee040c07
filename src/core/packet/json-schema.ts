import * as z from 'zod/mini';
import { payloads } from '../job/index.ts';
import { Packet } from './document.ts';

/**
 * The packet's JSON Schema (draft 2020-12), made from the very schemas the app reads with. Unknown fields are allowed.
 * `$defs/payloads` describes what each kind of entry carries; it is there for people who write packets and binds
 * nobody, since an entry whose payload is not understood is carried as it is.
 */
export function packetJsonSchema(): Record<string, unknown> {
  const { $schema, $defs, ...packet } = z.toJSONSchema(Packet, { target: 'draft-2020-12', io: 'input' });
  const kinds = Object.entries(payloads).map(([kind, schema]) => {
    const { $schema: _, ...described } = z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' });
    return [kind, described];
  });
  return {
    $schema,
    title: 'Tapetrue packet',
    ...packet,
    $defs: { ...$defs, payloads: { $comment: 'by entry kind', properties: Object.fromEntries(kinds) } },
  };
}
