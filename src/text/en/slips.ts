import type { SlipKind } from '../../core/adjust/index.ts';

/** The slips people make, in a few words each. */
export const slips: Record<SlipKind, string> = {
  'whole-foot': 'a foot too many or too few',
  'ten-inches': 'ten inches too many or too few',
  'hundred-millimetres': '100 mm too many or too few',
  'whole-metre': 'a metre too many or too few',
  'one-inch': 'an inch too many or too few',
  'burnt-inch': 'started at the 1-inch mark',
  'burnt-hundred': 'started at the 10 or 100 mm mark',
  'digits-swapped': 'digits swapped',
  'six-for-nine': '6 read for 9, upside down',
  'digit-misread': 'one digit misread',
  'digit-lost': 'one digit left out',
  'decimal-shifted': 'decimal point shifted',
  'fraction-wrong-way': 'fraction counted the wrong way',
  'fraction-misread': 'fraction misread',
  'sixteenths-for-eighths': 'sixteenths taken for eighths',
  'tape-case': 'the tape’s case not added',
  'feet-inches-as-inches': 'feet and inches typed as inches',
  'decimal-feet': 'decimal feet typed as feet and inches',
  'unit-mistaken': 'another unit',
  'other-pair': 'measured between other points',
  'port-for-starboard': 'port for starboard',
  'readings-swapped': 'two lines swapped',
  unexplained: 'slack tape, or to the edge and not the centre',
};
