import type { SlipKind } from '../../core/adjust/index.ts';

/** The slips people make, in a few words each. */
export const slips: Record<SlipKind, string> = {
  'whole-foot': 'un pie de más o de menos',
  'ten-inches': 'diez pulgadas de más o de menos',
  'hundred-millimetres': '100 mm de más o de menos',
  'whole-metre': 'un metro de más o de menos',
  'one-inch': 'una pulgada de más o de menos',
  'burnt-inch': 'se empezó en la marca de 1 pulgada',
  'burnt-hundred': 'se empezó en la marca de 10 o de 100 mm',
  'digits-swapped': 'cifras cambiadas de lugar',
  'six-for-nine': '6 leído como 9, al revés',
  'digit-misread': 'una cifra mal leída',
  'digit-lost': 'falta una cifra',
  'decimal-shifted': 'punto decimal corrido',
  'fraction-wrong-way': 'fracción contada al revés',
  'fraction-misread': 'fracción mal leída',
  'sixteenths-for-eighths': 'dieciseisavos tomados por octavos',
  'tape-case': 'no se sumó la caja de la cinta',
  'feet-inches-as-inches': 'pies y pulgadas escritos como pulgadas',
  'decimal-feet': 'pies decimales escritos como pies y pulgadas',
  'unit-mistaken': 'otra unidad',
  'other-pair': 'medido entre otros puntos',
  'port-for-starboard': 'babor por estribor',
  'readings-swapped': 'dos renglones intercambiados',
  unexplained: 'cinta floja, o medido al borde y no al centro',
};
