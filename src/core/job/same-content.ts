/** No honest content is nested this deep; beyond it nothing is taken for the same. */
const DEEPEST = 500;

/**
 * Whether two values say the same once they have travelled as a packet's JSON: keys in any order, what is undefined
 * left out, half a character as U+FFFD, numbers JSON has no word for as null, -0 as 0. Never throws, whatever is
 * compared: content comes from files and disks.
 */
export function sameContent(a: unknown, b: unknown, depth = 0): boolean {
  if (a === b) return true;
  if (depth > DEEPEST) return false;
  if (Array.isArray(a)) {
    return Array.isArray(b) && a.length === b.length && a.every((item, i) => sameContent(item, b[i], depth + 1));
  }
  if (isRecord(a)) return isRecord(b) && sameFields(a, b, depth);
  return Object.is(asSent(a), asSent(b));
}

function sameFields(a: Record<string, unknown>, b: Record<string, unknown>, depth: number): boolean {
  const [mine, theirs] = [saidKeys(a), saidKeys(b)];
  return (
    mine.length === theirs.length &&
    mine.every((key) => Object.hasOwn(b, key) && b[key] !== undefined && sameContent(a[key], b[key], depth + 1))
  );
}

const saidKeys = (record: Record<string, unknown>): string[] =>
  Object.keys(record).filter((key) => record[key] !== undefined);

const isRecord = (value: unknown): value is Record<string, unknown> =>
  Object.prototype.toString.call(value) === '[object Object]';

function asSent(value: unknown): unknown {
  if (typeof value === 'string') return value.replace(/\p{Surrogate}/gu, '\ufffd');
  if (typeof value === 'number') return Number.isFinite(value) ? value + 0 : null;
  return value ?? null;
}
