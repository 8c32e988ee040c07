import type * as english from '../en/links.ts';

/** Links that carry work between shop and phone. */
export const links: typeof english.links = {
  refused: {
    title: 'Este enlace no se puede abrir',
    why: {
      foreign:
        'No es un enlace de esta aplicación, o le falta el comienzo. Copie el enlace completo y ábralo otra vez.',
      'cut-off': 'Falta el final de este enlace. Copie el enlace completo, o pida al taller que lo mande otra vez.',
      damaged: 'Algo de este enlace cambió en el camino. Pida al taller que lo mande otra vez.',
      newer:
        'Este enlace se hizo con una versión más nueva. Cierre la aplicación, ábrala otra vez con señal y después abra el enlace.',
      unreadable: 'Hay partes de este enlace que no se entienden. Pida al taller un archivo de paquete.',
      'not-come':
        'No llegó una parte de la aplicación que lee enlaces. Abra el enlace otra vez donde haya mejor señal.',
    },
    untouched: 'En este dispositivo no se cambió nada.',
    toJobs: 'A los trabajos de este dispositivo',
  },
  reading: 'Leyendo el enlace…',
  notSaved: 'No se pudo guardar en el dispositivo. No se cambió nada.',
  request: {
    title: (shop: string) => (shop === '' ? 'Le piden que mida' : `${shop} le pide que mida`),
    from: (by: string) => `Lo pide ${by}.`,
    reach: 'Cómo comunicarse',
    what: 'Lo que hay que medir',
    boat: (boat: string) => `Barco: ${boat}`,
    customer: (customer: string) => `Para ${customer}`,
    note: 'Escriben',
    known: (count: number) =>
      count === 1 ? 'Una pregunta ya está contestada.' : `${count} preguntas ya están contestadas.`,
    units: { imperial: 'Se mide en pulgadas.', metric: 'Se mide en milímetros.' },
    roles: {
      owner: 'Usted mide como dueño del barco: un paso a la vez, con más tiempo para cada uno.',
      installer: 'Usted mide como instalador.',
      bench: 'Usted mide para el taller.',
    },
    keepsRole: (role: string) => `Este dispositivo está preparado para ${role} y así queda.`,
    keptRoles: { owner: 'el dueño', installer: 'el instalador', bench: 'el taller' },
    language: 'La aplicación habla ahora español, como lo pide este enlace.',
    begin: 'Empezar',
    notCome: 'No llegó una parte de la aplicación. No se pierde nada: pulse Empezar otra vez donde haya mejor señal.',
    goOn: 'Seguir con este trabajo',
    here: 'Este trabajo ya está en este dispositivo. No se pierde ni se duplica nada.',
    private: 'Todo esto va en el enlace mismo. Nada llega al taller hasta que usted lo envíe.',
  },
  paste: {
    label: 'Pegue un enlace, un paquete o una tabla de lecturas',
    open: 'Abrir lo pegado',
    name: 'Pegado',
  },
  ask: {
    title: 'El taller vuelve a pedir',
    notHere: 'El trabajo de este enlace no está en este teléfono.',
    notHereDo:
      'Abra el enlace en el teléfono con que se midió. Si ya no lo tiene, pida al taller el archivo de paquete y ábralo aquí.',
    answered: 'Todo lo que se pidió ya está contestado.',
    setAside: 'Una parte del enlace dice otra cosa que lo que hay aquí. Lo que hay aquí queda.',
    open: 'Abrir el trabajo',
    goThere: 'Ir al primer paso que se pide',
  },
};
