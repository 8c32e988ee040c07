import type * as english from '../en/guide.ts';
export const guide: typeof english.guide = {
  spot: (label: string, known: readonly (string | undefined)[]) => {
    const said = known.filter(Boolean).join(', ');
    return said === '' ? label : `${label} (${said})`;
  },
  hook: (spot: string) => `Enganche la cinta en ${spot}.`,
  taut: (spot: string) => `Ténsela hasta ${spot}.`,
  girth: (from: string, to: string) => `Apoye la cinta sobre el borde, desde ${from} hasta ${to}.`,
  height: (spot: string) => `Altura de ${spot}.`,
  string: (from: string, to: string) => `Tienda un hilo bien tenso de ${from} a ${to}.`,
  offString: (spot: string) => `A escuadra (en ángulo recto) desde el hilo hasta ${spot}.`,
  alongString: (from: string, spot: string) => `A lo largo del hilo, desde ${from} hasta quedar frente a ${spot}.`,
  size: (name: string) => `${name}.`,
  plainOther: (kind: string, points: string) => `${kind}: ${points}.`,
  readingTitle: {
    between: (from: string, to: string) => `${from}–${to}`,
    height: (label: string) => `Altura de ${label}`,
    along: (from: string, to: string) => `Por el borde, de ${from} a ${to}`,
    offString: (label: string, from: string, to: string) => `${label} desde el hilo ${from}–${to}`,
    alongString: (label: string, from: string, to: string) => `${label} a lo largo del hilo ${from}–${to}`,
    fastener: (number: number) => `Sujetador ${number}`,
    size: (of: string, what: string) => (what === '' ? of : `${of} en ${what}`),
    other: (kind: string, points: string) => `${kind} ${points}`,
  },
  oldMark: (label: string) => `${label} anterior`,
  inPlaceOf: (name: string) => `en lugar de “${name}”`,
  edge: (labels: string) => `Borde ${labels}`,
  picture: (labels: string) => (labels === '' ? 'Foto' : `Foto de ${labels}`),
  couldNotTell: 'No se pudo saber',
  noneHere: 'Aquí no hay',
};
