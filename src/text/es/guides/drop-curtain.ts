import type { PieceWords, PointWords } from '../../en/guides/piece-words.ts';
import { bag, berth, cloth, cord, dockSide, fits, fitsFrom, inTheWay, line, speed } from './common.ts';
import { bow, exhaust, split } from './panel.ts';

const atTop = (name: string): PointWords => ({
  name,
  where: 'en la línea del techo rígido, del riel o de los sujetadores',
});
const below = (name: string): PointWords => ({ name, where: 'en la línea que eligió' });

export const dropCurtain: PieceWords = {
  about:
    'De lado a lado en la popa, desde el techo rígido hacia abajo. Cuatro esquinas, las dos diagonales y después cómo se curva cada borde.',
  points: {
    P1: atTop('esquina de arriba, a babor'),
    P2: below('medio del borde de babor'),
    P3: below('esquina de abajo, a babor, en la borda o el espejo de popa'),
    T: below('medio del borde de abajo'),
    S3: below('esquina de abajo, a estribor, en la borda o el espejo de popa'),
    S2: below('medio del borde de estribor'),
    S1: atTop('esquina de arriba, a estribor'),
    H: atTop('medio del borde de arriba'),
    X1: atTop('división de babor, o la única, arriba'),
    X2: below('división de babor, o la única, abajo'),
    Y1: atTop('división de estribor, arriba'),
    Y2: below('división de estribor, abajo'),
  },
  readings: {
    'below-edge': {
      title: 'Cuánto cuelga por debajo de la línea',
      how: 'Desde la línea de abajo, hacia abajo, hasta donde debe terminar la lona. 0 si termina en la línea.',
    },
    'top-whole': { title: 'Borde de arriba entero', how: 'Apoye la cinta a lo largo del techo rígido, de P1 a S1.' },
    'round-whole': {
      title: 'Lados y borde de abajo, enteros',
      how: 'Apoye la cinta desde P1 hacia abajo, a lo largo del borde de abajo y hacia arriba hasta S1.',
    },
  },
  mistakes: {
    'P1-P3':
      'Ponga primero una cruz de cinta adhesiva en cada esquina. Si dobla una esquina del barco, son dos cortinas.',
    'P1-S3': 'Es una diagonal: de arriba a babor, cruzando hasta abajo a estribor.',
    'P3-S1': 'Es una diagonal: de abajo a babor, cruzando hasta arriba a estribor.',
    'round-whole': 'Sobre el borde, doblando en las dos esquinas. No en línea recta.',
  },
  heights: 'A escuadra con el hilo (en ángulo recto).',
  shots: {
    'photo-port': {
      title: 'Borde de babor',
      how: 'Que se vean P1 y P3, con una cinta métrica o una tarjeta junto a uno de ellos.',
    },
    'photo-starboard': {
      title: 'Borde de estribor',
      how: 'Que se vean S1 y S3, con una cinta métrica o una tarjeta junto a uno de ellos.',
    },
    'photo-whole': {
      title: 'Toda la abertura',
      how: 'Desde atrás de la popa, bien de frente: las cuatro esquinas, la escalera, el motor y las luces.',
    },
  },
  questions: {
    line,
    exhaust,
    lands: {
      title: '¿Dónde termina abajo?',
      help: 'Por fuera de la brazola (el reborde de la bañera), el agua corre hacia afuera.',
      choices: {
        inside: 'Por dentro de la regala (borda) o la brazola',
        outside: 'Por fuera, encima de ella',
        'on-deck': 'En la cubierta',
      },
    },
    'top-edge': bow('El borde de arriba', 'P1 a S1', 'Por encima del hilo', 'Por debajo del hilo'),
    'port-edge': bow('El borde de babor', 'P1 a P3', 'Por fuera del hilo, a babor', 'Por dentro del hilo'),
    'bottom-edge': bow('El borde de abajo', 'P3 a S3', 'Por debajo del hilo', 'Por encima del hilo'),
    'starboard-edge': bow('El borde de estribor', 'S1 a S3', 'Por fuera del hilo, a estribor', 'Por dentro del hilo'),
    split,
    'in-the-way': inTheWay,
    speed,
    berth,
    'dock-side': dockSide,
    cord,
    fits,
    'fits-from': fitsFrom,
    cloth,
    bag,
  },
  runs: {
    top: {
      title: 'Borde de arriba: riel o sujetadores',
      how: 'Desde P1, a lo largo del techo rígido, hasta S1. Diga dónde termina un riel.',
    },
    round: {
      title: 'Lados y borde de abajo: sujetadores',
      how: 'Desde P1 hacia abajo, a lo largo del borde de abajo y hacia arriba hasta S1. Cada lado y el borde de abajo pueden cerrar de otra manera.',
    },
  },
};
