import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Template, templateOf } from '../../../src/core/guide/again/index.ts';
import { readShopFile, type ShopFileContent, writeShopFile } from '../../../src/core/packet/index.ts';
import { begunPhone, id, PIECE } from '../job/support.ts';

function template(): Template {
  let n = 0;
  const newId = (): string => {
    n += 1;
    return id(n, 60);
  };
  const made = templateOf(begunPhone().entries, PIECE, { name: 'Bimini side', newId });
  if (!made) throw new Error('there is no such piece');
  return made;
}

const content: ShopFileContent = {
  at: '2026-05-04T09:00:00Z',
  units: { system: 'imperial', fraction: 32 },
  rules: { shop: 'A shop', tolerance: { line: 5, corner: 10 }, tape: { base: 2, perMetre: 0.5 } },
  templates: [template()],
};
const text = writeShopFile(content);
const changed = (change: (file: Record<string, unknown>) => void): string => {
  const file = JSON.parse(text);
  change(file);
  return JSON.stringify(file);
};
const why = (of: string) => {
  const read = readShopFile(of);
  return read.ok ? 'taken' : read.why;
};

describe('a file of shop settings', () => {
  it('comes back as it was written', () => {
    expect(readShopFile(text)).toEqual({ ok: true, content });
    expect(readShopFile(`\ufeff${text}`)).toEqual({ ok: true, content });
  });

  it('is taken when a later minor version added something', () => {
    const later = changed((file) => Object.assign(file, { version: { major: 1, minor: 4 }, colours: ['sand'] }));
    expect(readShopFile(later)).toEqual({ ok: true, content });
  });

  it('is refused for what is wrong with it', () => {
    expect(why('')).toBe('not-json');
    expect(why('{"format":"tapetrue-shop",')).toBe('not-json');
    expect(why('[]')).toBe('foreign');
    expect(why('{"format":"tapetrue-packet"}')).toBe('foreign');
    expect(why('{"format":"tapetrue-shop"}')).toBe('damaged');
    expect(why(changed((file) => Object.assign(file, { version: { major: 2, minor: 0 } })))).toBe('newer');
    const newer = { version: { major: 1, minor: 3 }, templates: [{ shape: 'round' }] };
    expect(why(changed((file) => Object.assign(file, newer)))).toBe('newer');
    expect(why(changed((file) => Object.assign(file, { rules: { trim: 'much' } })))).toBe('damaged');
    expect(why(changed((file) => Object.assign(file, { rules: { fastenerGap: { min: 300, max: 200 } } })))).toBe(
      'unusable',
    );
    expect(why(' '.repeat(10_000_001))).toBe('too-large');
  });

  it('never throws, and what comes through is usable', () => {
    const change = fc.record({ at: fc.nat(text.length - 1), drop: fc.nat(3), put: fc.string({ maxLength: 3 }) });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        let altered = text;
        for (const { at, drop, put } of changes) altered = altered.slice(0, at) + put + altered.slice(at + drop);
        const read = readShopFile(altered);
        if (read.ok) expect(readShopFile(writeShopFile(read.content))).toEqual(read);
        else expect(read.why).toMatch(/^[a-z-]+$/);
      }),
      { numRuns: 300 },
    );
    fc.assert(
      fc.property(fc.json(), (json) => {
        expect(readShopFile(json).ok).toBe(false);
      }),
    );
  });
});
