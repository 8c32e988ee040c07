import type { PieceWords } from './piece-words.ts';

type Words = PieceWords['questions'][string];

/** The questions of core/guide/pieces/make-questions.ts, the same for every piece that asks them. */
export const line: Words = {
  title: 'Which line do you measure to?',
  help: 'The same line all the way round. “The edge” alone is a slip in waiting.',
  choices: {
    'fastener-line': 'Line of the fasteners',
    'finished-edge': 'Finished edge of the cloth',
    'boat-edge': 'Edge of the boat',
  },
};

export const berth: Words = {
  title: 'Where does the boat live?',
  help: 'A boat tied up in the water needs its cleats free.',
  choices: { water: 'In the water', lift: 'On a lift', trailer: 'On a trailer' },
};

export const dockSide: Words = {
  title: 'Which side lies to the dock?',
  help: 'Openings and fenders belong there.',
  choices: {
    port: 'Port side to',
    starboard: 'Starboard side to',
    'bow-in': 'Bow in',
    'stern-in': 'Stern in',
    changes: 'It changes',
  },
};

export const cord: Words = {
  title: 'Where does the shore-power cord leave the boat?',
  help: 'The cloth needs a way out for it.',
  choices: {
    port: 'To port',
    starboard: 'To starboard',
    aft: 'Aft',
    forward: 'Forward',
    'no-cord': 'No cord',
  },
};

export const fits: Words = {
  title: 'Who puts it on?',
  help: 'One person alone needs fewer and easier fasteners.',
  choices: {
    'owner-alone': 'The owner, alone',
    'owner-helped': 'The owner with a helper',
    crew: 'Yard or marina crew',
  },
};

export const fitsFrom: Words = {
  title: 'From where is it put on?',
  help: 'Fasteners must be within reach from there, and there must be a way out at the end.',
  choices: {
    dock: 'From the dock',
    inside: 'From inside the boat',
    ground: 'From the water or the ground',
    both: 'From inside and from outside',
  },
};

export const rain: Words = {
  title: 'In rain, does it stay on?',
  help: 'A cover that stays on needs cloth that breathes and pitch enough that no water stands.',
  choices: { 'stays-on': 'Stays on', 'taken-off': 'Taken off' },
};

export const speed: Words = {
  title: 'When is it used?',
  help: 'Speed adds to the wind.',
  choices: { 'at-rest': 'At rest only', slow: 'Under way, slowly', faster: 'Faster than that' },
};

export const tow: Words = {
  title: 'Is it on while the boat is towed?',
  help: 'Nothing may be loose under tow. A cover that is towed needs straps and guards where it rubs.',
  choices: { never: 'Never', 'short-way': 'A short way, slowly', road: 'On the road, at speed' },
};

export const wind: Words = {
  title: 'How windy is it where it is used?',
  help: 'Cloth in the wind pulls on every fastener.',
  choices: { sheltered: 'Sheltered', breeze: 'A usual breeze', strong: 'Often strong wind' },
};

export const cloth: Words = {
  title: 'Which cloth is wanted?',
  help: 'Colour, and what else is known of it, in words.',
  choices: {
    breathable: 'One that breathes',
    coated: 'Coated, waterproof',
    mesh: 'Mesh',
    'clear-window': 'With clear windows',
    'shop-decides': 'The shop decides',
  },
};

export const vents: Words = {
  title: 'Vents in it?',
  help: 'Coated cloth that stays on in rain needs vents.',
  choices: { wanted: 'Wanted', none: 'None', 'shop-decides': 'The shop decides' },
};

export const bag: Words = {
  title: 'A bag to stow it in?',
  help: 'Stowed wet and salty it grows mildew.',
  choices: { wanted: 'Wanted', none: 'No bag' },
};

export const inTheWay: Words = {
  title: 'Is anything in the way of the cloth?',
  help: 'Cleats, rails, lights, rod holders, antennas, wipers, vents, hatches.',
  choices: { nothing: 'Nothing', listed: 'Yes: list it' },
};

export const cleats: Words = {
  title: 'The cleats and the cover?',
  help: 'A cleat that holds the boat must stay free.',
  choices: { outside: 'Outside the cover', 'cut-outs': 'Cut-outs wanted', 'under-cover': 'Under the cover' },
};
