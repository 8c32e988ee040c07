import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heldTogether, termsIn, toldInWords } from '../../src/screens/parts/lesson/plain-words.ts';
import { speakIn } from '../../src/text/index.ts';
import { sayGlossary } from '../../src/text/owner.ts';
import { roomsReady } from '../../src/text/rooms.ts';

const terms = (text: string, kind?: string) => termsIn([text], kind);

describe('the trade’s words in a text', () => {
  it('are found in any case and number, and not inside other words', () => {
    expect(terms('Hook on A (port mount, centre of the eye).')).toEqual(['port', 'mount', 'eye']);
    expect(terms('Starboard side to, cleats free')).toEqual(['starboard', 'cleat']);
    expect(terms('Support it after the decking, important report')).toEqual([]);
    expect(terms('The rod holders at the gunwale')).toEqual(['rod holder', 'gunwale']);
  });
  it('a bow is a tube on a folding top and the front of the boat elsewhere', () => {
    expect(terms('Tip of the bow', 'open-bow')).toEqual(['bow']);
    expect(terms('Width of the forward bow', 'folding-top')).toEqual(['forward', 'frame-bow']);
  });
  it('are two words in Spanish, where the front of the boat and a tube of a top are', async () => {
    await speakIn('es');
    await roomsReady();
    try {
      expect(terms('Punta del arco de proa', 'folding-top')).toEqual(['frame-bow', 'bow']);
      expect(terms('arco de proa')).toEqual(['frame-bow', 'bow']);
      expect(terms('La proa', 'open-bow')).toEqual(['bow']);
    } finally {
      await speakIn('en');
    }
  });
  it('never change the text', () => {
    const words = fc.constantFrom(...Object.values(sayGlossary().names), 'the', ' ', ', ', 'é', 'A–B', 'bows');
    fc.assert(
      fc.property(fc.array(fc.oneof(words, fc.string()), { maxLength: 12 }), (parts) => {
        const text = parts.join(' ');
        expect(
          toldInWords(text)
            .map((told) => told.text)
            .join(''),
        ).toBe(text);
      }),
    );
  });
  it('take brackets and commas along, each once', () => {
    const held = heldTogether(toldInWords('A (port mount, left), port/starboard'));
    expect(held.map(({ before, text, after }) => [before, text, after].join('|'))).toEqual([
      '|A |',
      '(|port|',
      '| |',
      '|mount|,',
      '| left), |',
      '|port|/',
      '||',
      '|starboard|',
    ]);
  });
  it('each have a name and an explanation', () => {
    const { names, terms: told } = sayGlossary();
    expect(Object.keys(names)).toEqual(Object.keys(told));
  });
});
