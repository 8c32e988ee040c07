import type { PieceWords } from '../../en/guides/piece-words.ts';
import { bag, berth, cloth, inTheWay, speed, wind } from './common.ts';

export const tensionShade: PieceWords = {
  about: 'Dos soportes en el techo rígido, dos varas en portacañas. Se mide mejor con las varas puestas.',
  points: {
    A: { name: 'soporte de babor', where: 'en el centro de la argolla' },
    B: { name: 'soporte de estribor', where: 'en el centro de la argolla' },
    C: { name: 'vara de babor', where: 'en la punta de la vara, donde sale el cabo' },
    D: { name: 'vara de estribor', where: 'en la punta de la vara, donde sale el cabo' },
  },
  readings: {
    'pole-port': {
      title: 'Largo de la vara de babor',
      how: 'Desde el fondo del portacañas hasta donde el cabo saldrá de la vara.',
    },
    'pole-starboard': {
      title: 'Largo de la vara de estribor',
      how: 'Desde el fondo del portacañas hasta donde el cabo saldrá de la vara.',
    },
  },
  mistakes: {
    'A-C': 'Una cinta floja siempre mide de más. Ténsela bien.',
    'A-D': 'Es una diagonal: del soporte de babor, cruzando hasta la vara de estribor.',
    'B-C': 'Es una diagonal: del soporte de estribor, cruzando hasta la vara de babor.',
  },
  heights:
    'A escuadra con la cubierta (en ángulo recto), desde un mismo hilo a nivel o una misma línea de la cubierta para las cuatro esquinas.',
  shots: {
    'photo-mounts': {
      title: 'Los dos soportes',
      how: 'De frente, que se vean las dos argollas, con una cinta métrica o una tarjeta junto a una de ellas.',
    },
    'photo-pole-port': {
      title: 'Vara de babor y su portacañas',
      how: 'La vara entera, desde el portacañas hasta la punta.',
    },
    'photo-pole-starboard': {
      title: 'Vara de estribor y su portacañas',
      how: 'La vara entera, desde el portacañas hasta la punta.',
    },
  },
  questions: {
    over: {
      title: '¿Qué cubre el toldo?',
      help: 'Sobre la cubierta de proa, las varas están a proa del techo rígido; sobre la bañera (cockpit), a popa.',
      choices: { foredeck: 'Cubierta de proa', cockpit: 'Bañera (cockpit)' },
    },
    poles: {
      title: '¿Qué hay ahora en los portacañas?',
      help: 'Las esquinas se miden de punta a punta. Un grado de inclinación en una vara de 2 m son 35 mm (1 3/8 in).',
      choices: {
        'real-poles': 'Las varas verdaderas',
        sticks: 'Palos rectos del mismo largo',
        'not-yet': 'Nada todavía',
      },
    },
    lean: {
      title: '¿Cuánto se inclinan los portacañas?',
      help: 'Desde la vertical. Lo usual es 0, 15 y 30 grados. Esto sirve para revisar las esquinas, no para medirlas.',
      choices: { upright: 'Vertical', 'deg-15': '15 grados', 'deg-30': '30 grados', other: 'Otra: dígala en palabras' },
    },
    'lean-way': {
      title: '¿Hacia dónde se inclinan?',
      help: 'Como se inclinará la vara. Si babor y estribor son distintos, dígalo en palabras.',
      choices: { forward: 'Hacia proa', aft: 'Hacia popa', outboard: 'Hacia afuera', differs: 'Son distintos' },
    },
    holders: {
      title: '¿Cómo están fijados los portacañas?',
      help: 'Los tornillos de madera no aguantan un toldo.',
      choices: {
        'through-bolted': 'Con pernos pasantes y contraplacas',
        screwed: 'Con tornillos',
        'to-be-fitted': 'Sin colocar todavía',
      },
    },
    rain: {
      title: 'Cuando llueve, ¿se deja puesto?',
      help: 'Un toldo plano y sin malla que se deja puesto bajo la lluvia junta agua.',
      choices: { 'taken-down': 'Se baja', 'stays-up': 'Se deja puesto' },
    },
    berth,
    speed,
    wind,
    cloth,
    bag,
    'in-the-way': inTheWay,
  },
  runs: {},
};
