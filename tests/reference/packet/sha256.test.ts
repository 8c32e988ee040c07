import { describe, expect, it } from 'vitest';
import { sha256Hex } from '../../../src/core/packet/index.ts';

const hex = (text: string): Uint8Array => Uint8Array.from(Buffer.from(text, 'hex'));
const ascii = (text: string): Uint8Array => Uint8Array.from(Buffer.from(text, 'ascii'));

describe('SHA-256', () => {
  it.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['d3', '28969cdfa74a12c82f3bad960b0b000aca2ac329deea5c2328ebc6f2ba9802c1'],
    ['11af', '5ca7133fa735326081558ac312c620eeca9970d1e70a4b95533d956f072d1f98'],
    ['74ba2521', 'b16aa56be3880d18cd41e68384cf1ec8c17680c45a02b1575dc1518923ae8b0e'],
    ['5738c929c4f4ccb6', '963bb88f27f512777aab6c8b1a02c70ec0ad651d428f870036e1917120fb48bf'],
    ['0a27847cdc98bd6f62220b046edd762b', '80c25ec1600587e7f28b18b1b18e3cdc89928e39cab3bc25e4d4a4c139bcedc4'],
    [
      '09fc1accc230a205e4a208e64a8f204291f581a12756392da4b8c0cf5ef02b95',
      '4f44c1c7fbebb6f9601829f3897bfd650c56fa07844be76489076356ac1886a4',
    ],
  ])('agrees with NIST CAVP, SHA256ShortMsg, message %s', (message, digest) => {
    expect(sha256Hex(hex(message))).toBe(digest);
  });

  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('agrees with the FIPS 180 example message %s (message from memory, digest recomputed)', (message, digest) => {
    expect(sha256Hex(ascii(message))).toBe(digest);
  });

  it('agrees with the FIPS 180 example of a million letters (message from memory, digest recomputed)', () => {
    expect(sha256Hex(new Uint8Array(1_000_000).fill(0x61))).toBe(
      'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0',
    );
  });
});
