import type * as english from '../en/owner.ts';

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** Before a sound of i, "y" is "e". */
const listed = (parts: readonly string[]): string => {
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} ${/^h?i/i.test(last) ? 'e' : 'y'} ${last}`;
};

export const owner: typeof english.owner = {
  home: {
    asks: (shop: string) => `${shop} le pide que mida.`,
    left: (minutes: number) => (minutes === 1 ? 'Falta cerca de 1 minuto.' : `Faltan unos ${minutes} minutos.`),
    stopping: 'Puede parar cuando quiera. Todo queda guardado en este teléfono, y al volver sigue en el mismo lugar.',
    allDone: 'Está todo.',
    again: (looks: number) => (looks === 1 ? 'Leer una medida una vez más' : `Leer ${looks} medidas una vez más`),
    start: 'Empezar',
    goOn: (what: string) => `Seguir: ${what}`,
    check: 'Ver qué falta resolver',
    send: 'Enviar al taller',
    lastSent: (when: string) => `Última copia: ${when}`,
    before: 'Antes de empezar',
    practice: 'Práctica de dos minutos',
    practised: 'hecha',
    marks: 'Sus marcas numeradas',
    steps: (piece: string) => `Todos los pasos: ${piece}`,
    more: 'Más sobre este trabajo',
    asked: (steps: number) =>
      steps === 1
        ? 'El taller le vuelve a preguntar por 1 paso.'
        : `El taller le vuelve a preguntar por ${steps} pasos.`,
  },
  before: {
    heading: 'Antes de empezar',
    page: (at: number, of: number) => `${at} de ${of}`,
    next: 'Siguiente',
    back: 'Atrás',
    toPractice: 'Probar antes con una hoja de papel',
    toWork: 'Empezar a medir',
    done: 'Listo',
    who: {
      title: 'Quién lo pide',
      shop: (shop: string) =>
        `${shop} va a hacer algo para su barco y necesita sus medidas. Aquí se le guía, un paso a la vez.`,
      nobody: 'Un taller va a hacer algo para su barco con sus medidas. Aquí se le guía, un paso a la vez.',
      reach: '¿Una duda? Comuníquese:',
      noContact: '¿Una duda? Llame o escriba al taller que le dio esto.',
      note: (note: string) => `Le escriben: “${note}”`,
    },
    need: {
      title: 'Qué necesita',
      things: [
        'Una cinta métrica tan larga como la parte del barco que va a medir. La mejor es de acero.',
        'Cinta adhesiva de papel (de enmascarar) y un bolígrafo, para las marcas numeradas.',
        'Este teléfono, cargado.',
        'Alguien que ayude en el otro extremo. También se puede sin ayuda: enganche la cinta en algo, o pegue la punta con cinta adhesiva y tire con suavidad.',
        'Un día tranquilo y seco, con el barco bien amarrado.',
      ],
      alt: 'Una cinta métrica, un pedazo de cinta adhesiva con el número 1 y una cruz, y un bolígrafo.',
    },
    time: {
      title: 'Cuánto tarda',
      about: (minutes: number) => `Cerca de ${count(minutes, 'minuto', 'minutos')}. Puede parar y volver después.`,
      how: (parts: string) => `Se calcula así: ${parts}. Es lo que suele tardar, no una promesa.`,
      readings: (n: number) => (n === 1 ? '1 medida a 2 minutos' : `${n} medidas a 2 minutos cada una`),
      shots: (n: number) => `${count(n, 'foto', 'fotos')} a 2`,
      questions: (n: number) => `${count(n, 'pregunta', 'preguntas')} a medio minuto`,
      runs: (n: number) => `${count(n, 'fila de sujetadores', 'filas de sujetadores')} a 5`,
      looks: (n: number) => `${count(n, 'medida', 'medidas')} una vez más a minuto y medio`,
      marks: '10 minutos para las marcas',
      and: listed,
    },
    careful: {
      title: 'Tenga cuidado',
      always: 'Nada vale una caída. Lo que no pueda alcanzar sin peligro, déjelo: “Sin valor” es una buena respuesta.',
      water: 'No se asome sobre el agua. Mida desde adentro del barco o desde el muelle.',
      noDrilling: 'Para esto no perfore ni atornille nada. Solo se mide.',
    },
    after: {
      title: 'Qué se hace con eso',
      use: 'El taller mira cada número y cada foto, y tal vez le vuelva a preguntar por algunos. Después corta la lona con ellos.',
      check:
        'La aplicación mira enseguida si sus números concuerdan entre sí. Si uno no concuerda, le pide que lo lea otra vez. Es normal y no es culpa suya.',
      privacy:
        'Su nombre, sus números y sus fotos quedan en este teléfono hasta que usted los envíe. Después los tiene el taller. Esta aplicación no se los da a nadie más.',
    },
  },
  practice: {
    heading: 'Práctica de dos minutos',
    intro:
      'Tome una hoja de papel de impresora. Su tamaño se conoce, así que verá enseguida qué tal van su cinta y su ojo.',
    which: '¿Qué papel tiene?',
    papers: { letter: 'Hoja carta, 8 1/2 × 11 in', a4: 'Hoja A4, 210 × 297 mm' },
    skip: 'Saltar la práctica',
    ask: { long: 'Mida el lado largo', short: 'Mida el lado corto', diagonal: 'Mida de esquina a esquina' },
    how: {
      long: 'Ponga la hoja bien plana. El gancho en un extremo; lea en el otro.',
      short: 'Ahora a lo ancho. El gancho en un extremo; lea en el otro.',
      diagonal: 'De una esquina a la opuesta, cruzando la hoja. La cinta, recta.',
    },
    drawing: {
      long: 'Una hoja de papel; la cinta va a lo largo de su lado largo.',
      short: 'Una hoja de papel; la cinta va a lo largo de su lado corto.',
      diagonal: 'Una hoja de papel; la cinta va de una esquina a la opuesta.',
    },
    next: 'Siguiente',
    place: (at: number, of: number) => `${at} de ${of}`,
    size: (length: string) => `La hoja mide ahí ${length}.`,
    yours: (length: string) => `Usted leyó ${length}.`,
    off: (length: string) => `La diferencia es de ${length}.`,
    good: 'Exacto.',
    close: (length: string) => `Bien: la diferencia no pasa de ${length}. Ni el papel es más exacto que eso.`,
    slips: {
      'started-at-one':
        'Parece que la medida empezó en el 1, o un poco más adelante en la cinta. Empiece en la punta misma, con el gancho.',
      'other-side': 'Ese es otro lado de la hoja. Mire por dónde va la línea naranja.',
      unit: 'Las cifras parecen correctas, pero en otra unidad. Mire la unidad al lado del número.',
      hook: 'Cerca, pero todavía no. Mire el gancho: debe estar justo en el borde, ni metido debajo ni colgando más allá.',
      far: 'Todavía no. Lo más común: el gancho estaba en otro lugar, el número se leyó desde el lado contrario, o la fracción se contó al revés.',
    },
    again: 'Leer otra vez',
    leave: 'Dejarlo así',
    done: 'Práctica hecha',
    spread: (length: string) => `La diferencia entre sus lecturas y la hoja no pasó de ${length}.`,
    asUsual:
      'Es tan bueno como lo de casi todo el mundo. Tres lecturas dicen poco, así que nada cambia: se confía en usted como en cualquiera que mide por primera vez.',
    wider:
      'Es algo más de lo común, así que la aplicación da un poco más de espacio a sus números. Tal vez le pida leer algunos dos veces. Eso es todo.',
    slipLeft:
      'Una de ellas no concuerda, y ahora ya sabe cómo se ve un error así. Le pasa a todo el mundo; donde la aplicación vea uno, le pide leer otra vez.',
    onceMore: 'Practicar otra vez',
    toWork: 'Empezar a medir',
    toHome: 'Al resumen',
  },
  again: {
    second: 'Una vez más',
    secondHow: [
      'Esa fue la primera vuelta. Ahora, lo importante una vez más; donde se pueda, desde el otro extremo.',
      'No porque lo haya hecho mal: todo el mundo lee mal una cinta de vez en cuando, y con dos lecturas se nota antes de cortar la lona.',
      'No se le muestra lo que leyó antes, para que cada lectura sea nueva. Lea la cinta como si fuera la primera vez.',
    ],
    third: 'Una última lectura',
    thirdHow: [
      'Ya casi. Donde dos lecturas no son del todo iguales, una tercera lo aclara.',
      'Le pasa a todo el mundo. Tómese su tiempo y lea la cinta como si fuera la primera vez.',
    ],
    left: (looks: number) =>
      looks === 1 ? 'Una medida. Lleva uno o dos minutos.' : `${looks} medidas, uno o dos minutos cada una.`,
    begin: 'Seguir',
    later: 'Más tarde',
    done: 'Leído una vez más',
    nothing: 'Todo lo importante se leyó una vez más. Gracias.',
    goOn: 'Seguir',
    otherEnd: 'Una vez más, desde el otro extremo.',
    fresh: 'Una vez más, como si fuera la primera.',
  },
  look: {
    where: 'Dónde',
    straight: (from: string, to: string) =>
      `Ponga el gancho de la cinta en ${from}. Estírela bien, en línea recta, hasta ${to}. Lea el número ahí.`,
    girth: (from: string, to: string) =>
      `Ponga el gancho en ${from}. Apoye la cinta sobre el borde, pasando por cada punto, hasta ${to}. Lea el número ahí.`,
    height: (spot: string) =>
      `Mida recto hacia arriba, a escuadra con la cubierta (en ángulo recto), hasta ${spot}. Empiece todas las alturas desde la misma línea: la cubierta, donde es plana, o un hilo tendido sobre ella.`,
    type: 'Ya lo tengo: escribir el número',
    run: 'Ya estoy ahí: seguir',
    camera: 'Todo listo: la cámara',
    again: 'Ver otra vez cómo se hace',
    hint: (text: string) => `Atención: ${text}`,
  },
  frame: {
    heading: 'Qué debe verse en la foto',
    alt: (labels: string) =>
      labels === ''
        ? 'El cuadro de una foto, con espacio todo alrededor y una hoja de papel al lado.'
        : `El cuadro de una foto: adentro, ${labels}, con espacio todo alrededor y una hoja de papel al lado.`,
    all: (labels: string) => `${labels} dentro del cuadro, con el ancho de una mano libre todo alrededor.`,
    plain: 'Todo dentro del cuadro, con el ancho de una mano libre todo alrededor.',
    paper:
      'Ponga una hoja de papel bien plana al lado de uno de ellos. Su tamaño se conoce, así que el taller puede calcular el resto.',
    light: 'El sol a su espalda. Sostenga el teléfono quieto y derecho.',
    numbers: 'Sus números deben poder leerse en la foto.',
    after: 'Después de tomar la foto, toque en ella el lugar de cada número.',
  },
  marks: {
    heading: 'Sus marcas numeradas',
    offer: 'Primero, una marca en cada punto',
    why: 'Un pedazo de cinta adhesiva con su nombre en cada punto: así cada medida empieza y termina en el mismo lugar exacto, y en sus fotos se ve cuál es cuál.',
    begin: 'Poner las marcas',
    skip: (step: string) => `Sin marcas, seguir con ${step}`,
    goOn: 'Seguir midiendo',
    how: 'Pegue un pedazo de cinta adhesiva en cada uno de estos puntos. Escriba en él su nombre y dibuje una cruz pequeña. La cruz es el punto: enganche ahí cada vez.',
    keep: 'Déjelas puestas hasta que el taller diga que lo tiene todo.',
    list: 'Señale cada una cuando esté pegada',
    where: (label: string) => `Dónde va ${label}`,
    stuck: (done: number, all: number) => `${done} de ${all} ${done === 1 ? 'pegada' : 'pegadas'}`,
    photo: 'Ahora, una foto de ellas',
    photoHow: 'Una foto o varias, de modo que se lea cada número. Después toque en la foto el lugar de cada número.',
    noPiece: 'Todavía no hay nada que medir.',
  },
};
