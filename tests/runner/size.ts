import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { z } from 'zod';
import { root } from '../../src/server/setup.mjs';
import type { Outcome } from './step.ts';

/** What a phone may have to fetch and read before the app starts, in bytes of gzipped JavaScript. */
const FIRST_LOAD_BUDGET = 60_000;

const Manifest = z.record(
  z.string(),
  z.object({ file: z.string(), isEntry: z.boolean().optional(), imports: z.array(z.string()).optional() }),
);
type Manifest = z.infer<typeof Manifest>;

/** Weighs the entry and all it imports statically, from vite's own manifest. */
export async function checkSize(): Promise<Outcome> {
  const path = join(root, 'dist/.vite/manifest.json');
  if (!existsSync(path)) throw new Error('There is no dist/.vite/manifest.json to weigh.');
  const files = firstLoad(Manifest.parse(JSON.parse(readFileSync(path, 'utf8'))));
  let total = 0;
  for (const file of files) {
    const size = gzipSync(readFileSync(join(root, 'dist', file))).length;
    total += size;
    console.log(`${kilobytes(size)}  ${file}`);
  }
  console.log(`${kilobytes(total)}  together, of ${kilobytes(FIRST_LOAD_BUDGET)} allowed`);
  if (total > FIRST_LOAD_BUDGET) console.error(`That is ${kilobytes(total - FIRST_LOAD_BUDGET).trim()} too much.`);
  return { ok: files.length > 0 && total <= FIRST_LOAD_BUDGET };
}

/** The JavaScript files that load before anything shows, each once. */
export function firstLoad(manifest: Manifest): string[] {
  const seen = new Set<string>();
  const visit = (key: string) => {
    const chunk = manifest[key];
    if (seen.has(key) || chunk === undefined) return;
    seen.add(key);
    for (const next of chunk.imports ?? []) visit(next);
  };
  for (const [key, chunk] of Object.entries(manifest)) if (chunk.isEntry) visit(key);
  return [...seen].flatMap((key) => manifest[key]?.file ?? []).filter((file) => file.endsWith('.js'));
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1).padStart(7)} kB`;
}
