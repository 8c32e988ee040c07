import type { PieceWords, PointWords } from '../../en/guides/piece-words.ts';
import { bag, berth, cleats, cloth, cord, dockSide, fits, fitsFrom, inTheWay, line, rain, vents } from './common.ts';

const bowEdge = (side: string): PointWords => ({ name: side, where: 'en la línea que eligió' });

const crown = (title: string, port: string, starboard: string) => ({
  title,
  how: `Un hilo bien tenso de ${port} a ${starboard}. Desde su medio, a escuadra (en ángulo recto), hacia arriba hasta donde se apoyará la lona.`,
});

export const openBow: PieceWords = {
  about:
    'Tres marcas de cinta adhesiva, cada punto del borde medido desde cada una, los espacios entre puntos y después los sujetadores.',
  points: {
    W1: { name: 'marca de babor al pie del parabrisas', where: 'en la esquina de la marca' },
    W2: { name: 'marca de estribor al pie del parabrisas', where: 'en la esquina de la marca' },
    F: { name: 'marca de proa en la línea del centro', where: 'en la esquina de la marca' },
    P1: bowEdge('borde de babor, junto al parabrisas'),
    P2: bowEdge('borde de babor, en el medio'),
    P3: bowEdge('borde de babor, cerca de la punta'),
    T: bowEdge('punta de la proa'),
    S3: bowEdge('borde de estribor, cerca de la punta'),
    S2: bowEdge('borde de estribor, en el medio'),
    S1: bowEdge('borde de estribor, junto al parabrisas'),
    K2: { name: 'medio de la funda entre P2 y S2', where: 'en la línea del centro' },
    K3: { name: 'medio de la funda entre P3 y S3', where: 'en la línea del centro' },
    G: { name: 'lo más alto de la funda en el vidrio', where: 'en la línea del centro' },
  },
  readings: {
    'crown-2': crown('Comba en P2 y S2', 'P2', 'S2'),
    'crown-3': crown('Comba en P3 y S3', 'P3', 'S3'),
  },
  mistakes: {
    'W1-W2': 'Pegue bien las marcas. Una marca que se movió es una marca nueva.',
    'W1-F': 'Use siempre la misma esquina de cada marca, en todas las medidas.',
    'edge-whole': 'Apoye la cinta sobre el borde mismo, pasando por cada punto. No en línea recta.',
    'h-G': 'A escuadra con un hilo de W1 a W2, sin seguir la inclinación del vidrio.',
  },
  heights: 'A escuadra con el hilo (en ángulo recto).',
  shots: {
    'photo-port': {
      title: 'Borde de babor',
      how: 'Desde el muelle, que se vean P1 y P2, con una cinta métrica o una tarjeta junto a uno de ellos.',
    },
    'photo-bow': {
      title: 'La proa',
      how: 'Desde adelante o desde arriba: P3, la punta T y S3, y con ellos las cornamusas y las luces.',
    },
    'photo-starboard': {
      title: 'Borde de estribor',
      how: 'Que se vean S1 y S2, con una cinta métrica o una tarjeta junto a uno de ellos.',
    },
  },
  questions: {
    line,
    glass: {
      title: '¿Dónde llega la funda al parabrisas?',
      help: 'Si sube por el vidrio, el agua escurre.',
      choices: { 'at-foot': 'Al pie', 'up-glass': 'Sube por el vidrio' },
    },
    crown: {
      title: '¿Algo levanta el medio de la funda?',
      help: 'Una vara de apoyo, una cubierta combada (más alta en el medio). De una comba el agua escurre; en un hueco se junta.',
      choices: { flat: 'Nada: queda plana entre sus bordes', crowned: 'Sí, queda combada' },
    },
    berth,
    'dock-side': dockSide,
    cord,
    cleats,
    'in-the-way': inTheWay,
    fits,
    'fits-from': fitsFrom,
    rain,
    cloth,
    vents,
    bag,
  },
  runs: {
    edge: {
      title: 'Sujetadores del borde',
      how: 'Desde P1, por la proa, hasta S1. Enganche una sola vez en P1 y lea cada sujetador, o mida de uno al siguiente.',
    },
  },
};
