import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { z } from 'zod';
import { root } from '../../src/server/setup.mjs';
import { LANGUAGES } from '../../src/text/language.ts';
import type { Outcome } from './step.ts';

/** What a phone may have to fetch and read before the app starts, in bytes of gzipped JavaScript. */
const FIRST_LOAD_BUDGET = 60_000;

const Manifest = z.record(
  z.string(),
  z.object({ file: z.string(), isEntry: z.boolean().optional(), imports: z.array(z.string()).optional() }),
);
type Manifest = z.infer<typeof Manifest>;

/** What the app says before anything else, by language; one of them comes with every start. */
const WORDS = LANGUAGES.map((language) => `text/${language}/index.ts`);

/** Weighs the entry, all it imports statically and the words of a language, from vite's own manifest; the heaviest counts. */
export async function checkSize(): Promise<Outcome> {
  const path = join(root, 'dist/.vite/manifest.json');
  if (!existsSync(path)) throw new Error('There is no dist/.vite/manifest.json to weigh.');
  const manifest = Manifest.parse(JSON.parse(readFileSync(path, 'utf8')));
  const totals = WORDS.map((words) => weigh(manifest, words));
  return { ok: totals.every((total) => total > 0 && total <= FIRST_LOAD_BUDGET) };
}

function weigh(manifest: Manifest, words: string): number {
  if (!manifest[words]) {
    console.error(`The build has no ${words}.`);
    return 0;
  }
  let total = 0;
  for (const file of firstLoad(manifest, [words])) {
    const size = gzipSync(readFileSync(join(root, 'dist', file))).length;
    total += size;
    console.log(`${kilobytes(size)}  ${file}`);
  }
  console.log(`${kilobytes(total)}  with ${words}, of ${kilobytes(FIRST_LOAD_BUDGET)} allowed`);
  if (total > FIRST_LOAD_BUDGET) console.error(`That is ${kilobytes(total - FIRST_LOAD_BUDGET).trim()} too much.`);
  return total;
}

/** The JavaScript files that load before anything shows, each once: the entry's, and those of chunks it waits for. */
export function firstLoad(manifest: Manifest, awaited: readonly string[] = []): string[] {
  const seen = new Set<string>();
  const visit = (key: string) => {
    const chunk = manifest[key];
    if (seen.has(key) || chunk === undefined) return;
    seen.add(key);
    for (const next of chunk.imports ?? []) visit(next);
  };
  for (const [key, chunk] of Object.entries(manifest)) if (chunk.isEntry) visit(key);
  for (const key of awaited) visit(key);
  return [...seen].flatMap((key) => manifest[key]?.file ?? []).filter((file) => file.endsWith('.js'));
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1).padStart(7)} kB`;
}
