import type { PieceWords, PointWords } from '../../en/guides/piece-words.ts';
import { bag, fits, fitsFrom, inTheWay, line, speed } from './common.ts';
import { bow, exhaust, split } from './panel.ts';

const onLine = (name: string): PointWords => ({ name, where: 'en la línea que eligió' });

export const enclosurePanel: PieceWords = {
  about:
    'Un panel de un cerramiento. Las letras van como se ve desde afuera. Cuatro esquinas, las dos diagonales y después cómo se curva cada borde.',
  seen: 'visto desde afuera',
  points: {
    A: onLine('esquina de arriba, izquierda'),
    B: onLine('esquina de arriba, derecha'),
    C: onLine('esquina de abajo, derecha'),
    D: onLine('esquina de abajo, izquierda'),
    E: onLine('medio del borde de arriba'),
    F: onLine('medio del borde derecho, o su esquina'),
    G: onLine('medio del borde de abajo, o su esquina'),
    H: onLine('medio del borde izquierdo, o su esquina'),
    X1: onLine('división izquierda, o la única, arriba'),
    X2: onLine('división izquierda, o la única, abajo'),
    Y1: onLine('división derecha, arriba'),
    Y2: onLine('división derecha, abajo'),
  },
  readings: {
    'level-left': {
      title: 'Línea de nivel, izquierda',
      how: 'Desde A, hacia abajo por el borde izquierdo, hasta la línea de nivel.',
    },
    'level-right': {
      title: 'Línea de nivel, derecha',
      how: 'Desde B, hacia abajo por el borde derecho, hasta la línea de nivel.',
    },
    'window-margin': {
      title: 'Lona alrededor de la ventana',
      how: 'Desde el borde del panel, hacia adentro, hasta donde empieza la ventana transparente.',
    },
    'overlap-width': { title: 'Traslape', how: 'Cuánto se monta un panel sobre el otro.' },
    'top-whole': { title: 'Borde de arriba entero', how: 'Apoye la cinta a lo largo del borde de arriba, de A a B.' },
    'round-whole': {
      title: 'Lados y borde de abajo, enteros',
      how: 'Apoye la cinta desde A hacia abajo, a lo largo del borde de abajo y hacia arriba hasta B.',
    },
  },
  mistakes: {
    'A-B':
      'Ponga primero una cruz de cinta adhesiva en cada esquina. Desde adentro, izquierda y derecha se cambian; las letras no.',
    'A-C': 'Es una diagonal: de arriba a la izquierda hasta abajo a la derecha, visto desde afuera.',
    'B-D': 'Es una diagonal: de arriba a la derecha hasta abajo a la izquierda, visto desde afuera.',
    'level-left':
      'A flote, el barco se inclina con su peso: tome la línea de una parte del barco, no de un nivel de burbuja.',
    'round-whole': 'Sobre el borde, doblando en las dos esquinas. No en línea recta.',
  },
  heights: 'A escuadra con el hilo (en ángulo recto).',
  shots: {
    'photo-upper': {
      title: 'Esquinas de arriba',
      how: 'Que se vean A y B, y el riel o los sujetadores; una cinta métrica o una tarjeta junto a uno de los puntos.',
    },
    'photo-lower': {
      title: 'Esquinas de abajo',
      how: 'Que se vean C y D, y dónde se apoya la lona; una cinta métrica o una tarjeta junto a uno de los puntos.',
    },
    'photo-whole': {
      title: 'Toda la abertura',
      how: 'Desde afuera, bien de frente: las cuatro esquinas y los paneles de al lado.',
    },
  },
  questions: {
    panel: {
      title: '¿Qué panel es?',
      help: 'Un panel por vez; el siguiente se agrega después.',
      choices: { port: 'Lado de babor', starboard: 'Lado de estribor', front: 'El de adelante', aft: 'El de popa' },
    },
    exhaust,
    line,
    'measured-from': {
      title: '¿Desde dónde mide?',
      help: 'Las letras van como se ve desde afuera, esté usted donde esté.',
      choices: { outside: 'Desde afuera', inside: 'Desde adentro' },
    },
    'top-edge': bow('El borde de arriba', 'A a B', 'Por encima del hilo', 'Por debajo del hilo'),
    'right-edge': bow('El borde derecho', 'B a C', 'Por fuera del hilo', 'Por dentro del hilo'),
    'bottom-edge': bow('El borde de abajo', 'D a C', 'Por debajo del hilo', 'Por encima del hilo'),
    'left-edge': bow('El borde izquierdo', 'A a D', 'Por fuera del hilo', 'Por dentro del hilo'),
    level: {
      title: '¿Se quiere una línea de nivel?',
      help: 'Una ventana torcida se ve desde lejos. A flote, tome la línea del barco: techo rígido, baranda o cubierta.',
      choices: {
        'boat-line': 'Sí, según una línea del barco',
        'spirit-level': 'Sí, con nivel de burbuja, en tierra',
        'not-needed': 'No hace falta',
      },
    },
    split,
    window: {
      title: '¿Cómo es la ventana?',
      help: 'Quien lleva el timón debe ver hacia afuera, y las luces deben verse.',
      choices: {
        whole: 'Transparente de borde a borde',
        framed: 'Transparente, con lona alrededor',
        'no-window': 'Sin ventana',
      },
    },
    overlap: {
      title: '¿Y el panel siguiente?',
      help: 'El de adelante se monta sobre el de atrás, para que la lluvia y las salpicaduras escurran.',
      choices: {
        'over-neighbour': 'Este va encima',
        'under-neighbour': 'Este va debajo',
        none: 'Se unen con un cierre, o no hay otro',
      },
    },
    trim: {
      title: '¿Cómo se corta?',
      help: 'Los paneles cortados más grandes se recortan en una visita de prueba.',
      choices: {
        'cut-to-size': 'A la medida',
        oversize: 'Más grande, se recorta a bordo',
        'shop-decides': 'Decide el taller',
      },
    },
    ventilation: {
      title: '¿Por dónde entra aire con todo cerrado?',
      help: 'Un cerramiento cerrado con gente adentro necesita aire, siempre.',
      choices: { opens: 'Este panel se abre', elsewhere: 'Por otro panel', none: 'Todavía por ningún lado' },
    },
    'in-the-way': inTheWay,
    speed,
    fits,
    'fits-from': fitsFrom,
    bag,
  },
  runs: {
    top: {
      title: 'Borde de arriba: riel, cierre o sujetadores',
      how: 'De A a B. Diga dónde termina un riel o un cierre (cremallera) y hacia dónde tira.',
    },
    round: {
      title: 'Lados y borde de abajo: cierres y sujetadores',
      how: 'Desde A hacia abajo, a lo largo del borde de abajo y hacia arriba hasta B. Cada lado y el borde de abajo pueden cerrar de otra manera.',
    },
  },
};
