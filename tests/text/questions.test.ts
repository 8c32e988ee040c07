import { describe, expect, it } from 'vitest';
import { guides } from '../../src/core/guide/pieces/index.ts';
import { loadPieceWords, pieceWords } from '../../src/text/guides.ts';
import { bringWords } from '../../src/text/index.ts';
import { saidIn } from '../../src/text/language.ts';

describe.each(['en', 'es'] as const)('what questions say, in %s', (tongue) => {
  it('speaks of no drawing: a question has none', async () => {
    await bringWords(tongue);
    const kinds = guides.map(({ kind }) => kind);
    await loadPieceWords(kinds, tongue);
    const told = saidIn(tongue, () =>
      kinds.flatMap((kind) =>
        Object.values(pieceWords(kind)?.questions ?? {}).flatMap(({ title, help, choices }) => [
          title,
          help,
          ...Object.values(choices),
        ]),
      ),
    );
    expect(told.length).toBeGreaterThan(300);
    expect(told.filter((text) => /drawing|picture above|dibujo/i.test(text))).toEqual([]);
  });
});
