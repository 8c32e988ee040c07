import type * as english from '../en/photos.ts';

const counted = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`);

export const photos: typeof english.photos = {
  take: 'Tomar una foto',
  another: 'Otra foto',
  reading: 'Leyendo la foto…',
  unreadable: 'Este teléfono no puede leer esa foto. Tómela como JPEG.',
  alt: (title: string) => `Foto: ${title}`,
  missing: 'La foto no está en este dispositivo.',
  at: (name: string) => `Fotos: ${name}`,
  atHow: 'La cinta puesta, o dónde se engancha: le muestra al taller qué midió usted.',
  backTo: (name: string) => `Volver a ${name}`,
  which: (number: number, of: number) => `Foto ${number} de ${of}`,
  choose: 'Fotos tomadas aquí',

  doubts: {
    dark: 'Muy oscura. ¿Puede tomar otra con luz?',
    empty: 'No se ve nada. ¿Hay algo delante de la lente?',
    blurred: 'Se ve movida o borrosa. ¿Toma otra sin moverse?',
  },
  kept: 'Esta se conserva.',
  onlySees: 'La aplicación solo nota si una foto está oscura, vacía o muy borrosa. Mírela usted también.',

  mark: (label: string) => `Toque donde está ${label}`,
  markMoved: (label: string) => `Toque el lugar nuevo de ${label}`,
  markNoted: (text: string) => `Toque el lugar de “${text}”`,
  allMarked: 'Todos los puntos están marcados.',
  press: 'Mantenga el dedo y deslice para verla más grande. Levántelo para marcar; salga de la foto para no marcar.',
  markHere: 'La foto: las flechas mueven una cruz, Enter la coloca, Mayús la mueve más lejos',
  marks: 'Marcas en esta foto',
  unmarked: '·',
  fine: {
    name: 'Moverla un poco',
    left: 'Izquierda',
    right: 'Derecha',
    up: 'Arriba',
    down: 'Abajo',
    place: 'Ponerla aquí',
  },
  removeMark: 'Quitar esta marca',
  leaveMark: 'Dejarla ahí',

  tools: 'Más sobre esta foto',
  markOther: 'Marcar otra cosa',
  whichPoint: '¿Qué marca?',
  otherText: 'O una nota en un lugar',
  otherTextHelp: 'Diga qué hay ahí y después tóquelo.',
  otherPlace: 'Tocar su lugar',

  edge: 'Dibujar un borde',
  whichEdge: '¿Qué borde?',
  edgeFirst: (name: string) => `Toque a lo largo (${name}), de un extremo al otro`,
  edgeMore: (places: number) => `${counted(places, 'lugar', 'lugares')} hasta ahora. Toque el siguiente, o termine.`,
  lastBack: 'Quitar el último',
  finish: 'Terminar la línea',
  lines: 'Líneas en esta foto',
  removeLine: (name: string) => `Quitar ${name}`,

  reference: 'Tamaño conocido',
  whichReference: '¿Qué hay en ella de tamaño conocido?',
  references: {
    card: 'Tarjeta bancaria',
    a4: 'Hoja A4',
    letter: 'Hoja carta',
    tape: 'Trozo de cinta métrica',
    other: 'Otra cosa',
  },
  referenceHow: {
    card: 'Toque los dos extremos del lado largo',
    a4: 'Toque los dos extremos del lado largo',
    letter: 'Toque los dos extremos del lado largo',
    tape: 'Toque los dos extremos del trozo',
    other: 'Toque sus dos extremos',
  },
  secondEnd: 'Ahora el otro extremo',
  howLong: '¿Cuánto mide de largo?',
  whatIsIt: '¿Qué es?',
  toEnds: 'Tocar sus extremos',
  known: (name: string, length: string) => `${name}, ${length}`,
  wide: (width: string) =>
    `Donde está, la foto abarcaría ${width} de ancho. Si eso no puede ser, toque otra vez sus extremos. Todavía no se calcula nada con esto; se guarda para después.`,
  cannotBe: (width: string) =>
    `Donde está, la foto abarcaría ${width} de ancho. Eso no puede ser: quítelo y toque otra vez sus extremos. Todavía no se calcula nada con esto.`,

  note: 'Escribir una nota',
  noteOn: 'Nota sobre esta foto',
  notes: 'Notas sobre esta foto',
  removeNote: 'Quitar esta nota',

  remove: 'Quitar',
  removeHow: 'Si se quita, sale del trabajo. Queda en el historial de este dispositivo y puede volver.',
  removeNow: 'Quitar esta foto',
  keep: 'Conservarla',
  removed: (count: number) => (count === 1 ? 'Se quitó una foto de aquí.' : `Se quitaron ${count} fotos de aquí.`),
  removedHow: 'No va cuando se envía el trabajo.',
  bringBack: 'Traerla de vuelta',
};
