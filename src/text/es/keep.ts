import type * as english from '../en/keep.ts';

const counted = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`);

const and = (parts: string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} y ${parts.at(-1)}`;

const jobs = (count: number): string => counted(count, 'trabajo', 'trabajos');
const photos = (count: number): string => counted(count, 'foto', 'fotos');
const settings = (count: number): string => counted(count, 'ajuste', 'ajustes');

/** Backing up a device, what it stores, and deleting a job from it. */
export const keep: typeof english.keep = {
  backup: {
    heading: 'Copia de todo',
    help: 'Un solo archivo con todos los trabajos, fotos, ajustes y plantillas de este dispositivo. Trae nombres de clientes: guárdelo donde solo usted pueda abrirlo.',
    make: 'Hacer el archivo de copia',
    making: (percent: number) => `Haciendo el archivo… ${percent} %`,
    failed:
      'No se pudo hacer el archivo. No se perdió nada. Cierre otras páginas para liberar memoria e inténtelo otra vez.',
    holds: (counts: { jobs: number; photos: number; damaged: number }, size: string) =>
      `Listo: ${and([jobs(counts.jobs), photos(counts.photos)])}, ${size}.${
        counts.damaged > 0
          ? ` ${counted(counts.damaged, 'registro que no se puede leer va tal como está', 'registros que no se pueden leer van tal como están')}.`
          : ''
      }`,
    lost: (count: number) =>
      `${counted(count, 'foto o registro está tan dañado que no se pudo copiar y no va incluido', 'fotos o registros están tan dañados que no se pudieron copiar y no van incluidos')}.`,
    name: (day: string) => `${day} Tapetrue copia.json`,
    share: 'Enviarlo o guardarlo ahora',
    download: 'Guardarlo en este dispositivo',
    saved: 'Guardado en sus descargas. Páselo a otro dispositivo: una copia que queda en este se pierde con él.',
    shared: 'Entregado.',
    cancelled: 'No se guardó.',
    refused: 'El teléfono no quiso entregarlo. Guárdelo en este dispositivo.',
  },
  restore: {
    open: 'Recuperar de un archivo de copia',
    reading: (percent: number) => `Leyendo el archivo… ${percent} %`,
    holds: (when: string, who: string, counts: { jobs: number; photos: number }) =>
      `Copia del ${when}${who === '' ? '' : `, hecha por ${who}`}: ${and([jobs(counts.jobs), photos(counts.photos)])}.`,
    would: (fresh: number, known: number) =>
      fresh + known === 0
        ? 'No trae ningún trabajo.'
        : `${and([
            ...(fresh > 0 ? [`${jobs(fresh)} ${fresh === 1 ? 'es nuevo' : 'son nuevos'} aquí`] : []),
            ...(known > 0
              ? [
                  `${jobs(known)} ya ${known === 1 ? 'está' : 'están'} aquí y ${known === 1 ? 'recibe' : 'reciben'} lo que falta`,
                ]
              : []),
          ])}.`,
    safe: 'En este dispositivo no se reemplaza ni se quita nada.',
    damaged: (count: number) =>
      `${counted(count, 'registro no se puede leer y se guarda como está', 'registros no se pueden leer y se guardan como están')}.`,
    allSettings: (count: number) =>
      count === 1
        ? 'Tomar también su ajuste, en lugar del de aquí'
        : `Tomar también sus ${settings(count)}, en lugar de los de aquí`,
    settingsHelp: 'Si no, se toman solo los ajustes que este dispositivo todavía no tiene.',
    now: 'Recuperarlo',
    working: (percent: number) => `Recuperando… ${percent} %`,
    done: (outcome: { jobs: number; entries: number; photos: number }) =>
      outcome.entries + outcome.photos === 0
        ? 'Todo ya estaba aquí.'
        : `Volvieron ${and([
            counted(outcome.entries, 'registro', 'registros'),
            photos(outcome.photos),
          ])}, en ${jobs(outcome.jobs)}.`,
    also: (settingsTaken: number, templates: number) =>
      `También se tomó: ${and([settings(settingsTaken), counted(templates, 'plantilla', 'plantillas')])}.`,
    setAside: (count: number) =>
      `${counted(count, 'registro trae', 'registros traen')} un número conocido con otro contenido. Lo que había aquí queda.`,
    notPut: (count: number) =>
      `${jobs(count)} no se ${count === 1 ? 'pudo recuperar: un número suyo lo usa' : 'pudieron recuperar: números suyos los usa'} otro trabajo de aquí.`,
    stopped: 'Se detuvo a la mitad. Lo que volvió está completo; recupere otra vez el mismo archivo y sigue.',
    refused: 'Rechazado. Lo guardado no se tocó.',
    why: {
      foreign: 'Este archivo no es una copia de todo.',
      newer: 'Esta copia se hizo con una versión más nueva. Actualice la aplicación y ábrala otra vez.',
      'cut-off': 'Esta copia está cortada: le falta el final. Cópiela otra vez de donde se hizo.',
      damaged: 'Esta copia está dañada: su contenido no coincide con su sello. Cópiela otra vez de donde se hizo.',
      unreadable: 'El archivo no se pudo leer hasta el final. ¿Sigue ahí?',
    },
    fileChanged: 'El archivo cambió mientras se leía.',
  },
  use: {
    counting: 'Calculando lo que ocupa…',
    total: (count: number, records: string, photoCount: number, photoBytes: string) =>
      `${jobs(count)} ${count === 1 ? 'ocupa' : 'ocupan'} ${records}. ${photos(photoCount)}: ${photoBytes}.`,
    room: (used: string, quota: string) => `El navegador dice: unos ${used} usados de ${quota}.`,
    unknown: 'Este navegador no dice, o no de forma creíble, cuánto espacio queda.',
  },
  remove: {
    heading: 'Borrar un trabajo de este dispositivo',
    open: 'Borrarlo de este dispositivo',
    ask: (name: string) => `¿Borrar “${name}” de este dispositivo?`,
    counting: 'Viendo qué se perdería…',
    loses: (readings: number, photoCount: number, more: number) =>
      `Se borra de aquí: ${and([
        counted(readings, 'lectura', 'lecturas'),
        photos(photoCount),
        ...(more > 0 ? [counted(more, 'registro más', 'registros más')] : []),
      ])}.`,
    neverSent: 'Nunca se envió ni se guardó: esta es la única copia que hay.',
    since: (when: string, entries: number) =>
      `Se envió o guardó por última vez el ${when}; ${counted(entries, 'registro posterior está', 'registros posteriores están')} solo aquí.`,
    sent: (when: string) => `El ${when} se envió o guardó una copia de todo. Esa queda donde está.`,
    forGood: 'Esto no se puede deshacer.',
    putAway: 'Si solo quiere quitarlo de la vista, guárdelo aparte en la lista de trabajos: así no se pierde nada.',
    saveFirst: 'Guardar antes una copia',
    saved: 'Guardado en sus descargas.',
    notSaved: 'No se pudo hacer la copia. El trabajo queda.',
    now: 'Borrarlo para siempre',
    failed: 'El dispositivo no pudo hacerlo. El trabajo sigue aquí.',
  },
};
