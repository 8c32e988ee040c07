import type * as english from '../en/store.ts';
export const store: typeof english.store = {
  failures: {
    full: 'Este dispositivo está lleno. Lo último que anotó se conserva en esta página abierta. Envíe o guarde una copia ahora y después libere espacio.',
    blocked: 'Otra pestaña tiene abierta una versión anterior. Ciérrela y esta sigue.',
    newer:
      'Una versión más nueva escribió los trabajos de este dispositivo. No se cambió nada. Cierre todas las pestañas y abra la aplicación otra vez.',
    closed:
      'El teléfono cerró el almacenamiento. Lo último que anotó se conserva en esta página abierta y se escribirá en cuanto responda.',
    private: 'Esta ventana privada no conserva nada. Use una ventana normal.',
    conflict: 'Se rechazó algo con el mismo número pero con otro contenido. Lo guardado queda como está.',
    gone: 'Este trabajo se borró de este dispositivo en otra pestaña. Lo que anotó desde entonces se conserva solo en esta página abierta.',
    unknown:
      'El dispositivo no pudo escribir. Lo último que anotó se conserva en esta página abierta. Guarde una copia ahora.',
  },
  torn: 'Este dispositivo se llenó y puede perder lo guardado al cerrar la aplicación. Guarde ahora una copia de cada trabajo, antes de cerrarla.',
  emptied:
    'Los datos de esta aplicación en el navegador se borraron mientras estaba abierta. Lo que está en la pantalla se puede volver a escribir.',
  writeBack: 'Volver a escribirlo',
  gone: {
    what: (title: string) =>
      `“${title}” se borró de este dispositivo en otra pestaña. Esta página todavía tiene sus lecturas y respuestas. Sus fotos solo vuelven desde una copia.`,
    sure: (title: string) =>
      `Entonces no queda nada de “${title}” en este dispositivo. Las copias ya enviadas quedan donde están.`,
    letGo: 'Dejarlo ir',
    letGoNow: 'Dejarlo ir para siempre',
  },
  saveCopyNow: 'Guardar una copia',
  notOnlyCopy: 'Este teléfono tiene la única copia.',
  mayClear: (days: number) =>
    `Este navegador puede borrar lo guardado por un sitio después de una semana sin visitas. ${days === 1 ? 'Queda 1 día' : `Quedan ${days} días`}: envíelo, guarde una copia o ponga antes la aplicación en la pantalla de inicio.`,
  installFirst:
    'Ponga la aplicación en la pantalla de inicio antes de empezar un trabajo: ahí tiene su propio almacenamiento, y los trabajos empezados aquí no se mudan solos.',
  install: 'Poner en la pantalla de inicio',
  installByHand: 'En el menú para compartir del navegador, elija “Agregar a inicio”.',
  installed: 'Funciona desde la pantalla de inicio.',
  persistent: 'El navegador prometió no borrar este almacenamiento por su cuenta.',
  notPersistent: 'El navegador no prometió conservar este almacenamiento. Envíe los trabajos o guarde copias.',
  askPersistent: 'Pedir que lo conserve',
  damaged: (count: number) =>
    count === 1
      ? 'Un registro de este dispositivo no se puede leer. Se deja como está y va en cada copia.'
      : `${count} registros de este dispositivo no se pueden leer. Se dejan como están y van en cada copia.`,
  copySaved: 'Copia hecha.',
  updateWaits: 'Hay una versión nueva lista.',
  updateNow: 'Usarla ya',
  updateLater: 'Después',
  offlineReady: 'Desde ahora funciona sin señal.',
};
