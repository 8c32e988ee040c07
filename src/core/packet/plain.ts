/** Far deeper than any packet is; beyond it a file is made to exhaust its reader. */
const DEEPEST = 64;

/**
 * Walks parsed JSON without recursion. damaged: a key by which the parsed object would differ from the text that
 * was sealed. unreadable: nested too deep. Null when the value is fit to be read.
 */
export function faultOfShape(value: unknown): { why: 'damaged' | 'unreadable'; at: string } | null {
  const stack: { part: unknown; depth: number; key: string }[] = [{ part: value, depth: 0, key: '' }];
  for (let item = stack.pop(); item !== undefined; item = stack.pop()) {
    const { part, depth, key } = item;
    if (typeof part !== 'object' || part === null) continue;
    if (depth > DEEPEST) return { why: 'unreadable', at: key };
    for (const [name, child] of Object.entries(part)) {
      if (name === '__proto__') return { why: 'damaged', at: name };
      const top = key === '' ? name : key;
      if (typeof child === 'object') stack.push({ part: child, depth: depth + 1, key: top });
    }
  }
  return null;
}
