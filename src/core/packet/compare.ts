/** Computed numbers may differ in their last digits between engines; nothing a tape can show is this small. */
const ABSOLUTE = 1e-6;
const RELATIVE = 1e-9;

/**
 * Where two plain JSON values differ by more than rounding, as paths like `readings/3/value`; empty when they
 * agree. A field that is undefined counts as absent. beyond: fields that only `said` has are passed over, which is
 * how a newer minor version is read; before: those that only `found` has, which is how an older one is.
 */
export function differences(
  said: unknown,
  found: unknown,
  options: { beyond: boolean; before: boolean; limit: number },
): string[] {
  const paths: string[] = [];
  const visit = (a: unknown, b: unknown, path: string): void => {
    if (paths.length >= options.limit || same(a, b)) return;
    if (!isObject(a) || !isObject(b) || Array.isArray(a) !== Array.isArray(b)) {
      paths.push(path);
      return;
    }
    for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
      const [before, after] = [own(a, key), own(b, key)];
      if (after === undefined && options.beyond && !Array.isArray(b)) continue;
      if (before === undefined && options.before && !Array.isArray(a)) continue;
      visit(before, after, path === '' ? key : `${path}/${key}`);
    }
  };
  visit(said, found, '');
  return paths;
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const own = (value: Record<string, unknown>, key: string): unknown =>
  Object.hasOwn(value, key) ? value[key] : undefined;

function same(a: unknown, b: unknown): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return Object.is(a, b);
  return Math.abs(a - b) <= ABSOLUTE + RELATIVE * Math.max(Math.abs(a), Math.abs(b));
}
