import type { PieceWords } from '../../en/guides/piece-words.ts';

type Words = PieceWords['questions'][string];

/** The questions of core/guide/pieces/make-questions.ts, the same for every piece that asks them. */
export const line: Words = {
  title: '¿Hasta qué línea mide usted?',
  help: 'La misma línea todo alrededor. Decir solo “el borde” lleva a errores. Sujetador es lo que sujeta la lona: un broche, un gancho, un ollao.',
  choices: {
    'fastener-line': 'Línea de los sujetadores',
    'finished-edge': 'Borde terminado de la lona',
    'boat-edge': 'Borde del barco',
  },
};

export const berth: Words = {
  title: '¿Dónde se guarda el barco?',
  help: 'Un barco amarrado en el agua necesita libres sus cornamusas (donde se atan los cabos).',
  choices: { water: 'En el agua', lift: 'En un elevador', trailer: 'En un remolque' },
};

export const dockSide: Words = {
  title: '¿Qué lado queda contra el muelle?',
  help: 'Por ese lado van las aberturas y las defensas.',
  choices: {
    port: 'Babor al muelle',
    starboard: 'Estribor al muelle',
    'bow-in': 'Proa al muelle',
    'stern-in': 'Popa al muelle',
    changes: 'Cambia',
  },
};

export const cord: Words = {
  title: '¿Por dónde sale del barco el cable de corriente del muelle?',
  help: 'La lona necesita una salida para el cable.',
  choices: {
    port: 'Por babor',
    starboard: 'Por estribor',
    aft: 'Por popa',
    forward: 'Por proa',
    'no-cord': 'No hay cable',
  },
};

export const fits: Words = {
  title: '¿Quién coloca la pieza?',
  help: 'Una persona sola necesita menos sujetadores y más fáciles.',
  choices: {
    'owner-alone': 'El dueño, sin ayuda',
    'owner-helped': 'El dueño, con ayuda',
    crew: 'Personal del astillero o la marina',
  },
};

export const fitsFrom: Words = {
  title: '¿Desde dónde se coloca la pieza?',
  help: 'Desde ahí se debe alcanzar cada sujetador, y al terminar debe quedar por dónde salir.',
  choices: {
    dock: 'Desde el muelle',
    inside: 'Desde adentro del barco',
    ground: 'Desde el agua o el suelo',
    both: 'Desde adentro y desde afuera',
  },
};

export const rain: Words = {
  title: 'Cuando llueve, ¿se deja puesta?',
  help: 'Una funda que se deja puesta necesita lona que respire y caída suficiente para que no se junte agua.',
  choices: { 'stays-on': 'Se deja puesta', 'taken-off': 'Se quita' },
};

export const speed: Words = {
  title: '¿Cuándo se usa?',
  help: 'La velocidad se suma al viento.',
  choices: { 'at-rest': 'Solo con el barco quieto', slow: 'Navegando despacio', faster: 'Más rápido que eso' },
};

export const tow: Words = {
  title: '¿Va puesta cuando se remolca el barco?',
  help: 'Al remolcar no puede haber nada suelto. Una funda que va puesta en el camino necesita correas, y protección donde roza.',
  choices: { never: 'Nunca', 'short-way': 'Un trecho corto, despacio', road: 'En carretera, a velocidad' },
};

export const wind: Words = {
  title: '¿Cuánto viento hay donde se usa?',
  help: 'Con viento, la lona tira de cada sujetador.',
  choices: { sheltered: 'Lugar protegido', breeze: 'Brisa normal', strong: 'A menudo viento fuerte' },
};

export const cloth: Words = {
  title: '¿Qué lona se quiere?',
  help: 'El color, y lo que ya se sepa de ella, en sus palabras.',
  choices: {
    breathable: 'Que respire',
    coated: 'Recubierta, impermeable',
    mesh: 'Malla',
    'clear-window': 'Con ventanas transparentes',
    'shop-decides': 'Decide el taller',
  },
};

export const vents: Words = {
  title: '¿Lleva respiraderos?',
  help: 'Una lona recubierta que se deja puesta bajo la lluvia necesita respiraderos.',
  choices: { wanted: 'Sí, con respiraderos', none: 'Sin respiraderos', 'shop-decides': 'Decide el taller' },
};

export const bag: Words = {
  title: '¿Una bolsa para guardar la lona?',
  help: 'Guardada mojada y con sal, cría moho.',
  choices: { wanted: 'Sí, con bolsa', none: 'Sin bolsa' },
};

export const inTheWay: Words = {
  title: '¿Hay algún obstáculo para la lona?',
  help: 'Cornamusas, barandas, luces, portacañas, antenas, limpiaparabrisas, respiraderos, escotillas.',
  choices: { nothing: 'Ninguno', listed: 'Sí: anótelos' },
};

export const cleats: Words = {
  title: '¿Cómo quedan las cornamusas?',
  help: 'Son las piezas donde se atan los cabos. La que sujeta el barco debe quedar libre.',
  choices: { outside: 'Fuera de la funda', 'cut-outs': 'Con recortes en la funda', 'under-cover': 'Bajo la funda' },
};
