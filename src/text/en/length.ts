import type { LengthRefusal } from '../../core/length/index.ts';

/** What is said when a text is not a length; `understood` is the part that made sense. */
export const length = {
  refusals: {
    empty: 'Type what the tape says.',
    'not-a-length': 'That is not a length.',
    'inches-over-eleven': 'With feet, inches go up to 11. Check feet and inches.',
    'zero-denominator': 'A fraction cannot be over zero.',
    'improper-fraction': 'The top of the fraction is larger than the bottom.',
    'odd-fraction': 'Tapes are marked in halves, quarters, eighths, sixteenths. Check the fraction.',
    'several-decimal-points': 'Two decimal points.',
    'ambiguous-comma': 'Is the comma a decimal mark or thousands? Type a point, or leave it out.',
    'mixed-units': 'Metric and inches together. Use one.',
    'mixed-forms': 'A decimal and a fraction together. Use one.',
    'two-numbers': 'Two numbers. Which one?',
    'unit-needed': 'Say the unit.',
    'too-long': 'That is too long to be a length.',
    'too-large': 'That is longer than any tape.',
  } satisfies Record<LengthRefusal, string>,
  notDegrees: 'That is not an angle. Type degrees, as 15 or 7.5.',
  understood: (part: string) => `Understood so far: ${part}.`,
};
