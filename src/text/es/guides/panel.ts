import type * as english from '../../en/guides/panel.ts';
import type { PieceWords } from '../../en/guides/piece-words.ts';

type Words = PieceWords['questions'][string];

/** An edge against a string between its ends. */
export const bow: typeof english.bow = (title: string, string: string, belly: string, hollow: string): Words => ({
  title,
  help: `Sostenga un hilo bien tenso de ${string}. ¿Dónde queda el borde en el medio?`,
  choices: { straight: 'En el hilo', belly, hollow },
});

/** Questions of what hangs and closes a space. */
export const exhaust: Words = {
  title: '¿Por dónde sale el escape?',
  help: 'El de cada motor y cada generador a bordo. Una lona cerrada cerca del escape junta un gas que mata y no se huele.',
  choices: {
    away: 'Bien lejos de la lona',
    below: 'Debajo o al lado de la lona',
    none: 'No hay motor ni generador',
  },
};

export const split: Words = {
  title: '¿Es de una sola pieza?',
  help: 'Una división lleva un cierre (cremallera), del borde de arriba al de abajo.',
  choices: { 'one-piece': 'De una pieza', one: 'Una división', two: 'Dos divisiones' },
};
