import type { PacketRefusal, RowFault } from '../../core/packet/index.ts';
import type * as english from '../en/take-in.ts';

export const takeIn: typeof english.takeIn = {
  added: (added: number, name: string) =>
    added === 0
      ? `${name}: nada nuevo, ya estaba todo aquí.`
      : `${name}: ${added} ${added === 1 ? 'registro nuevo' : 'registros nuevos'}.`,
  setAside: (count: number) =>
    count === 1
      ? 'Un registro traía un número conocido con otro contenido y se dejó de lado. Lo que estaba aquí queda.'
      : `${count} registros traían un número conocido con otro contenido y se dejaron de lado. Lo que estaba aquí queda.`,
  isBackup: 'Es la copia de todo un dispositivo. Abra “Este dispositivo” y recupérela ahí.',
  refused: 'Rechazado. Lo guardado no se tocó.',
  missingPhotos: (count: number) =>
    count === 1 ? 'Nombra una foto que no trae.' : `Nombra ${count} fotos que no trae.`,
  why: {
    'not-json': 'Esto no es un paquete: no se puede leer como tal.',
    foreign: 'Este archivo es otra cosa, no un paquete.',
    newer: 'Este paquete se hizo con una versión más nueva. Actualice la aplicación y ábralo otra vez.',
    damaged: 'Este paquete está dañado: su contenido no corresponde a su sello. Pídalo otra vez.',
    unreadable: 'Hay partes de este paquete que no se entienden.',
    empty: 'El archivo está vacío.',
    'two-jobs': 'Este paquete mezcla dos trabajos.',
  } satisfies Record<PacketRefusal['why'], string>,
  tables: {
    'not-a-table': 'A la tabla le faltan columnas.',
    empty: 'La tabla no tiene filas.',
    'too-long': 'Esa tabla es más larga que cualquier barco. ¿Es el archivo correcto?',
    'rows-refused': 'Estas filas no se entendieron:',
  },
  columns: (columns: readonly string[]) => `Faltan: ${columns.join(', ')}.`,
  row: (line: number, fault: string, column: string, understood: string) =>
    `Línea ${line}${column && `, ${column}`}: ${fault}.${understood && ` Se entendió: ${understood}.`}`,
  rowFaults: {
    'unknown-kind': 'no existe esa clase de lectura',
    'missing-cell': 'una celda necesaria está vacía',
    'column-not-used': 'esta clase no usa esa columna',
    'unreadable-cell': 'no se puede leer',
    'text-too-long': 'demasiado largo',
    'same-point-twice': 'el mismo punto dos veces',
    'star-needs-flat': '* solo sirve para flat (plano)',
    'comma-in-number': 'una coma en un número',
    'too-many-cells': 'más celdas que columnas',
    'text-after-quote': 'texto después de una comilla de cierre',
    'open-quote': 'una comilla que nunca se cierra',
    'known-twice': 'a este punto ya se le dio un lugar',
    'sides-contradict': 'contradice el lado dado antes',
    'run-out-of-line': 'no concuerda con su borde',
    'run-whole-twice': 'este borde tiene dos largos totales',
  } satisfies Record<RowFault, string>,
};
