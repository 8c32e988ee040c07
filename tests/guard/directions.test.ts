import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { z } from 'zod';
import { root } from '../../src/server/setup.mjs';
import { cruise } from '../runner/directions.ts';

const Config = z.object({
  forbidden: z.array(z.object({ name: z.string(), to: z.object({ path: z.string().optional() }) })),
});
const { forbidden } = Config.parse(createRequire(import.meta.url)(join(root, '.dependency-cruiser.cjs')));

/** One breach for each rule: who imports, what, and the rule that must name it. */
const BREACHES: readonly (readonly [rule: string, from: string, to: string])[] = [
  ['core-knows-nobody', 'core/job/a.ts', '../../text/words.ts'],
  ['core-packages', 'core/job/b.ts', 'preact'],
  ['browser-not-node', 'core/job/c.ts', 'node:fs'],
  ['text-knows-core-only', 'text/a.ts', '../device/store.ts'],
  ['device-below-screens', 'device/a.ts', '../screens/parts/button.ts'],
  ['screens-not-node', 'screens/dock/a.ts', '../../server/serve.ts'],
  ['src-not-tests', 'cli/a.ts', '../../tests/helper.ts'],
  ['dock-and-bench-apart', 'screens/dock/b.ts', '../bench/plan.ts'],
  ['bench-and-dock-apart', 'screens/bench/b.ts', '../dock/step.ts'],
  ['dock-and-bench-know-no-owner', 'screens/dock/c.ts', '../owner/home.ts'],
  ['owner-knows-no-bench', 'screens/owner/a.ts', '../bench/plan.ts'],
  ['parts-are-below', 'screens/parts/a.ts', '../dock/step.ts'],
  ['core-length-order', 'core/length/a.ts', '../job/sheet.ts'],
  ['core-job-order', 'core/job/d.ts', '../check/run.ts'],
  ['core-geometry-order', 'core/geometry/a.ts', '../adjust/solve.ts'],
  ['core-adjust-order', 'core/adjust/a.ts', '../check/run.ts'],
  ['core-check-order', 'core/check/a.ts', '../guide/steps.ts'],
  ['core-guide-order', 'core/guide/a.ts', '../cloth/layout.ts'],
  ['core-cloth-order', 'core/cloth/a.ts', '../packet/seal.ts'],
];

/** Imports that go the right way; none may be named. */
const FINE: readonly (readonly [from: string, to: string])[] = [
  ['core/job/fine.ts', '../length/parse.ts'],
  ['core/packet/fine.ts', '../check/run.ts'],
  ['core/job/schema.ts', 'zod'],
  ['text/fine.ts', '../core/job/sheet.ts'],
  ['device/fine.ts', '../core/packet/seal.ts'],
  ['device/database.ts', 'idb'],
  ['screens/dock/fine.ts', '../parts/button.ts'],
  ['screens/bench/fine.ts', '../../device/store.ts'],
  ['server/fine.ts', 'node:http'],
  ['cli/fine.ts', '../core/packet/seal.ts'],
];

// Each look at a planted tree starts a program of its own, which takes seconds on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tapetrue-directions-'));
  write('tsconfig.json', '{ "compilerOptions": { "moduleResolution": "bundler", "module": "ESNext" } }');
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
});
afterEach(() => rmSync(folder, { recursive: true }));

function write(path: string, text: string): void {
  const full = join(folder, path);
  mkdirSync(dirname(full), { recursive: true });
  writeFileSync(full, text);
}

/** A file with one import, and what it imports when that is a file. */
function plant(from: string, to: string): void {
  write(`src/${from}`, `import * as it from '${to}';\nexport const used = it;\n`);
  const target = join('src', dirname(from), to);
  if (to.startsWith('.') && !existsSync(join(folder, target))) write(target, 'export const here = 1;\n');
}

describe('the check of import directions', () => {
  test('names every planted breach', async () => {
    for (const [, from, to] of BREACHES) plant(from, to);
    const { violations } = await cruise(folder);
    const named = violations.map(({ rule, from }) => `${rule.name} ${from}`);
    for (const [rule, from] of BREACHES) expect(named).toContain(`${rule} src/${from}`);
  });

  test('names a circle, one of types alone too', async () => {
    write('src/device/one.ts', "import type { Two } from './two.ts';\nexport type One = Two | 1;\n");
    write('src/device/two.ts', "import type { One } from './one.ts';\nexport type Two = One | 2;\n");
    expect((await cruise(folder)).violations.map(({ rule }) => rule.name)).toContain('no-circle');
  });

  test('says nothing about imports that go the right way', async () => {
    for (const [from, to] of FINE) plant(from, to);
    const { totalCruised, violations } = await cruise(folder);
    expect(totalCruised).toBeGreaterThanOrEqual(FINE.length);
    expect(violations).toEqual([]);
  });

  test('has a planted breach for each of its rules', () => {
    const planted = new Set(['no-circle', ...BREACHES.map(([rule]) => rule)]);
    expect(forbidden.map(({ name }) => name).filter((name) => !planted.has(name))).toEqual([]);
  });

  test('knows every room of the core', () => {
    const rooms = readdirSync(join(root, 'src/core'), { withFileTypes: true }).filter((entry) => entry.isDirectory());
    const ordered = forbidden.filter(({ name }) => name.endsWith('-order')).map(({ to }) => to.path ?? '');
    expect(rooms.length).toBeGreaterThan(0);
    for (const { name } of rooms) {
      const known =
        forbidden.some((rule) => rule.name === `core-${name}-order`) || ordered.some((to) => to.includes(name));
      expect(known, `src/core/${name} has no place in the order of rooms`).toBe(true);
    }
  });
});
