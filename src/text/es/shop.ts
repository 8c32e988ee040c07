import type { ShopFault, ShopField } from '../../core/check/shop-fields.ts';
import type { ShopFileRefusal } from '../../core/packet/index.ts';
import type * as english from '../en/shop.ts';

interface FieldWords {
  name: string;
  help?: string;
}

export const shop: typeof english.shop = {
  title: 'Ajustes del taller',
  about:
    'Lo que su taller considera usual. Cada trabajo nuevo lo lleva consigo, para que el muelle, el dueño y el taller juzguen igual. Los trabajos que ya existen conservan los ajustes con que empezaron; el taller puede poner uno al día.',
  cannotRead: 'No se pueden leer los ajustes de este dispositivo.',
  notSaved: 'No se pudo guardar en el dispositivo. Lo que estaba guardado sigue ahí.',
  name: 'Nombre del taller',
  nameHelp: 'Aparece junto a los límites en cada trabajo nuevo.',
  units: 'Unidades para trabajos nuevos',
  groups: {
    need: {
      title: 'Qué precisión hace falta',
      help: 'Lo que la lona necesita. Un punto menos seguro que esto impide irse.',
    },
    fasteners: { title: 'Sujetadores', help: 'Fuera de esto, la app pregunta si el barco es así.' },
    tapes: {
      title: 'Qué tan bien miden sus cintas',
      help: 'Lea un mismo largo veinte veces: ¿cuánto se desvían, como mucho, diecinueve de las lecturas? Con un número mayor, el error debe ser mayor para que se pida leer de nuevo.',
    },
    cloth: { title: 'Lona', help: 'Se suma a lo medido y se guarda por separado.' },
  },
  fields: {
    line: { name: 'Bordes, sujetadores y rieles, con precisión de' },
    corner: { name: 'Esquinas con cabo, con precisión de' },
    owner: {
      name: 'Donde midió un dueño, veces',
      help: 'Se supone que las lecturas de un dueño se desvían tantas veces más, y a la pieza se le permite lo mismo.',
    },
    'gap-min': { name: 'De un sujetador al siguiente, por lo menos' },
    'gap-max': { name: 'De un sujetador al siguiente, como máximo' },
    end: { name: 'Primer y último sujetador desde el extremo, como máximo' },
    sides: {
      name: 'Babor y estribor iguales, con diferencia de hasta',
      help: 'Si es más, la diferencia se anota. No detiene a nadie.',
    },
    'tape-short': { name: 'Cinta tensa, tramo corto' },
    'tape-long': { name: 'Cinta tensa, más de 10 ft (3 m)' },
    'girth-short': { name: 'Cinta apoyada en la superficie, corta' },
    'girth-long': { name: 'Cinta apoyada en la superficie, 10 ft (3 m)' },
    'offset-short': { name: 'Altura o distancia a escuadra desde un hilo, corta' },
    'offset-long': { name: 'Altura o distancia a escuadra desde un hilo, 10 ft (3 m)' },
    hem: { name: 'Ancho del dobladillo' },
    hollow: { name: 'Cuánto entra la curva del borde de un toldo, por ciento de su largo' },
    trim: { name: 'Lo que se deja para recortar en la prueba' },
  } satisfies Record<ShopField, FieldWords> as Record<ShopField, FieldWords>,
  default: (value: string) => `De fábrica: ${value}`,
  back: 'Volver al de fábrica',
  backTo: (name: string) => `Volver al valor de fábrica: ${name}`,
  both: (inches: string, millimetres: string) => `${inches} (${millimetres})`,
  nearly: (inches: string, millimetres: string) => `más o menos ${inches} (${millimetres})`,
  share: (percent: string) => `${percent} %`,
  times: (factor: string) => (factor === '1' ? '1 vez' : `${factor} veces`),
  notANumber: 'Eso no es un número.',
  faults: {
    'out-of-range': (from: string, to: string) => `Debe estar entre ${from} y ${to}. No se cambió nada.`,
    'min-above-max': () => 'El espacio mínimo sería mayor que el máximo. No se cambió nada.',
    'long-below-short': () => 'Un tramo largo no puede ser más seguro que uno corto. No se cambió nada.',
  } satisfies Record<ShopFault, (from: string, to: string) => string>,
  templates: {
    title: 'Sus propias piezas',
    none: 'Todavía ninguna. Una pieza ya medida se puede guardar como plantilla, en su trabajo.',
    what: (kind: string, steps: number) => `${kind}, ${steps === 1 ? '1 paso' : `${steps} pasos`}`,
    remove: 'Quitar',
    removeOf: (name: string) => `Quitar ${name}`,
    removeAsk: (name: string) =>
      `¿Quitar “${name}” de este dispositivo? Los trabajos que la usaron conservan sus piezas.`,
    removeSure: 'Sí, quitarla',
    unread: (count: number) =>
      count === 1
        ? 'Una plantilla la hizo otra versión y no se puede leer aquí. Se conserva como está.'
        : `${count} plantillas las hizo otra versión y no se pueden leer aquí. Se conservan como están.`,
    keep: 'Guardar esta pieza como plantilla',
    keepHelp: 'Se guarda lo que pide, con un nombre. Nada de lo medido, fotografiado o respondido, y ninguna persona.',
    keepName: 'Nombre de la plantilla',
    keepNow: 'Guardarla',
    kept: (name: string) => `Guardada como “${name}”. Aparece en “¿Qué se va a hacer?”.`,
    taken: (name: string) => `Ya hay una plantilla “${name}”. Póngale otro nombre.`,
    yours: 'Sus propias piezas',
  },
  paper: {
    sheets: 'Hojas en blanco, en papel',
    sheetsHelp: 'Para un día sin teléfono: todos los pasos en el orden del recorrido, con líneas para escribir.',
    sheet: 'Hoja en blanco, en papel',
    noGuide: 'No hay una guía así.',
    noPiece: 'Esta pieza no está en el trabajo.',
    how: 'Se imprime en A4 y en carta. Al pasarla después a la app, los pasos tienen el mismo orden y los mismos números.',
    print: 'Imprimir',
    typeIn: 'Pasarla a la app: todos los pasos y tablas',
    making: 'Preparando la hoja…',
    page: (page: number, of: number) => `Página ${page} de ${of}`,
    foot: 'Escriba lo que dice la cinta. Un valor que estaba mal se tacha; nunca se escribe encima.',
    job: 'Trabajo',
    date: 'Fecha',
    by: 'Medido por',
    point: (name: string, where: string) => `${name}, ${where}`,
    rules:
      'Enganche la cinta en el primer punto y lea en el segundo, con la cinta tensa. Donde la segunda lectura tiene un recuadro, ninguna otra medida mostraría un error: lea de nuevo, sin mirar la primera.',
    columns: {
      number: 'N.º',
      reading: 'Lectura',
      feet: 'ft',
      inches: 'in',
      fraction: (of: number) => `1/${of}`,
      millimetres: 'mm',
      second: 'Segunda lectura',
      without: 'Sin valor',
    },
    degrees: '°',
    noneHere: 'aquí no hay',
    couldNot: 'no se pudo',
    inWords: 'En sus palabras',
    onlyIf: (question: string, choices: readonly string[]) =>
      `Solo si la respuesta a “${question}” es: ${choices.join(' o ')}.`,
    photo: 'Foto',
    inPicture: (labels: string) => `En la foto: ${labels}.`,
    stretch: {
      fromTo: 'De – a',
      closes: 'Cierra con',
      presence: 'Sujetadores',
      planned: 'por colocar, cuántos:',
      into: 'Atornillados en',
      pulls: 'Tira hacia',
      closures: (all: string) => `Un borde puede cerrar de varias maneras, un tramo después de otro: ${all}.`,
    },
    fasteners: (unit: string) => `Lugar de cada sujetador a lo largo del borde, ${unit}:`,
    inTheWay: 'Obstáculos para la lona',
    inTheWayHow: 'Qué es, dónde está y de qué tamaño; con recorte, fuera de la lona o bajo la lona:',
    notes: 'Notas',
  },
  file: {
    title: 'Llevarlos a otro dispositivo',
    help: 'Un archivo con estos ajustes y sus plantillas. No lleva ningún trabajo, ningún cliente y ninguna persona.',
    save: 'Guardar o enviar como archivo',
    name: (day: string) => `ajustes del taller ${day}.json`,
    saved: 'Guardado entre sus descargas.',
    shared: 'Entregado.',
    failed: 'No se pudo guardar el archivo.',
    open: 'Abrir un archivo de ajustes',
    found: (when: string, numbers: number, templates: number) =>
      `Ajustes del ${when}: ${numbers === 1 ? '1 número propio' : `${numbers} números propios`}, ${templates === 1 ? '1 plantilla' : `${templates} plantillas`}.`,
    foundFrom: (shopName: string) => `De ${shopName}.`,
    warning: 'Sus números y unidades se reemplazan. Sus plantillas se quedan, y estas se agregan.',
    take: 'Usar estos ajustes',
    taken: (templates: number) =>
      templates === 0
        ? 'Aplicados. Ninguna plantilla era nueva.'
        : `Aplicados, con ${templates === 1 ? '1 plantilla nueva' : `${templates} plantillas nuevas`}.`,
    refused: 'Rechazado. Lo que estaba guardado no se tocó.',
    why: {
      'not-json': 'Este archivo no se puede leer como ajustes.',
      foreign: 'Este archivo es otra cosa, no ajustes del taller.',
      newer: 'Una versión más nueva hizo estos ajustes. Actualice la app y ábralos de nuevo.',
      damaged: 'Hay partes de este archivo que no se entienden. Pídalo de nuevo.',
      unusable: 'Sus números se contradicen, o ningún taller puede quererlos así.',
      'too-large': 'Este archivo es demasiado grande para ser de ajustes del taller.',
    } satisfies Record<ShopFileRefusal, string>,
  },
  limits: {
    own: (name: string) => `Este trabajo se juzga con los límites de ${name}:`,
    ownNameless: 'Este trabajo se juzga con los límites propios del taller:',
    usual: 'Este trabajo se juzga con los límites de fábrica.',
    line: (name: string, value: string, usual: string) => `${name}: ${value}, de fábrica ${usual}`,
    differ: 'Los ajustes de su taller ahora dicen otra cosa.',
    would: (name: string, now: string, then: string) => `${name}: ${now} aquí, ${then} en los ajustes`,
    notice: 'No se juzga con los límites de fábrica',
    noticeBehind: 'Los ajustes del taller cambiaron desde que empezó este trabajo',
    update: 'Juzgarlo con los ajustes actuales',
    updateHelp: 'Pueden aparecer y desaparecer avisos, y una pieza con el corte autorizado debe juzgarse de nuevo.',
  },
  sister: {
    begin: 'Empezar un trabajo para un barco gemelo',
    help: 'Las mismas piezas y lecturas, para medirlas de nuevo. Lo que dio este barco se guarda para comparar, y no se muestra en el muelle. Sin fotos, sin respuestas, sin personas.',
    heading: 'Barco gemelo',
    from: 'Cómo llamar a este barco en el trabajo nuevo',
    fromHelp: 'Va al trabajo nuevo. El nombre del cliente no.',
    start: 'Empezar',
    unnamed: 'el barco gemelo',
    leftOut: (count: number) =>
      count === 1
        ? 'Aquí hay una lectura dudosa; se pide de nuevo, sin valor para comparar.'
        : `Aquí hay ${count} lecturas dudosas; se piden de nuevo, sin valor para comparar.`,
    expected: (value: string) => `gemelo: ${value}`,
    both: (here: string, there: string, from: string) => `Aquí ${here}, ${from} ${there}.`,
  },
};
