import type { Guide } from '../../guide.ts';
import { ask, sizeOf, whenIs } from '../asking.ts';
import {
  bagQuestion,
  berthQuestion,
  clothQuestion,
  inTheWayQuestion,
  speedQuestion,
  windQuestion,
} from '../make-questions.ts';

const NO_POLES = whenIs('poles', 'not-yet');

/**
 * A shade stretched between two mounts on the hardtop and two poles in rod holders. The four corners are measured tip
 * to tip with the poles standing: four sides and both diagonals fix the corners in space, the four heights over one
 * plane check them. Common practice, no source.
 */
export const tensionShade: Guide = {
  kind: 'tension-shade',
  flat: false,
  points: [
    { slot: 'A', label: 'A', role: 'mount', sides: ['port', 'aft'], nominal: [0, 950, 1900] },
    { slot: 'B', label: 'B', role: 'mount', sides: ['starboard', 'aft'], nominal: [0, -950, 1900] },
    { slot: 'C', label: 'C', role: 'corner', sides: ['port', 'forward'], nominal: [2250, 750, 1700] },
    { slot: 'D', label: 'D', role: 'corner', sides: ['starboard', 'forward'], nominal: [2250, -750, 1700] },
  ],
  walk: [
    { slot: 'over', on: 'question', choices: ['foredeck', 'cockpit'], needed: true, cautions: ['engine-off'] },
    { slot: 'poles', on: 'question', choices: ['real-poles', 'sticks', 'not-yet'], needed: true },
    ask('lean', ['upright', 'deg-15', 'deg-30', 'other'], { ...NO_POLES, words: true }),
    ask('lean-way', ['forward', 'aft', 'outboard', 'differs'], { ...NO_POLES, words: true }),
    sizeOf('pole-port', 'length', ['C'], { ...NO_POLES, needed: false }),
    sizeOf('pole-starboard', 'length', ['D'], { ...NO_POLES, needed: false }),
    {
      slot: 'A-B',
      on: 'reading',
      reading: { kind: 'straight', points: ['A', 'B'], needed: true },
      cautions: ['footing'],
    },
    { slot: 'A-C', on: 'reading', reading: { kind: 'straight', points: ['A', 'C'], needed: true } },
    { slot: 'A-D', on: 'reading', reading: { kind: 'straight', points: ['A', 'D'], needed: true } },
    { slot: 'B-D', on: 'reading', reading: { kind: 'straight', points: ['B', 'D'], needed: true } },
    { slot: 'B-C', on: 'reading', reading: { kind: 'straight', points: ['B', 'C'], needed: true } },
    { slot: 'C-D', on: 'reading', reading: { kind: 'straight', points: ['C', 'D'], needed: true } },
    { slot: 'h-A', on: 'reading', reading: { kind: 'height', points: ['A'], needed: true } },
    { slot: 'h-B', on: 'reading', reading: { kind: 'height', points: ['B'], needed: true } },
    { slot: 'h-C', on: 'reading', reading: { kind: 'height', points: ['C'], needed: true } },
    { slot: 'h-D', on: 'reading', reading: { kind: 'height', points: ['D'], needed: true } },
    { slot: 'photo-mounts', on: 'shot', points: ['A', 'B'], needed: true },
    { slot: 'photo-pole-port', on: 'shot', points: ['C'], needed: true },
    { slot: 'photo-pole-starboard', on: 'shot', points: ['D'], needed: true },
    {
      slot: 'holders',
      on: 'question',
      choices: ['through-bolted', 'screwed', 'to-be-fitted'],
      needed: true,
      cautions: ['drilling', 'loads'],
    },
    { slot: 'rain', on: 'question', choices: ['taken-down', 'stays-up'], needed: true },
    berthQuestion,
    speedQuestion,
    windQuestion,
    clothQuestion,
    bagQuestion,
    inTheWayQuestion,
  ],
  boxes: [['A', 'B', 'D', 'C']],
  pairs: [
    ['A', 'B'],
    ['C', 'D'],
  ],
};
