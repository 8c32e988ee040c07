import { describe, expect, it } from 'vitest';
import { pieceName, typedPieceName } from '../../src/screens/model/job-words.ts';

const named = (name: string) => ({ kind: 'open-bow', name }) as const;

describe('the name of a piece', () => {
  it('is that of its kind where nobody gave it one', () => {
    for (const name of ['', ' ', 'Open-bow cover'])
      expect([pieceName(named(name)), typedPieceName(named(name))]).toEqual(['Open-bow cover', 'Open-bow cover']);
  });

  it('is isolated where it is said, and as typed where it is written down', () => {
    expect(pieceName(named('דנה'))).toBe('\u2068דנה\u2069');
    expect(typedPieceName(named('דנה'))).toBe('דנה');
    expect(typedPieceName(named('a\u2067b'))).toBe('a\u2067b');
  });
});
