import type { Caution } from '../cautions.ts';
import type { GuideStep } from '../guide.ts';
import { ask, whenIs } from './asking.ts';

type Question = Extract<GuideStep, { on: 'question' }>;

/**
 * What decides the make of a piece besides its shape, asked in the same words whatever the piece, so that an answer given
 * for one stands ready for the next. Slots and choices are permanent. Which questions matter: common practice, no source.
 */
export const lineQuestion: Question = ask('line', ['fastener-line', 'finished-edge', 'boat-edge']);

export const berthQuestion: Question = ask('berth', ['water', 'lift', 'trailer']);
/** Bow-in, stern-in: the end that lies to the dock, where no side does. */
export const dockSideQuestion: Question = ask(
  'dock-side',
  ['port', 'starboard', 'bow-in', 'stern-in', 'changes'],
  whenIs('berth', 'water'),
);
export const cordQuestion: Question = ask(
  'cord',
  ['port', 'starboard', 'aft', 'forward', 'no-cord'],
  whenIs('berth', 'water', 'lift'),
);

export const fitsQuestion: Question = ask('fits', ['owner-alone', 'owner-helped', 'crew']);
export const fitsFromQuestion: Question = ask('fits-from', ['dock', 'inside', 'ground', 'both']);

/** Of a cover that lies where the cleats are. */
export const cleatsQuestion: Question = ask('cleats', ['under-cover', 'outside', 'cut-outs']);

/** Of a cover. A shade is taken down or stays up, and asks so in its own guide. */
export const rainQuestion: Question = ask('rain', ['stays-on', 'taken-off'], { cautions: ['carbon-monoxide'] });
/** Of cloth that is up while the boat moves. */
export const speedQuestion: Question = ask('speed', ['at-rest', 'slow', 'faster'], {
  cautions: ['recoil', 'lights-and-view'],
});
/** Of a cover that may stay on while the boat is towed. */
export const towQuestion: Question = ask('tow', ['never', 'short-way', 'road'], whenIs('berth', 'trailer'));
export const windQuestion: Question = ask('wind', ['sheltered', 'breeze', 'strong'], { needed: false });

/** Colour, maker and the like go along in words. */
export const clothQuestion: Question = ask('cloth', ['breathable', 'coated', 'mesh', 'clear-window', 'shop-decides'], {
  needed: false,
  words: true,
});
export const ventsQuestion: Question = ask('vents', ['wanted', 'none', 'shop-decides'], {
  needed: false,
  ...whenIs('cloth', 'coated'),
});
export const bagQuestion: Question = ask('bag', ['wanted', 'none'], { needed: false });

/** What is in the way of the cloth: the list of it opens on `listed`. */
export const inTheWayQuestion: Question = ask('in-the-way', ['nothing', 'listed']);

/** The same question with cautions of the piece that asks it. */
export const withCautions = (question: Question, ...cautions: Caution[]): Question => ({ ...question, cautions });
