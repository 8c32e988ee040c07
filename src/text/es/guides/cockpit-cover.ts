import type { PieceWords, PointWords } from '../../en/guides/piece-words.ts';
import { bag, berth, cleats, cloth, cord, dockSide, fits, fitsFrom, inTheWay, line, rain, vents } from './common.ts';
import { bow } from './panel.ts';

const onLine = (name: string): PointWords => ({
  name,
  where: 'en la línea que eligió, en su cruz de cinta adhesiva',
});
const aft = bow('El borde de popa', 'P3 a S3', 'A popa del hilo', 'A proa del hilo');
const forward = bow('El borde de proa', 'P1 a S1', 'A proa del hilo', 'A popa del hilo');

export const cockpitCover: PieceWords = {
  about:
    'Tres puntos a cada lado de la bañera (cockpit), medidos de lado a lado y en diagonal. Después, cómo se curva cada borde y los sujetadores.',
  points: {
    P1: onLine('esquina de babor a proa'),
    P2: onLine('lado de babor, a mitad de camino'),
    P3: onLine('esquina de babor a popa'),
    T: onLine('medio del borde de popa'),
    S3: onLine('esquina de estribor a popa'),
    S2: onLine('lado de estribor, a mitad de camino'),
    S1: onLine('esquina de estribor a proa'),
    F: onLine('medio del borde de proa'),
    X: { name: 'lo más alto de la vara o la estructura', where: 'donde se apoyará la lona' },
  },
  readings: {
    'drop-aft-port': {
      title: 'Bajada por el espejo, babor',
      how: 'Desde P3, hacia abajo por el espejo de popa, hasta donde termina la funda.',
    },
    'drop-aft-starboard': {
      title: 'Bajada por el espejo, estribor',
      how: 'Desde S3, hacia abajo por el espejo de popa, hasta donde termina la funda.',
    },
    'drop-fore-port': {
      title: 'Subida al techo rígido, babor',
      how: 'Desde P1, recto hacia arriba, hasta la línea de la funda en el techo rígido.',
    },
    'drop-fore-starboard': {
      title: 'Subida al techo rígido, estribor',
      how: 'Desde S1, recto hacia arriba, hasta la línea de la funda en el techo rígido.',
    },
    'hardtop-width': {
      title: 'Ancho en el techo rígido',
      how: 'Por la línea de la funda en el techo rígido, desde encima de P1 hasta encima de S1.',
    },
    'h-X': {
      title: 'Altura de la vara o la estructura',
      how: 'Tienda un hilo bien tenso de P2 a S2. Ponga la vara o la estructura bajo el medio del hilo, o al lado. Mida a escuadra (en ángulo recto) desde el hilo hasta lo más alto de ella.',
    },
    'edge-whole': {
      title: 'Borde entero, por la popa',
      how: 'Apoye la cinta sobre el borde, desde P1, por la popa, hasta S1.',
    },
    'fore-whole': {
      title: 'Borde de proa entero',
      how: 'Apoye la cinta por donde se sujetará la funda, de P1 a S1: sobre la cubierta, o subiendo, a lo largo del techo rígido y bajando.',
    },
  },
  mistakes: {
    'P1-P2': 'Ponga primero una cruz de cinta adhesiva en cada punto, y enganche siempre en la misma cruz.',
    'P1-P3': 'Recto de esquina a esquina, sin seguir la curva del costado.',
    'P1-S2': 'Es una diagonal: cruza la bañera hasta el medio del otro lado.',
    'out-P2': 'A escuadra con el hilo, en la cruz de P2. Un hilo que toca algo no está recto.',
    'P2-S3': 'Es una diagonal: cruza la bañera hasta la otra esquina de popa.',
    'edge-whole': 'Sobre el borde, pasando por cada punto. No en línea recta.',
  },
  heights: 'A escuadra con el hilo (en ángulo recto).',
  shots: {
    'photo-port': {
      title: 'Lado de babor',
      how: 'Que se vean P1 y P2, con una cinta métrica o una tarjeta junto a uno de ellos.',
    },
    'photo-stern': {
      title: 'La popa',
      how: 'Que se vean P3 y S3, y con ellos las cornamusas, las luces y el motor; una cinta métrica o una tarjeta junto a uno de los puntos.',
    },
    'photo-starboard': {
      title: 'Lado de estribor',
      how: 'Que se vean S2 y S1, con una cinta métrica o una tarjeta junto a uno de ellos.',
    },
    'photo-inside': {
      title: 'Lo que hay en la bañera (cockpit)',
      how: 'Desde proa: los asientos, el timón y todo lo que quedará bajo la funda.',
    },
  },
  questions: {
    line,
    'aft-edge': { ...aft, choices: { ...aft.choices, 'down-transom': 'La funda sigue y baja por el espejo de popa' } },
    'fore-edge': {
      ...forward,
      choices: { ...forward.choices, 'up-hardtop': 'La funda sigue y sube hasta el techo rígido' },
    },
    support: {
      title: '¿Qué la sostiene en el medio?',
      help: 'Si no tiene caída, se le queda el agua encima.',
      choices: { pole: 'Una vara', frame: 'Una estructura o un arco', none: 'Nada' },
    },
    split: {
      title: '¿Es de una sola pieza?',
      help: 'Un cierre (cremallera) permite abrir solo una mitad.',
      choices: {
        'one-piece': 'De una pieza',
        'fore-and-aft': 'Dividida de proa a popa, por el centro',
        across: 'Dividida a lo ancho, de P2 a S2',
      },
    },
    cleats,
    'in-the-way': inTheWay,
    berth,
    'dock-side': dockSide,
    cord,
    fits,
    'fits-from': fitsFrom,
    rain,
    cloth,
    vents,
    bag,
  },
  runs: {
    edge: {
      title: 'Sujetadores por la popa',
      how: 'Desde P1, por la popa, hasta S1. Enganche una sola vez en P1 y lea cada sujetador, o mida de uno al siguiente.',
    },
    fore: { title: 'Sujetadores del borde de proa', how: 'De P1 a S1, donde se sujeta la funda.' },
  },
};
