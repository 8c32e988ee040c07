import type * as english from '../en/jobs.ts';
export const jobs: typeof english.jobs = {
  search: 'Buscar cliente, barco o pieza',
  searchShort: 'Buscar un trabajo',
  order: 'En este orden',
  orders: {
    latest: 'Lo último primero',
    need: 'Lo pendiente primero',
    customer: 'Por cliente',
    boat: 'Por barco',
  },
  found: (found: number, all: number) => {
    const jobs = all === 1 ? 'trabajo' : 'trabajos';
    return found === 0
      ? 'Ningún trabajo con estas palabras.'
      : found === all
        ? `${all} ${jobs}`
        : `${found} de ${all} ${jobs}`;
  },
  away: (count: number) => (count === 1 ? 'Hay 1 más guardado aparte.' : `Hay ${count} más guardados aparte.`),
  tidy: 'Guardar trabajos aparte',
  showAway: (count: number) => (count === 1 ? 'Mostrar 1 guardado aparte' : `Mostrar ${count} guardados aparte`),
  putAway: 'Guardar aparte',
  takeBack: 'Traer de vuelta',
  notMoved: 'El dispositivo no pudo escribir eso. El trabajo está donde estaba.',
};
