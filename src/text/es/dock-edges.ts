import type * as english from '../en/dock-edges.ts';
import { edges } from './edges.ts';

export const dockEdges: typeof english.dockEdges = {
  names: edges,
  line: '¿Qué línea es?',
  closes: '¿Qué lo cierra?',
  closesHere: (name: string) => `${name}: ¿qué lo cierra?`,
  presence: {
    ask: '¿Ya está en el barco?',
    there: 'Ya está en el barco',
    planned: 'Por colocar',
    askRow: '¿Ya están en el barco?',
  },
  into: '¿A qué va atornillado?',
  pulls: { zip: '¿Hacia dónde se tira del cierre para cerrarlo?', feed: '¿Hacia dónde se mete?' },
  setter: '¿Quién lo coloca?',
  manner: '¿Cómo los mide?',
  stretches: 'Tramos de este borde',
  begins: '¿Más adelante se cierra de otra forma? Toque donde empieza eso.',
  beginsAt: (label: string) => `Otra forma de cierre empieza en ${label}`,
  between: (from: string, to: string) => `${from}–${to}`,
  told: {
    nothing: 'no lo cierra nada',
    untold: 'aún sin decir',
    taped: (count: number) => (count === 1 ? '1 medido' : `${count} medidos`),
    planned: (count: number) => `${count} por colocar`,
    toFit: 'por colocar',
  },
  row: {
    length: (name: string, length: string) => `${name} mide ${length} de largo.`,
    noLength: 'Aquí el largo aún no está medido: solo un número, sin separación.',
    number: 'Cuántos',
    fewer: 'Uno menos',
    more: 'Uno más',
    spacing: 'Separación',
    ends: (end: string) => `El primero y el último, a ${end} de los extremos.`,
    usual: (min: string, max: string) => `Lo usual es de ${min} a ${max}.`,
    unusual: (min: string, max: string) => `Eso está fuera de lo usual: de ${min} a ${max}.`,
    badNumber: 'Un número entero de 1 a 999.',
    badSpacing: 'Eso no se puede leer como separación.',
    take: (count: number) => `Planear ${count}`,
    help: 'Los sujetadores nuevos se ponen al colocar la pieza, ya tensa. Se planea cuántos son; sus lugares no se miden.',
  },
  kept: (count: number) =>
    count === 1
      ? 'Un lugar medido aquí antes se conserva, y el taller lo ve como se leyó. Lo que se planea ahora no lo sigue.'
      : `${count} lugares medidos aquí antes se conservan, y el taller los ve como se leyeron. Lo que se planea ahora no los sigue.`,
  keptOther: (count: number, type: string) =>
    count === 1
      ? `Un lugar se midió aquí como: ${type.toLowerCase()}. Se conserva así.`
      : `${count} lugares se midieron aquí como: ${type.toLowerCase()}. Se conservan así.`,
  whole: (value: string) => `Borde entero: ${value}`,
  wholeMissing: 'El borde entero aún no está medido.',
  sum: (value: string) => `Suma de los espacios: ${value}`,
  left: (value: string) => `Queda hasta el extremo: ${value}`,
  next: {
    cumulative: (what: string, from: string) => `${what}: desde ${from}`,
    gap: (what: string, before: string) => `${what}: desde el ${before}`,
    begins: (what: string, from: string) => `Dónde empieza (${what}): desde ${from}`,
    ends: (what: string, from: string) => `Dónde termina (${what}): desde ${from}`,
    beginsGap: (what: string) => `Dónde empieza (${what}): desde el sujetador anterior`,
    endsGap: (what: string) => `Dónde termina (${what}): desde donde empieza`,
    start: (label: string) => `${label}, el comienzo del borde`,
  },
  fastener: (number: number) => `Sujetador ${number}`,
  add: 'Agregar',
  remove: (number: number) => `Quitar el sujetador ${number}`,
  correct: 'Leer otra vez',
  none: 'Aún no se midió nada aquí.',
  finished: 'Ese fue el último',
  goOnTo: (name: string) => `Seguir: ${name}`,
  change: 'Cambiar',
  noValue: 'Sin valor',
  noneHere: 'Aquí no hay: este barco no tiene ese borde',
  couldNot: 'No se pudo medir este borde',
};
