import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import { describe, expect, it } from 'vitest';
import { doubleOf, numberBits } from './number-stream.ts';

/** Inputs of the test files of RFC 8785's author (cyberphone/json-canonicalization, testdata/input), retyped. */
const FILES = {
  arrays: '[ 56, { "d": true, "10": null, "1": [ ] } ]',
  french:
    '{ "peach": "This sorting order", "péché": "is wrong according to French", "pêche": "but canonicalization MUST", "sin": "ignore locale" }',
  structures:
    '{ "1": {"f": {"f": "hi","F": 5} ,"\\n": 56.0}, "10": { }, "": "empty", "a": { }, "111": [ {"e": "yes","E": "no" } ], "A": { } }',
  unicode: '{ "Unnormalized Unicode":"\\u0041\\u030a" }',
  values:
    '{ "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001], "string": "\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/", "literals": [null, true, false] }',
  weird:
    '{ "\\u20ac": "Euro Sign", "\\r": "Carriage Return", "\\u000a": "Newline", "1": "One", "\\u0080": "Control\\u007f", "\\ud83d\\ude02": "Smiley", "\\u00f6": "Latin Small Letter O With Diaeresis", "\\ufb33": "Hebrew Letter Dalet With Dagesh", "</script>": "Browser Challenge" }',
} as const;

const canonical = (text: string): string => canonicalize(JSON.parse(text)) ?? '';
const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

describe('canonical JSON (RFC 8785)', () => {
  it.each([
    ['arrays', '099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42', 32],
    ['french', 'd99d0ebdcb0033cb858cfa830ae46bc0fb3309413b271f1da828c89901a27ed5', 130],
    ['structures', '605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5', 98],
    ['unicode', '0d99aad92a125196ff887876643fd3206786a84ddce2cee52ba4ad256d2381d3', 30],
    ['values', '2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb', 118],
    ['weird', '6af595a9aa80110b964b4de3f82a05fa6ae7423005019bacfa2620dddc4e94d1', 214],
  ] as const)('agrees with the test file %s', (name, sha256, bytes) => {
    const text = canonical(FILES[name]);
    expect([Buffer.byteLength(text), digest(text)]).toEqual([bytes, sha256]);
  });

  it('writes the test file "arrays" as published', () => {
    expect(canonical(FILES.arrays)).toBe('[56,{"1":[],"10":null,"d":true}]');
  });

  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('writes the double %s as appendix B does', (bits, text) => {
    expect(canonicalize(doubleOf(BigInt(`0x${bits}`)))).toBe(text);
  });

  it.each(['7fffffffffffffff', '7ff0000000000000'])('refuses %s, as appendix B does', (bits) => {
    expect(() => canonicalize(doubleOf(BigInt(`0x${bits}`)))).toThrow();
  });

  it.each([
    [1000, 'be18b62b6f69cdab33a7e0dae0d9cfa869fda80ddc712221570f9f40a5878687', 37967],
    [10_000, 'b9f7a8e75ef22a835685a52ccba7f7d6bdc99e34b010992cbc5864cd12be6892', 399022],
    [100_000, '22776e6d4b49fa294a0d0f349268e5c28808fe7e0cb2bcbe28f63894e494d4c7', 4031728],
  ])('writes the first %d numbers of the published test file', (count, sha256, bytes) => {
    const lines: string[] = [];
    for (const bits of numberBits()) {
      lines.push(`${bits.toString(16)},${canonicalize(doubleOf(bits))}\n`);
      if (lines.length === count) break;
    }
    const text = lines.join('');
    expect([Buffer.byteLength(text), digest(text)]).toEqual([bytes, sha256]);
  });
});
