import { describe, expect, test } from 'vitest';
import { firstLoad } from '../runner/size.ts';
import { chosen, isBlocked, type Step } from '../runner/step.ts';
import { outcome } from '../runner/tests.ts';

const step = (key: string, needs: readonly string[] = []): Step => ({
  key,
  title: key,
  needs,
  run: async () => ({ ok: true }),
});
const steps = [step('build'), step('unit'), step('browser', ['build'])];

describe('which steps run', () => {
  test('all, or those asked for in their own order', () => {
    expect(chosen(steps, [])).toEqual(steps);
    expect(chosen(steps, ['--only=browser,build']).map(({ key }) => key)).toEqual(['build', 'browser']);
  });

  test('a name nobody has is refused, as is any other option', () => {
    expect(() => chosen(steps, ['--only=untit'])).toThrow(/untit/);
    expect(() => chosen(steps, ['--only='])).toThrow(/No step/);
    expect(() => chosen(steps, ['--fast'])).toThrow(/--fast/);
  });

  test('one whose need failed does not', () => {
    expect(steps.map((each) => isBlocked(each, new Set(['build'])))).toEqual([false, false, true]);
  });
});

describe('what vitest reports', () => {
  const report = (passed: number, failed: number, ...files: readonly (readonly [status: string, tests: number])[]) =>
    JSON.stringify({
      success: failed === 0 && files.every(([status]) => status === 'passed'),
      numPassedTests: passed,
      numFailedTests: failed,
      testResults: files.map(([status, tests]) => ({ status, assertionResults: Array(tests).fill({}) })),
    });

  test('all passed', () => {
    expect(outcome(0, report(3, 0, ['passed', 3]))).toEqual({ ok: true, passed: 3, failed: 0 });
  });

  test('one failed', () => {
    expect(outcome(1, report(2, 1, ['failed', 3]))).toEqual({ ok: false, passed: 2, failed: 1 });
  });

  test('a file that could not be loaded counts as one', () => {
    expect(outcome(1, report(3, 0, ['passed', 3], ['failed', 0]))).toEqual({ ok: false, passed: 3, failed: 1 });
  });

  test('no test at all is a failure, and so is a bad exit', () => {
    expect(outcome(0, report(0, 0)).ok).toBe(false);
    expect(outcome(1, report(3, 0, ['passed', 3])).ok).toBe(false);
  });
});

describe('what loads first', () => {
  const manifest = {
    'index.html': { file: 'assets/index.js', isEntry: true, imports: ['_shared.js', '_other.js'] },
    '_shared.js': { file: 'assets/shared.js', imports: ['_other.js'] },
    '_other.js': { file: 'assets/other.js', imports: ['_shared.js'] },
    'screens/bench/index.tsx': { file: 'assets/bench.js', imports: ['index.html'] },
  };

  test('the entry and all it imports, each once, nothing that waits', () => {
    expect(firstLoad(manifest)).toEqual(['assets/index.js', 'assets/shared.js', 'assets/other.js']);
  });

  test('and what it waits for, such as the words of a language', () => {
    const words = { 'text/en/index.ts': { file: 'assets/en.js', imports: ['_shared.js'] } };
    expect(firstLoad({ ...manifest, ...words }, ['text/en/index.ts'])).toContain('assets/en.js');
    expect(firstLoad({ ...manifest, ...words })).not.toContain('assets/en.js');
  });

  test('without an entry, nothing', () => {
    expect(firstLoad({ 'a.ts': { file: 'a.js' } })).toEqual([]);
  });
});
