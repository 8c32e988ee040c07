import type { PieceWords, PointWords } from '../../en/guides/piece-words.ts';
import { inTheWay, line } from './common.ts';

const back = (name: string): PointWords => ({ name, where: 'en su línea' });

const station = (point: string): [string, { title: string; how: string }] => [
  `along-${point}`,
  {
    title: `${point} a lo largo del hilo`,
    how: `A escuadra (en ángulo recto) desde ${point} hasta el hilo. Mida por el hilo, desde L hasta ahí.`,
  },
];
const offset = (point: string): [string, { title: string; how: string }] => [
  `out-${point}`,
  { title: `${point} desde el hilo`, how: `Desde el hilo, a escuadra (en ángulo recto), hasta ${point}.` },
];
const OUTLINE = ['E1', 'E2', 'E3', 'E4', 'E5', 'E6'];

const curve = {
  title: 'El borde delantero desde el hilo',
  how: 'Marque N en el borde, donde más se aleja del hilo. Mida desde el hilo, a escuadra, hasta N.',
};
const bevel = (point: string) => ({
  title: `Bisel en ${point}`,
  how: `En ${point}: cuánto se aparta el borde de abajo de la vertical del borde de arriba.`,
});

export const cushion: PieceWords = {
  about:
    'Un hilo a lo largo del borde delantero. El contorno de atrás, con una cinta desde cada extremo del hilo, o a lo largo del hilo y a escuadra.',
  seen: 'hacia el fondo ▲',
  points: {
    L: { name: 'esquina izquierda de adelante', where: 'en la punta misma' },
    R: { name: 'esquina derecha de adelante', where: 'en la punta misma' },
    E1: back('esquina izquierda de atrás'),
    E2: back('borde de atrás, quiebre izquierdo'),
    E3: back('borde de atrás, a la izquierda del medio'),
    E4: back('borde de atrás, a la derecha del medio'),
    E5: back('borde de atrás, quiebre derecho'),
    E6: back('esquina derecha de atrás'),
    N: { name: 'borde delantero', where: 'donde más se aleja del hilo' },
    H1: { name: 'línea de doblez, en el borde delantero', where: 'en la línea que eligió' },
    H2: { name: 'línea de doblez, en el borde de atrás', where: 'en la línea que eligió' },
  },
  readings: {
    ...Object.fromEntries(OUTLINE.flatMap((point) => [station(point), offset(point)])),
    hollow: curve,
    belly: curve,
    thickness: { title: 'Espesor', how: 'De la espuma, o del espacio para ella, sin nadie sentado encima.' },
    radius: {
      title: 'Radio de las esquinas',
      how: 'En una esquina como las demás: desde donde empieza la curva hasta donde se juntarían los bordes.',
    },
    'bevel-left': bevel('E2'),
    'bevel-right': bevel('E5'),
  },
  mistakes: {
    'L-R': 'Párese frente al borde delantero y mire hacia el lugar del cojín: L queda a su izquierda.',
    'L-E1': 'Mida el barco, no el cojín viejo: la espuma y las fundas se encogen.',
    'E1-E6': 'Recto por atrás, de esquina a esquina.',
    'along-E1':
      'A escuadra con el hilo: use una escuadra de carpintero o un libro. Si queda más allá de L, va con signo menos.',
    'back-whole': 'Apoye la cinta sobre el borde de atrás, pasando por cada punto.',
  },
  heights: 'A escuadra con el asiento (en ángulo recto).',
  shots: {
    'photo-above': {
      title: 'Desde arriba',
      how: 'Que se vean L, R, E1 y E6, con una cinta métrica o una tarjeta sobre el asiento.',
    },
    'photo-edge': {
      title: 'A lo largo del borde de atrás',
      how: 'Desde un extremo, para que se vea si hay bisel y contra qué se apoya.',
    },
  },
  questions: {
    what: {
      title: '¿Qué es?',
      help: 'Un respaldo es un cojín que va parado o colgado; mídalo acostado.',
      choices: { cushion: 'Un cojín', bolster: 'Un respaldo', carpet: 'Una alfombra' },
    },
    line: { ...line, help: 'El borde del asiento no es el borde del cojín si este sobresale.' },
    outline: {
      title: '¿Cómo va a tomar el contorno?',
      help: 'Con dos cintas, si se llega desde los dos extremos del hilo. Si no, con una escuadra y una cinta.',
      choices: {
        'two-tapes': 'Con una cinta desde cada extremo',
        'station-offset': 'A lo largo del hilo y a escuadra',
      },
    },
    front: {
      title: '¿Es recto el borde delantero?',
      help: 'Mire a lo largo del hilo.',
      choices: { straight: 'Recto', hollow: 'Entra: queda detrás del hilo', belly: 'Sale: queda delante del hilo' },
    },
    hinge: {
      title: '¿Se dobla?',
      help: 'El doblez es una costura sin nada rígido adentro, del borde delantero al de atrás.',
      choices: { none: 'No', one: 'Por una línea' },
    },
    corners: {
      title: '¿Cómo son las esquinas?',
      help: 'El vivo (cordón de la costura) dobla mejor en una curva que en una punta.',
      choices: { square: 'Rectas', rounded: 'Redondeadas' },
    },
    bevel: {
      title: '¿Tiene bisel atrás (un canto inclinado)?',
      help: 'Mire el borde de atrás desde un extremo. Contra el costado del casco, el borde de abajo queda más adentro.',
      choices: {
        square: 'No: canto recto',
        undercut: 'El borde de abajo, más adentro',
        flared: 'El borde de abajo, más afuera',
      },
    },
    fastening: {
      title: '¿Qué lo sujeta en su lugar?',
      help: 'Suelto, es lo primero que se cae al agua.',
      choices: {
        loose: 'Nada',
        'hook-and-loop': 'Cinta de gancho y bucle',
        snaps: 'Broches a presión',
        straps: 'Correas',
      },
    },
    drain: {
      title: '¿Agujeros de desagüe?',
      help: 'La lluvia y las salpicaduras deben salir del cojín, o correr por la cubierta debajo de él.',
      choices: { wanted: 'Sí, con agujeros', none: 'Sin agujeros' },
    },
    'in-the-way': {
      ...inTheWay,
      title: '¿Hay algún obstáculo para la pieza?',
      help: 'Escotillas, argollas, patas de asiento, desagües, un pedestal.',
    },
    fabric: {
      title: '¿Qué tela?',
      help: 'El color, y lo que ya se sepa de ella, en sus palabras.',
      choices: {
        'as-before': 'Como la vieja',
        coated: 'Recubierta, se seca con un trapo',
        woven: 'Tejida, deja pasar el aire',
        'shop-decides': 'Decide el taller',
      },
    },
  },
  runs: {
    back: {
      title: 'Broches del borde de atrás',
      how: 'De E1 a E6. Enganche una sola vez en E1 y lea cada broche, o mida de uno al siguiente.',
    },
  },
};
