import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packetFileName } from '../../../src/core/packet/index.ts';

const JOB = '01930000-0000-7000-8000-000000003f2a';
const MADE = { at: '2026-11-25T17:00:00.000+01:00' };
const name = (details: Partial<Record<'name' | 'customer' | 'boat', string>>, job: string | null = JOB): string =>
  packetFileName({ job, details: { name: '', customer: '', boat: '', ...details } }, MADE);

describe('packetFileName', () => {
  it.each([
    [{ customer: 'Customer', boat: 'Boat' }, '2026-11-25 Customer - Boat - 3f2a.json'],
    [{ customer: 'Customer' }, '2026-11-25 Customer - 3f2a.json'],
    [{ name: 'Lid', boat: 'Boat' }, '2026-11-25 Boat - 3f2a.json'],
    [{ name: 'Lid' }, '2026-11-25 Lid - 3f2a.json'],
    [{}, '2026-11-25 3f2a.json'],
    [{ customer: "O'Invented & Sons", boat: 'Möwe II' }, "2026-11-25 O'Invented & Sons - Möwe II - 3f2a.json"],
    [{ customer: '海の人', boat: 'क्षितिज' }, '2026-11-25 海の人 - क्षितिज - 3f2a.json'],
    [{ customer: '../../etc/passwd' }, '2026-11-25 etc passwd - 3f2a.json'],
    [{ customer: 'a\\b:c*d?"<e>|f' }, '2026-11-25 a b c d e f - 3f2a.json'],
    [{ customer: 'evil\u202egpj.exe', boat: 'x\u0000\n\ty' }, '2026-11-25 evil gpj.exe - x y - 3f2a.json'],
    [{ customer: '  .hidden. ', boat: '---' }, '2026-11-25 hidden - 3f2a.json'],
    [{ customer: '$(rm -rf) `x` %PATH%' }, '2026-11-25 (rm -rf) x PATH - 3f2a.json'],
  ])('names %j', (details, expected) => {
    expect(name(details)).toBe(expected);
  });

  it('writes one letter the same way however it was typed', () => {
    expect(name({ boat: 'Mo\u0308we' })).toBe(name({ boat: 'Möwe' }));
  });

  it('is safe and short whatever the names are', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 400 }),
      fc.string({ unit: 'grapheme', maxLength: 400 }),
    );
    fc.assert(
      fc.property(text, text, text, (customer, boat, job) => {
        const chosen = name({ customer, boat }, job);
        expect(Buffer.byteLength(chosen)).toBeLessThanOrEqual(200);
        expect(chosen).toMatch(/^2026-11-25 [^/\\:*?"<>|\p{C}]*\.json$|^2026-11-25\.json$/u);
        expect(chosen).not.toMatch(/[ .]\.json$|\.\./);
      }),
    );
  });
});
