import type * as english from '../en/demo.ts';
export const demo: typeof english.demo = {
  name: 'Demostración: Perla, toldo y funda de proa',
  customer: 'A. Ejemplo (nombre inventado)',
  boat: 'Perla, lancha de proa abierta de 24 ft (inventada)',
};
