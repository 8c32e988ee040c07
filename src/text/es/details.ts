import type * as english from '../en/details.ts';
export const details: typeof english.details = {
  heading: 'Barco y cliente',
  fields: {
    name: 'Nombre del trabajo',
    customer: 'Cliente',
    contact: 'Contacto',
    boat: 'Barco',
    place: 'Lugar',
    note: 'Nota',
  },
  help: {
    name: '',
    customer: '',
    contact: 'Teléfono o correo, si lo necesita para este trabajo.',
    boat: '',
    place: 'Dónde está el barco.',
    note: 'Va al taller con el trabajo.',
  },
  two: 'Dos personas escribieron cosas distintas. ¿Cuál vale?',
  said: (value: string, who: string) => `${value || '(nada)'} · ${who}`,
  withdraw: 'Retirar para siempre los datos de una persona',
};
