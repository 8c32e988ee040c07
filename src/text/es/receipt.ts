import type * as english from '../en/receipt.ts';

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

const ofAll = (one: string, many: string) => (done: number, all: number, leftOut: number) =>
  `${done} de ${count(all, one, many)}${leftOut > 0 ? ` (${leftOut} sin hacer)` : ''}`;

export const receipt: typeof english.receipt = {
  tally: {
    measurements: ofAll('medida', 'medidas'),
    photos: ofAll('foto', 'fotos'),
    answers: ofAll('respuesta', 'respuestas'),
    edges: ofAll('borde', 'bordes'),
    again: (done: number, all: number) => `${done} de ${all} leídas una vez más`,
    last: (looks: number) => (looks === 1 ? 'una última lectura' : `${looks} últimas lecturas`),
    changed: (measurements: string, before: number, byAnswer: boolean) =>
      `${measurements}, ${byAnswer ? 'antes de su respuesta' : 'antes'} ${before}`,
  },
  shared: 'Entregado',
  downloaded: 'Guardado entre sus descargas',
  what: 'Qué',
  photos: (n: number) => count(n, 'foto', 'fotos'),
  once: (looks: number) =>
    looks === 1
      ? 'Una medida no se leyó una vez más. El taller ve cuál.'
      : `${looks} medidas no se leyeron una vez más. El taller ve cuáles.`,
  file: 'Archivo',
  named: (name: string, size: string) => `${name} (${size})`,
  whom: 'A quién',
  shop: (shop: string, contact: string) => (contact === '' ? shop : `${shop}, ${contact}`),
  chosen: 'a quien usted eligió en la lista del teléfono',
  nobodyYet: 'todavía a nadie. Envíelo desde ahí al taller, como archivo adjunto.',
  nobodyYetBut: (shop: string) => `todavía a nadie. Envíelo desde ahí a ${shop}.`,
  when: 'Cuándo',
  next: 'Qué pasa ahora',
  steps: {
    confirm: 'La aplicación no puede ver si llegó. Pida al taller que lo confirme.',
    look: 'El taller mira cada número y cada foto. Si algo no queda claro, le manda unos pasos para repetir: abra aquí su archivo.',
    keep: 'Deje sus marcas en el barco y este trabajo en el teléfono hasta que el taller diga que lo tiene todo.',
    again: 'Puede volver a enviarlo cuando quiera. Nada se duplica.',
  },
};
