import type { PieceWords, PointWords } from '../../en/guides/piece-words.ts';
import { bag, berth, cloth, inTheWay, line, rain, tow, vents } from './common.ts';

const corner = (name: string, foot: boolean): PointWords => ({
  name,
  where: foot ? 'en la línea del dobladillo' : 'donde se juntan los bordes',
});

const square = (top: string, feet: string): { title: string; how: string } => ({
  title: `${top} a escuadra con la cubierta`,
  how: `Apoye una tabla sobre ${feet}. Desde la tabla, a escuadra (en ángulo recto) hasta ${top}.`,
});

export const boxCover: PieceWords = {
  about:
    'Cuatro esquinas arriba y cuatro en el dobladillo (el borde de abajo). Primero la parte de arriba; después cada cara, con sus dos diagonales.',
  points: {
    T1: corner('arriba, a babor y a proa', false),
    T2: corner('arriba, a estribor y a proa', false),
    T3: corner('arriba, a estribor y a popa', false),
    T4: corner('arriba, a babor y a popa', false),
    B1: corner('abajo, a babor y a proa', true),
    B2: corner('abajo, a estribor y a proa', true),
    B3: corner('abajo, a estribor y a popa', true),
    B4: corner('abajo, a babor y a popa', true),
  },
  readings: {
    'h-T3': square('T3', 'B4, B1 y B2'),
    'h-T4': square('T4', 'B1, B2 y B3'),
    radius: {
      title: 'Radio de las esquinas',
      how: 'En una esquina como las demás: desde donde empieza la curva hasta donde se juntarían los bordes.',
    },
  },
  mistakes: {
    'T1-T2': 'Marque primero las ocho esquinas. En una esquina redondeada, marque donde se juntarían los dos bordes.',
    'T1-T3': 'Es una diagonal: de babor a proa, cruzando hasta estribor a popa.',
    'T2-T4': 'Es una diagonal: de estribor a proa, cruzando hasta babor a popa.',
    'T1-B1': 'La altura en esta esquina, a lo largo del borde.',
    'T1-B2': 'Si la cinta rodea un timón o una manija, mide de más. Sepárela, o gire el timón.',
  },
  heights: 'A escuadra con la cubierta (en ángulo recto).',
  shots: {
    'photo-forward': {
      title: 'Desde proa',
      how: 'Que se vean T1, T2, B1 y B2, con una cinta métrica o una tarjeta sobre la cara.',
    },
    'photo-aft': {
      title: 'Desde popa',
      how: 'Que se vean T3, T4, B3 y B4, con las manijas y el timón como están.',
    },
  },
  questions: {
    what: {
      title: '¿Qué se cubre?',
      help: 'Con el timón, las manijas y el respaldo como quedan cuando se pone la funda.',
      choices: { seat: 'Un asiento', helm: 'Un puesto de mando', console: 'Una consola', engine: 'Un motor' },
    },
    line,
    corners: {
      title: '¿Cómo son las esquinas?',
      help: 'Una funda de esquinas rectas sobre esquinas redondeadas queda separada y se llena de viento.',
      choices: { square: 'Rectas', rounded: 'Redondeadas' },
    },
    'in-the-way': inTheWay,
    ties: {
      title: '¿Qué sujeta el dobladillo (el borde de abajo)?',
      help: 'Una funda que solo se pone encima se vuela.',
      choices: {
        cord: 'Cordón o elástico',
        straps: 'Correas',
        snaps: 'Broches a presión',
        'hook-and-loop': 'Cinta de gancho y bucle',
        none: 'Nada',
      },
    },
    opening: {
      title: '¿Cómo se abre?',
      help: 'Una funda alta sobre un timón sale mejor con un cierre (cremallera).',
      choices: {
        'lifts-off': 'Se saca hacia arriba',
        'zip-forward': 'Cierre a proa',
        'zip-aft': 'Cierre a popa',
        'zip-side': 'Cierre a un lado',
      },
    },
    berth,
    tow,
    rain,
    cloth,
    vents,
    bag,
  },
  runs: {},
};
