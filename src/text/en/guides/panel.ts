import type { PieceWords } from './piece-words.ts';

type Words = PieceWords['questions'][string];

/** An edge against a string between its ends. */
export const bow = (title: string, string: string, belly: string, hollow: string): Words => ({
  title,
  help: `Hold a string from ${string}, taut. Where is the edge in the middle?`,
  choices: { straight: 'On the string', belly, hollow },
});

/** Questions of what hangs and closes a space. */
export const exhaust: Words = {
  title: 'Where does the exhaust come out?',
  help: 'Of every engine and generator on board. Closed cloth near it gathers what kills without a smell.',
  choices: { away: 'Well away from the cloth', below: 'Below or beside the cloth', none: 'No engine, no generator' },
};

export const split: Words = {
  title: 'Is it in one piece?',
  help: 'A split closes with a zip from the top edge to the bottom edge.',
  choices: { 'one-piece': 'One piece', one: 'One split', two: 'Two splits' },
};
