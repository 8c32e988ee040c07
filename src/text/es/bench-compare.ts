import type * as english from '../en/bench-compare.ts';
/** What the bench says when it lays one state of a job, or one boat, beside another. */
export const benchCompare: typeof english.benchCompare = {
  with: 'Comparar con',
  nothing: 'nada',
  asked: (when: string, who: string) => `cuando ${who} volvió a pedir, ${when}`,
  cleared: (when: string, who: string) => `cuando ${who} autorizó el corte, ${when}`,
  job: (name: string) => `otro barco: ${name}`,
  working: 'Poniendo uno junto al otro…',
  gone: 'Ese trabajo ya no está en este dispositivo.',
  none: 'Nada es distinto.',
  readings: 'Lecturas distintas',
  reading: 'Lectura',
  before: 'Antes',
  after: 'Ahora',
  difference: 'Cambio',
  noValue: 'sin valor',
  came: 'Avisos que aparecieron',
  went: 'Avisos que desaparecieron',
  shape: 'Una forma sobre la otra',
  shapeHow:
    'La forma anterior (línea discontinua) puesta sobre esta sin estirarla: tan cerca como lo permiten los puntos que ambas tienen.',
  rms: (within: string) => `En conjunto, ${within} de separación`,
  further: (label: string, by: string) => `${label}: ${by} de separación`,
  without: (names: string) => `Esta forma se dibuja sin ${names}, que no concuerda con las demás.`,
  withoutThen: (names: string) => `La forma anterior se dibuja sin ${names}, que no concuerda con las demás.`,
  bent: 'No usar: hay lecturas que se contradicen y tuercen una de las formas, así que no se da ninguna distancia entre ellas.',
  noShape: 'No hay dos formas que poner una sobre otra.',
};
