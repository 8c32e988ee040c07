import type * as english from '../en/lessons.ts';

export const lessons: typeof english.lessons = {
  heading: 'Cómo poner la cinta',
  right: 'Así sí',
  wrong: 'Así no',
  pairs: {
    taut: {
      right: 'Bien estirada, en el aire',
      rightAlt: 'La cinta va en una sola línea recta entre las dos marcas.',
      wrong: 'Colgando: el número sale demasiado largo',
      wrongAlt: 'La cinta cuelga entre las dos marcas.',
    },
    mark: {
      right: 'El gancho en la cruz que dibujó en su marca',
      rightAlt: 'La punta de la cinta está en la cruz dibujada en el pedazo de cinta adhesiva.',
      wrong: 'El gancho en el borde de la marca',
      wrongAlt: 'La punta de la cinta está en el borde de afuera del pedazo de cinta adhesiva, lejos de la cruz.',
    },
    centre: {
      right: 'Hasta el centro de la argolla o del tubo',
      rightAlt: 'La cinta termina en el centro de una pieza redonda.',
      wrong: 'Hasta su lado de afuera',
      wrongAlt: 'La cinta termina en el lado de afuera de la pieza redonda.',
    },
    square: {
      right: 'A escuadra con el hilo, como la esquina de una hoja de papel',
      rightAlt: 'La cinta forma una esquina recta con el hilo.',
      wrong: 'Inclinada: el número sale demasiado largo',
      wrongAlt: 'La cinta sale inclinada desde el hilo.',
    },
    surface: {
      right: 'Apoyada en el borde todo el camino, siguiendo cada curva',
      rightAlt: 'La cinta sigue el borde curvo y lo toca en todas partes.',
      wrong: 'Recta, sin seguir la curva: demasiado corto',
      wrongAlt: 'La cinta salta de un extremo de la curva al otro.',
    },
    'one-end': {
      right: 'El gancho queda al comienzo. Lea uno tras otro',
      rightAlt: 'Una sola cinta va desde la primera marca y pasa por todas las demás.',
      wrong: 'Enganchada de nuevo cada vez: los errores pequeños se suman',
      wrongAlt: 'Varios tramos cortos de cinta, uno tras otro.',
    },
    free: {
      right: 'Nada estorba a la cinta',
      rightAlt: 'La cinta pasa al lado de un poste sin tocarlo.',
      wrong: 'Doblada alrededor de algo: demasiado largo',
      wrongAlt: 'La cinta se dobla alrededor de un poste que estorba.',
    },
    zero: {
      right: 'Empiece en la punta misma: el gancho',
      rightAlt: 'El gancho de la punta de la cinta está en el borde de la hoja.',
      wrong: 'Empezar en el 1',
      wrongAlt: 'La marca 1 de la cinta está en el borde de la hoja y el gancho sobresale.',
    },
    across: {
      right: 'Recta de lado a lado, por lo más corto',
      rightAlt: 'La cinta cruza la pieza en ángulo recto.',
      wrong: 'Torcida: demasiado largo',
      wrongAlt: 'La cinta cruza la pieza torcida.',
    },
    lean: {
      right: 'El teléfono o el medidor, apoyado a lo largo de la vara',
      rightAlt: 'Un medidor de inclinación está bien apoyado a lo largo de una vara inclinada.',
      wrong: 'Tocando solo con una esquina',
      wrongAlt: 'El medidor está separado de la vara y la toca solo con una esquina.',
    },
  },
  sides: {
    heading: 'Qué lado es cuál',
    facing: 'Si usted está a bordo y mira hacia la proa (adelante):',
    port: 'Babor queda a su izquierda.',
    starboard: 'Estribor queda a su derecha.',
    here: (labels: string, side: string) => `${labels}: ${side}.`,
    portSide: 'lado de babor, a su izquierda',
    starboardSide: 'lado de estribor, a su derecha',
    boatAlt: 'El barco visto desde arriba, con la proa arriba: babor a la izquierda, estribor a la derecha.',
  },
};
