import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../../src/server/setup.mjs';

const LONGEST_FILE = 300;
const TOP = [
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'package-lock.json',
  'package.json',
  'public',
  'src',
  'tests',
  'tsconfig.json',
  'vite.config.ts',
];
const TEXT = /\.(ts|tsx|mts|mjs|cjs|css|html|json|jsonc|md|svg|csv|sh|txt)$|\/[^./]+$|^\.[^/]+$/;

/** Written in halves, so that this file does not find itself. */
const FORBIDDEN = [
  ['TO', 'DO'],
  ['FIX', 'ME'],
  ['XX', 'X'],
  ['seed ', 'document'],
  ['/wo', 'rk/'],
  ['/ro', 'ot/'],
  ['/ho', 'me/'],
  ['/Us', 'ers/'],
  ['.only', '('],
  ['ts-ig', 'nore'],
  ['ts-exp', 'ect-error'],
  ['ts-noc', 'heck'],
  ['biome-ig', 'nore'],
].map((halves) => halves.join(''));

/** What git tracks and is there: a file that somebody is just removing is not. */
const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' })
  .split('\0')
  .filter((path) => path !== '' && existsSync(join(root, path)));

function textOf(path: string): string {
  return readFileSync(join(root, path), 'utf8');
}

/** The forbidden words of a text that stand on their own: not inside a longer word or path. */
function forbiddenIn(text: string): string[] {
  return FORBIDDEN.filter((word) => {
    const before = /^\w/.test(word) ? '(?<!\\w)' : '(?<![\\w.}\\])])';
    const after = /\w$/.test(word) ? '(?!\\w)' : '';
    const literal = word.replace(/[/.()]/g, '\\$&');
    return new RegExp(word.startsWith('.') ? literal : before + literal + after).test(text);
  });
}

describe('the repository', () => {
  test('holds at its top only what it is fixed to hold', () => {
    const top = new Set(tracked.map((path) => path.replace(/\/.*/, '')));
    expect([...top].filter((name) => !name.startsWith('.') && !TOP.includes(name))).toEqual([]);
    for (const name of ['package.json', 'package-lock.json', 'src', 'tests']) expect(top).toContain(name);
  });

  test('has no long file of code', () => {
    const code = tracked.filter((path) => /^src\/(?!text\/).*\.(ts|tsx|mjs|css)$/.test(path));
    expect(code.length).toBeGreaterThan(0);
    const long = code.map((path) => [path, textOf(path).split('\n').length - 1] as const);
    expect(long.filter(([, lines]) => lines > LONGEST_FILE)).toEqual([]);
  });

  test('has no forbidden word', () => {
    const files = tracked.filter((path) => TEXT.test(path) && path !== 'package-lock.json');
    expect(files.length).toBeGreaterThan(0);
    const found = files.flatMap((path) => forbiddenIn(textOf(path)).map((word) => `${path}: ${word}`));
    expect(found).toEqual([]);
  });

  test('has a lock that names no host', () => {
    expect(textOf('package-lock.json')).not.toMatch(/"resolved"\s*:\s*"http/);
  });
});

describe('the check for forbidden words', () => {
  test.each(FORBIDDEN)('finds %s', (word) => {
    expect(forbiddenIn(`a line\nwith ${word} in it`)).toContain(word);
  });

  test('leaves longer words and relative paths alone', () => {
    expect(forbiddenIn('TODOS.fold, ./work/here, framework/, {base}/root/x, https://example.test/home/')).toEqual([]);
  });
});
