import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../../src/server/setup.mjs';
import { LANGUAGES, languageAmong } from '../../src/text/language.ts';

/** The files of a language, by their path within it. Types alone do not watch tables whose keys are strings. */
const filesOf = (language: string): string[] =>
  readdirSync(join(root, 'src/text', language), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .sort();

/** Every text by the path of keys that leads to it, as what it is: a string, or a function of so many parameters. */
function shapeOf(value: unknown, path: string, into: Map<string, string>): Map<string, string> {
  if (typeof value === 'function') into.set(path, `function of ${value.length}`);
  else if (value !== null && typeof value === 'object')
    for (const [key, inner] of Object.entries(value)) shapeOf(inner, `${path}.${key}`, into);
  else into.set(path, typeof value);
  return into;
}

const shapeOfFile = async (language: string, file: string): Promise<[string, string][]> =>
  [...shapeOf(await import(join(root, 'src/text', language, file)), '', new Map())].sort();

/** Words that Spanish writes as English does, besides units and signs. */
const SAME = /^([a-z]|a4|3d|m²|mm|cm|m|in|ft|kB|MB|no|demo|metal|diagonal|Tapetrue)$/i;
const isWord = (text: string): boolean => /\p{Letter}/u.test(text);

describe.each(LANGUAGES.filter((one) => one !== 'en'))('%s says all that English says', (language) => {
  const english = filesOf('en').filter((file) => !file.endsWith('piece-words.ts') && file !== 'index.ts');

  test.each(english)('%s', async (file) => {
    expect(await shapeOfFile(language, file)).toEqual(await shapeOfFile('en', file));
  });

  test('and no text of more than a few letters was left in English', async () => {
    const left: string[] = [];
    for (const file of english) {
      const texts = (value: unknown, path: string): [string, string][] =>
        typeof value === 'string'
          ? [[path, value]]
          : value !== null && typeof value === 'object'
            ? Object.entries(value).flatMap(([key, inner]) => texts(inner, `${path}.${key}`))
            : [];
      const own = new Map(texts(await import(join(root, 'src/text', language, file)), file));
      for (const [path, text] of texts(await import(join(root, 'src/text/en', file)), file))
        if (own.get(path) === text && isWord(text) && !SAME.test(text)) left.push(`${path}: ${text}`);
    }
    expect(left).toEqual([]);
  });
});

test('the language is the first one wished for that the app speaks', () => {
  expect(languageAmong(['es-MX', 'en'])).toBe('es');
  expect(languageAmong(['fr', 'ES'])).toBe('es');
  expect(languageAmong(['en-GB', 'es'])).toBe('en');
  expect(languageAmong(['fr', 'de-AT'])).toBe('en');
  expect(languageAmong([])).toBe('en');
  expect(languageAmong(['est'])).toBe('en');
});
