import type { LengthRefusal } from '../../core/length/index.ts';
import type * as english from '../en/length.ts';

export const length: typeof english.length = {
  refusals: {
    empty: 'Escriba lo que marca la cinta.',
    'not-a-length': 'Eso no es una medida de largo.',
    'inches-over-eleven': 'Con pies, las pulgadas llegan hasta 11. Revise los pies y las pulgadas.',
    'zero-denominator': 'Una fracción no puede ir sobre cero.',
    'improper-fraction': 'El número de arriba de la fracción es mayor que el de abajo.',
    'odd-fraction': 'Las cintas marcan medios, cuartos, octavos y dieciseisavos. Revise la fracción.',
    'several-decimal-points': 'Hay dos puntos decimales.',
    'ambiguous-comma': '¿La coma separa decimales o miles? Escriba un punto para los decimales, o quítela.',
    'mixed-units': 'Métrico y pulgadas a la vez. Use uno solo.',
    'mixed-forms': 'Un decimal y una fracción a la vez. Use uno solo.',
    'two-numbers': 'Hay dos números. ¿Cuál es?',
    'unit-needed': 'Diga la unidad.',
    'too-long': 'Es demasiado texto para una medida.',
    'too-large': 'Eso es más largo que cualquier cinta.',
  } satisfies Record<LengthRefusal, string>,
  notDegrees: 'Eso no es un ángulo. Escriba grados, como 15 o 7.5.',
  understood: (part: string) => `Hasta aquí se entendió: ${part}.`,
};
