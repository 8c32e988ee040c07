import type { PieceWords, PointWords } from '../../en/guides/piece-words.ts';
import { bag, berth, cloth, inTheWay, speed, tow } from './common.ts';

const BOWS = ['arco de proa', 'segundo arco', 'tercer arco', 'cuarto arco'];
const hips: Record<string, PointWords> = Object.fromEntries(
  BOWS.flatMap((bow, i) => [
    [`P${i + 1}`, { name: `${bow}, babor`, where: 'en la marca' }],
    [`C${i + 1}`, { name: `${bow}, medio`, where: 'en lo más alto del tubo' }],
    [`S${i + 1}`, { name: `${bow}, estribor`, where: 'en la marca' }],
  ]),
);

const crowns = Object.fromEntries(
  BOWS.map((bow, i): [string, { title: string; how: string }] => [
    `crown-${i + 1}`,
    {
      title: `Comba del ${bow}`,
      how: `Tienda un hilo bien tenso de P${i + 1} a S${i + 1}. Desde el hilo, a escuadra (en ángulo recto), hasta C${i + 1}.`,
    },
  ]),
);

const rises = Object.fromEntries(
  [2, 3].flatMap((bow) =>
    (['P', 'S'] as const).map((side): [string, { title: string; how: string }] => [
      `rise-${side}${bow}`,
      {
        title: `Cuánto sobresale ${side}${bow}`,
        how: `El hilo va de ${side}${bow - 1} a ${side}${bow + 1}. Desde el hilo, a escuadra (en ángulo recto), hasta ${side}${bow}.`,
      },
    ]),
  ),
);

const strap = (title: string, from: string): { title: string; how: string } => ({
  title,
  how: `Desde ${from} hasta su argolla en el barco, con la correa tensa.`,
});

export const foldingTop: PieceWords = {
  about:
    'Con la estructura abierta y las correas tensas. Primero cada arco a lo ancho; después de arco a arco, por los dos lados y por el medio.',
  points: hips,
  readings: {
    ...crowns,
    ...rises,
    'strap-forward-port': strap('Correa de proa, babor', 'el arco de proa'),
    'strap-forward-starboard': strap('Correa de proa, estribor', 'el arco de proa'),
    'strap-aft-port': strap('Correa de popa, babor', 'el último arco'),
    'strap-aft-starboard': strap('Correa de popa, estribor', 'el último arco'),
    'fold-room': {
      title: 'Espacio para la capota plegada',
      how: 'Pliegue la estructura. Desde los arcos juntos hasta lo primero que tocarían.',
    },
  },
  mistakes: {
    'P1-S1': 'Marque primero cada arco: babor, medio, estribor. En todos, el mismo lado del tubo.',
    'P1-C1': 'Tensa por debajo del arco, recta de marca a marca. No siguiendo el tubo.',
    'crown-1': 'A escuadra con el hilo, sin seguir la inclinación del arco.',
    'h-P1': 'Desde una misma cubierta o piso para todos: eso da también la altura libre para estar de pie.',
    'P1-P2': 'Que nadie se apoye en la estructura mientras usted mide.',
    'P1-P3': 'Deje puesto este hilo: ahora se mide cuánto sobresale de él el arco del medio.',
  },
  heights: 'A escuadra con la cubierta o el piso donde está usted, el mismo para todos los arcos.',
  shots: {
    'photo-side': {
      title: 'La estructura desde un lado',
      how: 'Desde el muelle, todos los arcos y los soportes en una sola foto.',
    },
    'photo-ahead': {
      title: 'La estructura desde proa',
      how: 'Que se vean C1 y S1, con una cinta métrica o una tarjeta sobre el arco.',
    },
    'photo-aft': {
      title: 'La estructura desde popa',
      how: 'Que se vean C2 y S2, y con ellos las correas y sus argollas.',
    },
  },
  questions: {
    line: {
      title: '¿Hasta qué línea mide usted?',
      help: 'La misma en cada arco. Medir por dentro del tubo en vez de por fuera hace perder una pulgada.',
      choices: {
        'finished-edge': 'Marcas donde irá el borde de la lona',
        'tube-outside': 'Lado de afuera del tubo',
        'tube-centre': 'Centro del tubo',
      },
    },
    bows: {
      title: '¿Cuántos arcos llevan la lona?',
      help: 'Contados desde proa. Un arco que solo refuerza a los otros no cuenta.',
      choices: { two: 'Dos', three: 'Tres', four: 'Cuatro' },
    },
    straps: {
      title: '¿Qué correas la sujetan?',
      help: 'Cinta tejida con hebilla. Los puntales y los refuerzos no son correas.',
      choices: {
        four: 'Un par a proa y un par a popa',
        'forward-pair': 'Un par a proa',
        'aft-pair': 'Un par a popa',
        none: 'Ninguna',
      },
    },
    folds: {
      title: '¿Hacia dónde se pliega?',
      help: 'La lona plegada necesita lugar junto a los arcos.',
      choices: { aft: 'Hacia popa', forward: 'Hacia proa', 'stays-up': 'Queda siempre abierta' },
    },
    headroom: {
      title: '¿Está bien la altura como está la estructura?',
      help: 'Cuánto más alta o más baja, en sus palabras.',
      choices: { 'as-it-stands': 'Así está bien', higher: 'Más alta', lower: 'Más baja' },
    },
    sleeves: {
      title: '¿Cómo se sujeta la lona a los arcos?',
      help: 'Las fundas de tubo con cierre (cremallera) se quitan sin desarmar la estructura.',
      choices: {
        zipped: 'Fundas de tubo con cierre',
        'slid-on': 'Fundas de tubo enfiladas',
        'shop-decides': 'Decide el taller',
      },
    },
    hangs: {
      title: '¿Cuelgan de ella cortinas o paneles?',
      help: 'Tiran de sus bordes y necesitan ahí cierres (cremalleras) o rieles.',
      choices: { nothing: 'Nada', 'panels-now': 'Sí, ahora', 'panels-later': 'Quizás más adelante' },
    },
    'in-the-way': inTheWay,
    berth,
    tow,
    speed,
    cloth,
    bag: { ...bag, title: '¿Una bolsa para cubrirla plegada?' },
  },
  runs: {},
};
