import { afterEach, describe, expect, it } from 'vitest';
import { pieceName } from '../../src/screens/model/job-words.ts';
import { sayBenchLinks } from '../../src/text/bench-links.ts';
import { loadPieceWords, pieceWords } from '../../src/text/guides.ts';
import { bringWords, say, speakIn } from '../../src/text/index.ts';
import { language, saidIn } from '../../src/text/language.ts';

afterEach(() => speakIn('en'));

const message = () =>
  sayBenchLinks().toMeasure({
    shop: 'A canvas shop',
    contact: '',
    pieces: say().dock.leave.and([
      pieceName({ kind: 'cushion', name: 'Cushion, bolster or carpet' }),
      pieceName({ kind: 'cushion', name: 'Grandmother’s cushion' }),
    ]),
    boat: 'Perla',
    address: 'https://example.org/#/r/x',
  });

describe('what is said to somebody who reads another language', () => {
  it('is in theirs, names of pieces too, but for a name that somebody gave', async () => {
    const own = message();
    await bringWords('es');
    const theirs = saidIn('es', message);
    expect(theirs).toContain(
      'A canvas shop le pide que mida Perla: Cojín, respaldo o alfombra y Grandmother’s cushion.',
    );
    expect(own).toContain(
      'A canvas shop asks you to measure Perla: Cushion, bolster or carpet and Grandmother’s cushion.',
    );
    expect(language.value).toBe('en');
    expect(message()).toBe(own);
  });
  it('has the guides’ words once they have come', async () => {
    await loadPieceWords(['cushion'], 'es');
    await loadPieceWords(['cushion'], 'en');
    expect(saidIn('es', () => pieceWords('cushion'))).not.toEqual(pieceWords('cushion'));
  });
  it('goes the other way too', async () => {
    await speakIn('es');
    await bringWords('en');
    expect(saidIn('en', () => say().general.roles.owner)).not.toBe(say().general.roles.owner);
    expect(saidIn('en', message)).toContain('asks you to measure');
  });
  it('is over when it has thrown', async () => {
    await bringWords('es');
    const before = message();
    expect(() =>
      saidIn('es', () => {
        throw new Error('on purpose');
      }),
    ).toThrow('on purpose');
    expect(message()).toBe(before);
  });
});
