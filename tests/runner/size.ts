import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { z } from 'zod';
import { root } from '../../src/server/setup.mjs';
import { LANGUAGES, type Language } from '../../src/text/language.ts';
import type { Outcome } from './step.ts';

/** What a phone may have to fetch and read before the app starts, in bytes of gzipped JavaScript. */
const FIRST_LOAD_BUDGET = 60_000;

const Manifest = z.record(
  z.string(),
  z.object({ file: z.string(), isEntry: z.boolean().optional(), imports: z.array(z.string()).optional() }),
);
type Manifest = z.infer<typeof Manifest>;

/** The screens people start with: at the dock the list of jobs, a remote owner what the shop's link asks for. */
const STARTS = { 'the list of jobs': 'screens/dock/JobsScreen.tsx', 'a link': 'screens/dock/open-link/OpenLink.tsx' };
/** What is waited for in each language before a start can be read. English has the words of links in the screen itself. */
const WORDS: Record<Language, Record<keyof typeof STARTS, readonly string[]>> = {
  en: { 'the list of jobs': ['text/en/index.ts'], 'a link': ['text/en/index.ts'] },
  es: { 'the list of jobs': ['text/es/index.ts'], 'a link': ['text/es/index.ts', 'text/es/links.ts'] },
};

/** Weighs each start in each language from vite's own manifest: the entry, the screen, its words and all they import statically. */
export async function checkSize(): Promise<Outcome> {
  const path = join(root, 'dist/.vite/manifest.json');
  if (!existsSync(path)) throw new Error('There is no dist/.vite/manifest.json to weigh.');
  const manifest = Manifest.parse(JSON.parse(readFileSync(path, 'utf8')));
  const totals = LANGUAGES.flatMap((language) =>
    objectKeys(STARTS).map((start) =>
      weigh(manifest, `${start}, ${language}`, [STARTS[start], ...WORDS[language][start]]),
    ),
  );
  return { ok: totals.every((total) => total > 0 && total <= FIRST_LOAD_BUDGET) };
}

const objectKeys = <T extends object>(of: T): (keyof T & string)[] => Object.keys(of) as (keyof T & string)[];

function weigh(manifest: Manifest, name: string, awaited: readonly string[]): number {
  const missing = awaited.filter((key) => !manifest[key]);
  if (missing.length > 0) {
    console.error(`The build has no ${missing.join(', ')}.`);
    return 0;
  }
  const files = firstLoad(manifest, awaited);
  const total = files.reduce((sum, file) => sum + gzipSync(readFileSync(join(root, 'dist', file))).length, 0);
  console.log(`${kilobytes(total)}  ${name}: ${files.length} files, of ${kilobytes(FIRST_LOAD_BUDGET).trim()} allowed`);
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
