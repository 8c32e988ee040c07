import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { isInstalled } from '../../src/server/setup.mjs';

type Packages = Record<string, { version: string; optional?: boolean; devOptional?: boolean }>;

const folder = mkdtempSync(join(tmpdir(), 'tapetrue-setup-'));
const wanted: Packages = {
  '': { version: '0.1.0' },
  'node_modules/needed': { version: '1.0.0' },
  'node_modules/elsewhere': { version: '1.0.0', optional: true },
};

function write(path: string, packages: Packages): void {
  writeFileSync(join(folder, path), JSON.stringify({ packages }));
}

beforeEach(() => {
  rmSync(join(folder, 'node_modules'), { recursive: true, force: true });
  mkdirSync(join(folder, 'node_modules'));
  write('package-lock.json', wanted);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('is what the lock asks for installed?', () => {
  test('no, when an install was broken off', () => {
    expect(isInstalled(folder)).toBe(false);
  });

  test('yes, though packages for other systems are absent', () => {
    write('node_modules/.package-lock.json', { 'node_modules/needed': { version: '1.0.0' } });
    expect(isInstalled(folder)).toBe(true);
  });

  test('no, when the lock asks for another version', () => {
    write('node_modules/.package-lock.json', { 'node_modules/needed': { version: '0.9.0' } });
    expect(isInstalled(folder)).toBe(false);
  });

  test('no, when one is missing', () => {
    write('node_modules/.package-lock.json', { 'node_modules/elsewhere': { version: '1.0.0' } });
    expect(isInstalled(folder)).toBe(false);
  });

  test('no, when an optional one is there in another version', () => {
    write('node_modules/.package-lock.json', {
      'node_modules/needed': { version: '1.0.0' },
      'node_modules/elsewhere': { version: '0.9.0' },
    });
    expect(isInstalled(folder)).toBe(false);
  });
});
