import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Packet, readPacket } from '../../../src/core/packet/index.ts';
import { noFindings, samplePacket } from './sample.ts';

const text = JSON.stringify(samplePacket());
const read = (value: unknown) => readPacket(value, { check: noFindings });

/** What a packet says, photos that travel beside it left out of account. */
const said = ({ photos, ...rest }: Packet): string =>
  `${canonicalize(rest)}${canonicalize(photos.map(({ data: _, ...photo }) => photo))}`;
const whole = said(samplePacket());

/** Never throws; what comes through is the packet that was sent, with its photos whole or left beside. */
function harmless(value: unknown): void {
  const reading = read(value);
  if (!reading.ok) return;
  expect(said(reading.packet)).toBe(whole);
  for (const photo of reading.packet.photos) {
    const sent = samplePacket().photos.find((other) => other.sha256 === photo.sha256);
    expect([sent?.data, undefined]).toContain(photo.data);
  }
}

describe('a packet on a bad way', () => {
  it('cut off anywhere is refused', () => {
    fc.assert(
      fc.property(fc.nat(text.length - 1), (length) => {
        expect(read(text.slice(0, length)).ok).toBe(false);
      }),
    );
  });

  it('with letters changed, dropped or doubled never comes through altered', () => {
    const change = fc.record({
      at: fc.nat(text.length - 1),
      drop: fc.nat(3),
      put: fc.oneof(fc.constant(''), fc.string({ maxLength: 3 }), fc.constantFrom('0', '"', '{', '}', ',', '\\', 'e9')),
    });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        let altered = text;
        for (const { at, drop, put } of changes) altered = altered.slice(0, at) + put + altered.slice(at + drop);
        harmless(altered);
      }),
      { numRuns: 500 },
    );
  });

  it('with one letter of a value changed is refused', () => {
    const letters = [...text.matchAll(/[0-9a-zA-Z]/g)].map((match) => match.index);
    fc.assert(
      fc.property(fc.constantFrom(...letters), (at) => {
        const letter = text[at] === '7' ? '8' : '7';
        expect(read(text.slice(0, at) + letter + text.slice(at + 1)).ok).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  it('with any value replaced anywhere never comes through altered', () => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat(20)), fc.jsonValue({ maxDepth: 2 }), (steps, value) => {
        const packet: unknown = JSON.parse(text);
        replaceSomewhere(packet, steps, value);
        harmless(packet);
      }),
      { numRuns: 500 },
    );
  });

  it('and anything else at all is refused without a throw', () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true }), (value) => {
        expect(read(value).ok).toBe(false);
      }),
    );
    fc.assert(
      fc.property(fc.json(), (json) => {
        expect(read(json).ok).toBe(false);
      }),
    );
  });
});

/** Walks down a random way and puts the value in place of what is at its end. */
function replaceSomewhere(root: unknown, steps: Iterator<number>, value: unknown): void {
  let part = root as Record<string, unknown>;
  for (;;) {
    const keys = Object.keys(part);
    const step = Number(steps.next().value ?? 0);
    const key = keys[step % keys.length];
    if (key === undefined) return;
    const child = part[key];
    if (typeof child !== 'object' || child === null || step > 17) {
      part[key] = value;
      return;
    }
    part = child as Record<string, unknown>;
  }
}
