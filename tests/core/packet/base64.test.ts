import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeBase64, encodeBase64 } from '../../../src/core/packet/index.ts';

const ascii = (text: string): Uint8Array => Uint8Array.from(Buffer.from(text, 'latin1'));
const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

describe('base64', () => {
  // RFC 4648, section 10.
  it.each([
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('writes and reads %s as RFC 4648 does', (plain, encoded) => {
    expect(text(encodeBase64(ascii(plain)))).toBe(encoded);
    expect(text(decodeBase64(ascii(encoded)) ?? ascii('?'))).toBe(plain);
  });

  it('agrees with another implementation on any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const encoded = Buffer.from(bytes).toString('base64');
        expect(text(encodeBase64(bytes))).toBe(encoded);
        expect(decodeBase64(ascii(encoded))).toEqual(Uint8Array.from(bytes));
      }),
    );
  });

  it.each(['Z', 'Zg=', 'Zg', '=', '====', 'Z===', 'Zg==Zg==', 'Z-8=', 'Zm 8', 'Zm8=\n', 'Zm\u00e98'])(
    'refuses %j',
    (broken) => {
      expect(decodeBase64(ascii(broken))).toBeNull();
    },
  );
});
