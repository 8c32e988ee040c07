import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { packetJsonSchema } from '../core/packet/json-schema.ts';

/** Writes the packet's JSON Schema where the app serves it from. Part of the build; the file is not kept in git. */
const folder = new URL('../../public/', import.meta.url);
await mkdir(folder, { recursive: true });
await writeFile(
  fileURLToPath(new URL('packet.schema.json', folder)),
  `${JSON.stringify(packetJsonSchema(), null, 2)}\n`,
);
