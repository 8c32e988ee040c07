import { describe, expect, it } from 'vitest';
import { maySigned, readValue } from '../../src/screens/model/words.ts';

const INCH = { system: 'imperial' } as const;

describe('what is typed for a reading', () => {
  it('is a length in the job’s unit', () => {
    expect(readValue('47 5/8', 'straight', INCH)).toMatchObject({ ok: true, value: 1209.675, unit: 'in' });
    expect(readValue('47.6 cm', 'height', { system: 'metric' })).toMatchObject({ ok: true, value: 476, unit: 'cm' });
  });

  it('is degrees for a lean, never millimetres', () => {
    expect(readValue('15', 'lean', INCH)).toMatchObject({ ok: true, value: Math.PI / 12, unit: 'deg' });
    expect(readValue('-7.5°', 'lean', INCH)).toMatchObject({ ok: true, value: -Math.PI / 24, unit: 'deg' });
    expect(readValue('-0', 'lean', INCH)).toMatchObject({ ok: true, value: 0 });
    for (const text of ['', '5 ft', '47 5/8', '1234', '7.5.2', '-'])
      expect(readValue(text, 'lean', INCH), text).toMatchObject({ ok: false });
  });

  it('is refused in a sentence that says what was understood', () => {
    expect(readValue('12\' 15"', 'straight', INCH)).toEqual({
      ok: false,
      refusal: 'With feet, inches go up to 11. Check feet and inches. Understood so far: 12 ft.',
    });
  });

  it('may be below or behind for some kinds only', () => {
    expect((['straight', 'girth', 'running'] as const).some(maySigned)).toBe(false);
    expect((['height', 'along', 'out', 'lean'] as const).every(maySigned)).toBe(true);
  });
});
