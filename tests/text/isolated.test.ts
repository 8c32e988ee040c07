import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isolated, isolating } from '../../src/text/isolated.ts';

// What the marks do, and which end with which: Unicode Standard Annex 9, Unicode Bidirectional Algorithm, sections 2.1 to 2.5.
const [FSI, PDI] = ['\u2068', '\u2069'];

describe('what people typed stands isolated in a sentence', () => {
  test('quiet: letters, digits and marks that run from left to right are left alone', () => {
    for (const text of ['', 'A–C', '72 3/16"', 'Ñandú, 24 ft', 'é', '帆布']) expect(isolated(text)).toBe(text);
  });

  test('a name from right to left is kept letter by letter, between the marks of an isolate', () => {
    expect(isolated('סירה')).toBe(`${FSI}סירה${PDI}`);
    expect(isolated('قارب 7')).toBe(`${FSI}قارب 7${PDI}`);
  });

  test('an override loses its force, and a mark that closes too much is gone', () => {
    expect(isolated('\u202egpj.exe')).toBe(`${FSI}gpj.exe${PDI}`);
    expect(isolated(`a${PDI}\u202eb`)).toBe(`${FSI}ab${PDI}`);
  });

  test('isolated twice, names in it stay apart', () => {
    const both = `${isolated('א')}–${isolated('ב')}`;
    expect(isolated(both)).toBe(`${FSI}${both}${PDI}`);
  });

  test('whatever was typed, nothing forces a direction and every isolate is closed', () => {
    const letters = fc.constantFrom(
      'a',
      'א',
      '\u202a',
      '\u202b',
      '\u202c',
      '\u202d',
      '\u202e',
      '\u2066',
      '\u2067',
      FSI,
      PDI,
    );
    fc.assert(
      fc.property(
        fc.array(letters).map((all) => all.join('')),
        (typed) => {
          const shown = isolated(typed);
          expect(shown).not.toMatch(/[\u202a-\u202e\u2066\u2067]/u);
          expect(shown.split(FSI).length).toBe(shown.split(PDI).length);
          expect(shown.replace(/[^aא]/gu, '')).toBe(typed.replace(/[^aא]/gu, ''));
        },
      ),
    );
  });

  test('in every sentence of a catalogue: plain words, lists, numbers by name, and what is asked for', () => {
    const words = isolating({
      plain: 'Stop',
      deep: { said: (name: string, count: number) => `${name}: ${count}` },
      facts: (facts: { names: string[]; show: (key: string) => string }) => `${facts.names[0]} ${facts.show('b')}`,
    });
    expect(words.plain).toBe('Stop');
    expect(words.deep.said('\u202eA', 2)).toBe(`${FSI}A${PDI}: 2`);
    expect(words.deep.said('A', 2)).toBe('A: 2');
    expect(words.facts({ names: ['א'], show: (key) => `\u202e${key}` })).toBe(`${FSI}א${PDI} ${FSI}b${PDI}`);
  });
});
