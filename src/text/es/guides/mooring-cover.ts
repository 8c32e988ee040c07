import type { PieceWords, PointWords } from '../../en/guides/piece-words.ts';
import { bag, berth, cloth, cord, dockSide, fits, fitsFrom, inTheWay, line, rain, tow, vents } from './common.ts';

const sheer = (name: string): PointWords => ({ name, where: 'en el borde de afuera de la borda o del cintón' });
const holdsUp = {
  thing: 'Algo del barco',
  pole: 'Una vara de apoyo',
  nothing: 'Nada',
};

export const mooringCover: PieceWords = {
  about:
    'Siete puntos alrededor de la borda (regala), sus alturas y dónde se apoya la funda. Tómese su tiempo: es el barco entero.',
  points: {
    N: {
      name: 'punta de la proa',
      where: 'en lo más adelantado de la borda o del cintón, en la línea del centro',
    },
    P1: sheer('proa a babor, a un tercio del camino hacia el parabrisas'),
    P2: sheer('babor, justo a popa del parabrisas'),
    P3: sheer('esquina de babor del espejo de popa'),
    S3: sheer('esquina de estribor del espejo de popa'),
    S2: sheer('estribor, justo a popa del parabrisas'),
    S1: sheer('proa a estribor, frente a P1'),
    H: {
      name: 'lo más alto del medio del barco',
      where: 'en lo más alto del parabrisas, la consola o la vara, en la línea del centro',
    },
    E: { name: 'lo que la sostiene a popa', where: 'en su punto más alto, o en la punta de la vara' },
    F: { name: 'lo que la sostiene a proa', where: 'en su punto más alto, o en la punta de la vara' },
  },
  readings: {
    'over-foredeck': {
      title: 'Sobre la cubierta de proa, P1 a S1',
      how: 'Apoye la cinta sobre la cubierta, de P1 a S1, por encima de todo lo que la funda va a cubrir.',
    },
    skirt: {
      title: 'Cuánto cuelga la funda',
      how: 'Desde el borde de afuera de la regala (borda), hacia abajo por el casco, hasta donde debe quedar el dobladillo.',
    },
    'h-F': {
      title: 'Altura de F sobre el hilo N–H',
      how: 'Tienda un hilo bien tenso de N a H. Desde el hilo, a escuadra (en ángulo recto), hacia arriba hasta F (lo que la sostiene a proa).',
    },
    'edge-whole': {
      title: 'Borde entero, por la proa',
      how: 'Apoye la cinta a lo largo de la regala (borda), desde P3, por la proa, hasta S3.',
    },
    'straps-whole': {
      title: 'Borde de babor entero',
      how: 'Apoye la cinta a lo largo de la regala (borda), de N a P3.',
    },
  },
  mistakes: {
    'N-P1': 'Ponga primero una cruz de cinta adhesiva en los siete puntos, y enganche siempre en la misma cruz.',
    'N-P2': 'Recto y sin tocar el parabrisas, sin seguir la curva del costado.',
    'P2-S3': 'Es una diagonal: cruza la bañera (cockpit) hasta la otra esquina del espejo de popa.',
    'S2-P3': 'Es una diagonal: cruza la bañera (cockpit) hasta la otra esquina del espejo de popa.',
    'H-P3': 'Por el aire, recto. Una cinta apoyada en un asiento mide de más.',
    'over-foredeck': 'Por encima de escotillas y herrajes, como irá la lona.',
  },
  heights:
    'Recto hacia abajo, hasta un mismo nivel en los siete puntos: suelo a nivel bajo el remolque, o una línea pintada del barco. No hasta el agua: el barco se inclina con su peso.',
  shots: {
    'photo-bow': { title: 'La proa', how: 'Desde adelante: N, P1 y S1, y con ellos la baranda, el ancla y las luces.' },
    'photo-port': {
      title: 'Lado de babor',
      how: 'Que se vean P2 y P3, y todo lo que sobresale; una cinta métrica o una tarjeta junto a uno de los puntos.',
    },
    'photo-stern': {
      title: 'La popa',
      how: 'Desde atrás: P3, S3 y el motor como queda bajo la funda.',
    },
    'photo-starboard': {
      title: 'Lado de estribor',
      how: 'Que se vean S2 y S3, y todo lo que sobresale; una cinta métrica o una tarjeta junto a uno de los puntos.',
    },
  },
  questions: {
    line,
    berth,
    datum: {
      title: '¿Desde dónde mide las alturas?',
      help: 'Un mismo nivel para todas. A flote, una línea pintada en el barco; el agua no sirve de nivel.',
      choices: {
        ground: 'Suelo a nivel, barco en remolque o elevador',
        waterline: 'Una línea pintada a lo largo del barco',
      },
    },
    'aft-top': {
      title: '¿Qué la sostiene a popa de lo más alto?',
      help: 'Un motor, un asiento, un arco. Si es una vara, póngala parada donde irá, o un palo del mismo largo.',
      choices: holdsUp,
    },
    'fore-top': {
      title: '¿Qué la sostiene a proa?',
      help: 'Una escotilla, una baranda, un molinete. Si no hay nada, puede juntarse agua sobre la cubierta de proa.',
      choices: holdsUp,
    },
    tow,
    held: {
      title: '¿Qué sujeta el dobladillo (el borde de abajo)?',
      help: 'En carretera sujetan las correas; un cabo solo se afloja.',
      choices: {
        cord: 'Un cabo en el dobladillo',
        'cord-and-straps': 'Un cabo y correas',
        snaps: 'Sujetadores en el barco',
      },
    },
    rub: {
      title: '¿Dónde va a rozar?',
      help: 'Esquinas del parabrisas, cornamusas, bases de antena. Ahí el taller pone refuerzos.',
      choices: {
        nowhere: 'En ningún lado que se vea',
        windshield: 'En el parabrisas',
        corners: 'En las esquinas del casco',
        several: 'En varios lugares: diga dónde',
      },
    },
    'in-the-way': inTheWay,
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
      title: 'Sujetadores a lo largo de la regala (borda)',
      how: 'Desde P3, por la proa, hasta S3. Enganche una sola vez en P3 y lea cada sujetador, o mida de uno al siguiente.',
    },
    straps: {
      title: 'Correas',
      how: 'Desde N, por la regala (borda) de babor, hasta cada lugar donde baja una correa. A estribor van enfrente.',
    },
  },
};
