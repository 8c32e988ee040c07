import type { PointRole, ReadingKind, Side } from '../../core/job/index.ts';
import type * as english from '../en/walk.ts';

/** "P1 y P2"; before a sound of i it is "e". */
const listed = (parts: readonly string[]): string => {
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} ${/^h?i/i.test(last) ? 'e' : 'y'} ${last}`;
};

/** What a person changes about a piece while it is measured, and tables for serial work. */
export const walk: typeof english.walk = {
  again: {
    please: 'Por favor, mire otra vez la cinta y escriba lo que dice.',
    nothingToDo: (names: readonly string[]) => `${listed(names)}: aquí no hay nada que hacer.`,
    pleaseAt: (names: readonly string[]) =>
      `${listed(names)}: por favor, mire otra vez la cinta y escriba lo que dice.`,
    firstAt: (names: readonly string[]) => `${listed(names)}: por favor, mídala y escriba lo que dice la cinta.`,
    swapped: (point: string) =>
      `Varias de estas son en ${point}. Mire primero si su marca y otra están cambiadas de lugar.`,
    onceMore: (names: readonly string[]) => `${names[0] ?? ''}: léala una vez más, por favor.`,
    toShop: (names: readonly string[]) =>
      `${names[0] ?? ''}: las lecturas no coinciden. El taller le preguntará por ella.`,
    left: (looks: number) => (looks === 1 ? 'la última' : `faltan ${looks}`),
    heading: 'Para leer una vez más',
    due: (looks: number) =>
      looks === 1
        ? 'Falta leer una medida una vez más. Puede enviar sin eso; el taller lo ve y tal vez le pregunte.'
        : `Falta leer ${looks} medidas una vez más. Puede enviar sin eso; el taller lo ve y tal vez le pregunte.`,
    begin: 'Leerlas una vez más',
    sendAll: (looks: number) =>
      looks === 1
        ? 'Falta leer una medida una vez más. De todos modos puede enviarlo; el taller lo ve.'
        : `Falta leer ${looks} medidas una vez más. De todos modos puede enviarlo; el taller lo ve.`,
  },
  takenBack: {
    said: (what: string) => `Deshecho: ${what}`,
    last: 'lo último que hizo',
    reading: (name: string, value: string) => (value === '' ? name : `${name}, ${value}`),
    asked: (name: string) => `pedir ${name}`,
    noValue: (name: string) => `${name}, sin valor`,
    strike: (name: string) => `${name}, tachado`,
    answer: (title: string, choice: string) => (choice === '' ? title : `${title} ${choice}`),
    photo: 'la foto',
    mark: (label: string) => `${label} en la foto`,
    line: 'la línea en la foto',
    noPhoto: (title: string) => `${title}, sin foto`,
    edge: (title: string) => `${title}, su última respuesta`,
    fastener: (title: string) => `${title}, el último broche`,
    pointOff: (label: string) => `quitar ${label}`,
    accepted: 'que está bien así',
  },
  table: {
    heading: 'Tablas',
    help: 'La cinta se engancha una vez y se leen muchos puntos: una columna entera de corrido.',
    wholeColumn: 'Leer toda la columna',
    onlyThis: 'Solo esta',
    marks: (labels: readonly string[]) => `Medidas desde ${listed(labels)}`,
    stations: (labels: readonly string[]) =>
      labels.length === 2 ? `A lo largo del hilo ${labels.join('–')}` : `Sobre el plano ${labels.join(', ')}`,
    gaps: (from: string, to: string) => `Espacios de ${from} a ${to}`,
    running: (from: string, to: string) => `Todo desde ${from}, hasta ${to}`,
    progress: (done: number, all: number) => `${done} de ${all}`,
    point: 'Punto',
    columns: {
      gap: 'Espacio antes',
      along: 'A lo largo',
      out: 'A escuadra',
      height: 'Altura',
      girth: 'Contorno',
      running: (from: string) => `Desde ${from}`,
    },
    toward: (column: string, side: string) => `${column} hacia ${side}`,
    ways: { down: 'leída hacia abajo', up: 'leída hacia arriba' },
    cell: {
      open: 'pendiente',
      reading: 'leyéndose',
      again: 'leer otra vez',
      'none-here': 'aquí no hay',
      'could-not': 'no se pudo',
      stop: 'Impedimento',
      doubt: 'Revisar',
      moved: 'antes de mover la marca',
      nothing: 'no se pide',
    },
    gone: 'Esta tabla ya no está en el trabajo.',
  },
  moved: {
    before: (mark: string) =>
      `Se leyó antes de que ${mark} se moviera. Queda como se leyó; ahí ya nadie puede leer otra vez.`,
    readBefore: (mark: string) => `leído antes de que ${mark} se moviera`,
    fromNew: (mark: string) => `Pedirlo desde ${mark}`,
    stands: (old: string, now: string) => `${old} se movió; en su lugar está ${now}.`,
  },
  change: {
    heading: 'Cambiar la pieza',
    nothingAsked: 'Todavía no se pide nada. Empiece por los puntos y siga con lo que se va a leer entre ellos.',
    points: 'Cambiar los puntos',
    reading: 'Agregar una lectura',
    edge: 'Agregar un borde',
    picture: 'Agregar una foto',
    aside: 'Guardado aparte, no perdido',
    asideNone: (count: number) =>
      count === 1
        ? 'Una lectura que nadie había tomado ya no se pide.'
        : `${count} lecturas que nadie había tomado ya no se piden.`,
    why: (reason: string, who: string, when: string) => `${reason} (${who}, ${when})`,
    noGuide: (piece: string) =>
      `No hay guía para “${piece}”: nadie le pide las fotos, los sujetadores ni las respuestas que deje fuera.`,
  },
  points: {
    heading: 'Puntos',
    marks: 'Marcas',
    others: 'Otros puntos',
    change: (label: string) => `Cambiar ${label}`,
    after: (label: string) => `Agregar un punto después de ${label}`,
    earlier: 'Un lugar antes',
    later: 'Un lugar después',
    takeOff: (label: string) => `Quitar ${label}`,
    wasMoved: (label: string) => `${label} se movió`,
    movedAsk: (label: string, next: string) =>
      `Lo que se leyó en ${label} queda. Lo pendiente se pide desde una marca nueva: ${next}. Escríbale ${next}.`,
    movedSure: 'Sí, se movió',
    takeOffWhy: (label: string, count: number) =>
      `¿Por qué se quita ${label}? ${
        count === 1
          ? 'Una lectura de ese punto se guarda aparte, no se pierde.'
          : `${count} lecturas de ese punto se guardan aparte, no se pierden.`
      }`,
    takeOffReasons: ['Este barco no tiene ese punto', 'La pieza no lo necesita', 'Se agregó por error'],
    mustStay: 'Un borde necesita dos puntos, así que este se queda.',
    reasons: {
      divided: 'Hay otro punto entre medio',
      order: 'Los puntos están en otro orden',
      moved: 'La marca se movió',
      off: 'Se quitó antes de leer algo ahí',
    },
    said: {
      added: (label: string, asked: number) =>
        asked === 0
          ? `Se agregó ${label}.`
          : asked === 1
            ? `Se agregó ${label}. Falta 1 medida más.`
            : `Se agregó ${label}. Faltan ${asked} medidas más.`,
      off: (label: string) => `Se quitó ${label}.`,
      ordered: (labels: string) => `El borde va ahora por ${labels}.`,
      moved: (label: string, now: string, to: readonly string[]) =>
        to.length === 0
          ? `${now} reemplaza a ${label}.`
          : `${now} reemplaza a ${label}. Mida primero desde ${now} hasta ${listed(to)}.`,
    },
    firstTape: 'Ir a la primera',
    own: 'Agregar un punto propio',
    role: '¿Qué clase de punto?',
    roles: {
      mark: 'Una marca desde donde medir',
      corner: 'Una esquina de la lona',
      edge: 'Un punto de un borde',
      fastener: 'Un sujetador',
      mount: 'Un soporte o una argolla',
      obstruction: 'Un obstáculo',
    } satisfies Record<PointRole, string>,
    label: 'Nombre corto',
    taken: 'Otro punto tiene ese nombre.',
    note: 'Qué es, y desde dónde exactamente',
    sides: '¿Dónde está? Eso distingue una forma de la misma vista en un espejo.',
    sideNames: {
      port: 'Babor',
      starboard: 'Estribor',
      centre: 'Crujía (centro)',
      forward: 'Proa',
      aft: 'Popa',
      above: 'Arriba',
      below: 'Abajo',
    } satisfies Record<Side, string>,
    add: 'Agregarlo',
  },
  own: {
    kind: '¿Qué se lee?',
    kinds: {
      straight: 'Recta, entre dos puntos',
      height: 'Altura sobre un hilo o un plano',
      along: 'A lo largo de un hilo',
      out: 'A escuadra (en ángulo recto) desde un hilo',
      girth: 'Contorno, con la cinta apoyada en la superficie',
      size: 'Un tamaño simple',
    } satisfies Partial<Record<ReadingKind, string>>,
    from: 'Enganchar en',
    to: 'Leer en',
    at: '¿De qué punto?',
    stringFrom: 'Hilo desde',
    stringTo: 'Hilo hasta',
    noString: 'Sobre el plano desde el que se toman todas las alturas',
    toward: '¿Hacia qué lado?',
    of: '¿Qué tamaño?',
    anywhere: 'De la pieza misma',
    what: 'De qué, en pocas palabras',
    ask: 'Leerla ahora',
    tooFew: 'Agregue primero dos puntos.',
    edgePoints: 'Toque sus puntos en orden, de un extremo al otro.',
    edgeName: 'Nombre del borde',
    picturePoints: 'Toque los puntos que se van a marcar en ella.',
    pictureName: 'Qué muestra',
    takePicture: 'Tomarla ahora',
    nth: (label: string, place: number) => `${label}, número ${place}`,
  },
  free: {
    about: 'Una pieza sin guía: puntos, lecturas, bordes y fotos que usted decide.',
    name: '¿Cómo se llama?',
    flat: '¿Es plana?',
    flats: { yes: 'Sí, en un solo plano', no: 'No, se levanta o se curva' },
    begin: 'Empezar',
  },
  shared: {
    question: (piece: string) => `¿Algunos de sus puntos ya están en el barco, por ${piece}?`,
    help: 'Una marca que sirve a dos piezas se pone una sola vez, y lo que se lee entre dos de ellas vale para ambas.',
    none: 'No, todos son nuevos',
    some: 'Sí, algunos son los mismos',
    fresh: 'uno nuevo',
    more: 'Más puntos',
    begin: 'Empezar',
    option: (label: string, what: string) => (what === '' ? label : `${label}, ${what}`),
  },
};
