import type * as english from '../en/bench-engine.ts';
/** What the bench says of the shape as it was worked out, how sure it is, and what may be wrong. */
export const benchEngine: typeof english.benchEngine = {
  plan: {
    adjusted: 'Dibujado con la forma ajustada: es un dibujo, no un patrón de corte.',
    without: (names: string) =>
      `Dibujado con la forma ajustada sin contar ${names}, que no concuerda: es un dibujo, no un patrón de corte.`,
    bent: 'NO USAR: dibujado con una forma que tuercen lecturas que se contradicen, y nadie sabe cuál está mal.',
    ovals: (factor: number) =>
      factor === 1
        ? 'Los óvalos muestran qué tan seguro es cada punto (95 %), a escala.'
        : `Los óvalos muestran qué tan seguro es cada punto (95 %), dibujados ${factor} veces más grandes.`,
    floats: (labels: string) => `Línea discontinua, aún sin fijar: ${labels}.`,
  },
  sure: {
    again: 'Calculando de nuevo…',
    nothing: 'Todavía no hay nada medido.',
    solved: 'Calculado: las lecturas fijan cada punto.',
    open: (names: string) => `Calculado con lo que hay. Todavía pendiente: ${names}.`,
    floating: (count: number, labels: string) =>
      `Aún sin fijar: ${labels}. ${count === 1 ? 'Le falta' : 'A cada uno le falta'} otra medida con cinta.`,
    singular: (labels: string) =>
      `Sin fijar: ${labels}. Hay lecturas suficientes, pero van en direcciones que lo dejan moverse.`,
    ways: (label: string, ways: number) =>
      ways === 1 ? `${label} (en una dirección)` : `${label} (en ${ways} direcciones)`,
    shapes: (labels: string) =>
      `Dos formas concuerdan con estas lecturas: ${labels} podría estar de un lado o del otro.`,
    failed: 'No se pudo calcular la forma: las lecturas no concuerdan ni de lejos. Resuelva primero los impedimentos.',
    mirrored: 'Nada dice si la forma es esta o su imagen en espejo: el dibujo sigue la guía.',
    fits: 'Todo concuerda, dentro de lo que da una cinta.',
    doubted: 'Algo no concuerda: es más de lo que explica una cinta.',
    fitsWithout: (names: string) => `Sin contar ${names}, todo lo demás concuerda, dentro de lo que da una cinta.`,
    bent: 'Eso tuerce la forma, y nadie sabe qué lectura está mal: no se da ningún lugar ni ningún ± de ella hasta que se resuelva.',
    notUsed: 'no usar',
    cannotTell: 'No se puede saber si concuerda: no sobra ninguna lectura, así que ninguna comprueba a otra.',
    spare: (count: number) => (count === 1 ? '1 lectura de sobra' : `${count} lecturas de sobra`),
    least: (label: string, within: string) =>
      `El menos seguro: ${label}, con precisión de ${within} respecto de sus vecinos y marcas, 19 veces de 20.`,
    caption: (without: string) =>
      `Lugares de los puntos y qué tan seguros son${without === '' ? '' : `, calculados sin contar ${without}`}`,
    frame: (axes: readonly ('x' | 'y' | 'z')[]) =>
      `${axes.map((axis) => ({ x: 'x hacia proa', y: 'y hacia babor', z: 'z hacia arriba' })[axis]).join(', ')}, desde el origen propio de la guía.`,
    point: 'Punto',
    x: 'x',
    y: 'y',
    z: 'z',
    within: 'Precisión',
    floats: 'sin fijar',
    known: 'dado',
    unseen: (reading: string, size: string, shift: string) =>
      `Un error de hasta ${size} en ${reading} podría moverlo ${shift} sin que se note.`,
    unseenAny: (readings: string) => `Nada comprueba ${readings}: un error ahí lo movería sin que se note.`,
    unseenAll: (readings: string) =>
      `Nada comprueba ${readings}: un error ahí movería todos los puntos sin que se note.`,
    place: 'Lugar',
    numbers: 'Números de toda la pieza',
  },
  terms: {
    freedom: ['Lecturas de sobra', 'Lecturas además de las que fijan la forma (grados de libertad).'],
    unitError: [
      'Error unitario',
      'Cómo se comparan los desajustes con lo que deberían dar las cintas: 1 es lo esperado.',
    ],
    global: ['Prueba global', 'Si todos los desajustes juntos son más que casualidad.'],
    residual: ['Residuo', 'Lo que todas las lecturas juntas ponen aquí, menos lo que se leyó.'],
    redundancy: [
      'Redundancia',
      'La parte de un error aquí que se ve como desajuste aquí: 0 es que nada lo comprueba, 1 es que se ve entero.',
    ],
    standardised: ['Residuo estandarizado', 'El residuo medido en sus propias desviaciones estándar.'],
    smallest: ['Menor error que se ve', 'Un error de este tamaño se nota con la potencia indicada.'],
    estimate: ['Error estimado', 'Cuánto estaría desviada la lectura si solo ella estuviera mal.'],
    chords: ['Más que en línea recta', 'Una cinta a lo largo del borde solo puede dar más que las líneas rectas.'],
  } satisfies Record<string, [string, string]>,
  values: {
    passes: 'pasa',
    fails: 'no pasa',
    'cannot tell': 'no se puede saber',
    global: (verdict: string, alpha: string) => `${verdict} (falsa alarma ${alpha})`,
    standardised: (value: string, critical: string) => `${value}; dudoso desde ${critical}`,
    smallest: (size: string, power: string, alpha: string) =>
      `${size}; potencia ${power}, falsa alarma ${alpha} para todo el trabajo`,
    share: (share: number) => `${Number((share * 100).toPrecision(2))} %`,
    none: 'no se puede decir: nada lo comprueba',
    withIt: 'Calculado con esta lectura incluida. Las otras lecturas se calculan sin ella.',
    bent: 'De una forma que no concuerda: sirve para buscar la lectura que está mal, nunca para cortar.',
    withoutIt: (names: string) => `Calculado sin contar ${names}.`,
  },
  readings: {
    adjusted: (by: string) => `ajustada ${by}`,
    wouldFit: (value: string) => `${value} concordaría`,
    control: {
      checked: 'comprobada',
      'weakly checked': 'poco comprobada',
      unchecked: 'nada la comprueba',
    },
    twice: 'leída dos veces, concuerda',
    oneSided: 'comprobada de un solo lado',
    unused: 'no se usa para la forma',
    numbers: 'Números',
  },
  slips: {
    verdicts: {
      named: 'Una explicación está muy por delante de las demás.',
      tied: 'Las lecturas solas no deciden cuál de estas es; la más creíble va primero.',
      unlocated: 'Algo no concuerda, y ningún error conocido lo explica por sí solo.',
    },
    promise: 'No se cambió ninguna lectura, y en el muelle no se dice qué concordaría.',
    exchanged: ([one = '', other = '']: readonly string[], lines: readonly string[]) =>
      `Todo concordaría como si ${one} y ${other} estuvieran intercambiados: ${lines.join(', o ')}. Ningún otro intercambio de dos puntos lo explicaría; otro error, quizá sí.`,
    exchangedOn: (one: string, other: string) => `${one} anotada como ${other} y al revés`,
    fits: (name: string, about: boolean, value: string, kind: string) =>
      `${name}: concordaría ${about ? 'más o menos ' : ''}${value}, ${kind}`,
    belongs: (points: string) => `lo leído concuerda con ${points}`,
    read: (text: string) => `En la cinta se leyó ${text}.`,
    notAgain: 'No se leyó de nuevo',
    differ: 'Se leyó de nuevo, y las tomas son distintas',
    use: (value: string, name: string) => `Contar ${name} como ${value}`,
    useAsk: (value: string, name: string) =>
      `Nadie lo ha medido de nuevo. Lo leído se conserva; la forma, los dibujos y las comprobaciones usan ${value} para ${name} hasta que alguien lo mida.`,
    useSure: 'Sí, contarlo así',
    readTwice: 'Se leyó de nuevo, y las tomas concuerdan',
    beliefs: (chance: number) =>
      chance >= 0.95
        ? 'Casi seguro'
        : chance >= 0.7
          ? 'Lo más probable'
          : chance >= 0.3
            ? 'Bastante posible'
            : chance >= 0.05
              ? 'Posible'
              : 'Poco probable',
    percent: (chance: number) =>
      chance > 0.995 ? 'más de 99 %' : chance < 0.01 ? 'menos de 1 %' : `${Math.round(chance * 100)} %`,
    more: (count: number) => (count === 1 ? 'y 1 más, menos probable' : `y ${count} más, menos probables`),
    go: (name: string) => `Ir a ${name}`,
    ask: (names: string) => `Volver a pedir: ${names}`,
    asked: (names: string) => `Ya se volvió a pedir, sigue pendiente: ${names}.`,
    decide: 'Una medida que nadie ha tomado todavía lo decide:',
    predicted: (value: string, explanation: string) => `${value} si ${explanation}`,
    shape: (number: number) => `es la forma ${number}`,
  },
  tapes: {
    loose: (labels: string) => (labels.includes(',') ? `${labels} siguen sin fijar.` : `${labels} sigue sin fijar.`),
    unchecked: (names: string) => `Nada comprueba esto: ${names}.`,
    wide: 'Algunos puntos son menos seguros de lo que la pieza necesita.',
    clears: 'Con estas la pieza quedaría fijada, precisa y comprobada:',
    helps: 'Estas ayudarían más, aunque no del todo:',
    none: 'Ninguna otra medida entre estos puntos ayuda. Una segunda lectura sí.',
    second: (names: string) => `Pedir una segunda lectura: ${names}`,
    about: (name: string, length: string) => `${name}, más o menos ${length}`,
    ask: (names: string) => `Pedir: ${names}`,
    asked: 'ya se pidió, sigue pendiente',
    before: (reason: string) => `Se dijo antes: no se pudo medir (${reason}).`,
  },
};
