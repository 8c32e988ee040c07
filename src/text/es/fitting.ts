import type * as english from '../en/fitting.ts';

/** What was found when the finished piece hung on the boat. */
export const fitting: typeof english.fitting = {
  heading: 'Después de la prueba en el barco',
  help: 'Lo que hubo que cambiar cuando la pieza quedó puesta. La autorización de corte sigue igual; el trabajo de un barco gemelo se lleva esto.',
  add: 'Anotar algo de la prueba',
  where: 'Dónde',
  piece: 'Toda la pieza',
  kinds: { point: 'Puntos', run: 'Bordes', reading: 'Lecturas' },
  change: 'Cambio (déjelo vacío si no fue de largo)',
  changeHelp: 'Más largo, tal cual; más corto, con un menos: -3/8, -10 mm.',
  why: '¿Qué fue y por qué?',
  whyNeeded: 'Diga en pocas palabras qué fue.',
  save: 'Guardar esta nota',
  takeBack: 'Deshacer',
  from: (boat: string) => `de ${boat}`,
  here: (boat: string | null) => (boat === null ? 'Después de la prueba aquí' : `Después de la prueba en ${boat}`),
  what: (change: string, why: string) => [change, why].filter(Boolean).join(': '),
  history: (where: string, what: string) => `Después de la prueba, ${where}: ${what}`,
};
