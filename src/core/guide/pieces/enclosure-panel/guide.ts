import type { Guide } from '../../guide.ts';
import { ask, shot, sizeOf, tape, tapes, whenIs } from '../asking.ts';
import { bowedEdge, edgeSteps, point, split } from '../edges.ts';
import {
  bagQuestion,
  fitsFromQuestion,
  fitsQuestion,
  inTheWayQuestion,
  lineQuestion,
  speedQuestion,
} from '../make-questions.ts';

/** A string or a sighted line is set across the opening. */
const LEVELLED = whenIs('level', 'boat-line', 'spirit-level');

/**
 * One panel of an enclosure, on any side of the boat; its letters are given as it is seen from outside, upper left first,
 * so that a panel measured from inside does not come out mirrored. Four corners with all edges and both diagonals; one
 * reading is spare. Every edge that is not straight (or has a corner in it) brings a point in its middle, fixed by its place
 * along the edge and an offset from the string, and one tape more that checks both and the box. A level line only says how
 * the panel hangs, so that two plain sizes down the side edges do for it. Taken as flat: a corner that stands out of the plane by 60 mm changes a tape of 1.2 m by 1.5 mm. Common practice, no source.
 */
export const enclosurePanel: Guide = {
  kind: 'enclosure-panel',
  flat: true,
  points: [
    point('A', 'edge', ['above'], [-2000, 900, 1950]),
    point('B', 'edge', ['above'], [-2000, -900, 1950]),
    point('C', 'edge', ['below'], [-2000, -940, 800]),
    point('D', 'edge', ['below'], [-2000, 940, 800]),
    point('E', 'edge', ['above'], [-2000, 0, 2000]),
    point('F', 'edge', [], [-2000, -960, 1380]),
    point('G', 'edge', ['below'], [-2000, 0, 770]),
    point('H', 'edge', [], [-2000, 960, 1380]),
    point('X1', 'edge', ['above'], [-2000, 350, 1985]),
    point('X2', 'edge', ['below'], [-2000, 350, 780]),
    point('Y1', 'edge', ['above'], [-2000, -350, 1985]),
    point('Y2', 'edge', ['below'], [-2000, -350, 780]),
  ],
  walk: [
    ask('panel', ['port', 'starboard', 'front', 'aft'], { cautions: ['engine-off', 'footing'] }),
    ask('exhaust', ['away', 'below', 'none'], { cautions: ['carbon-monoxide'] }),
    lineQuestion,
    ask('measured-from', ['outside', 'inside']),
    ...tapes('A', ['B', 'C', 'D']),
    ...tapes('B', ['C', 'D']),
    tape('D', 'C'),
    ...bowedEdge({ slot: 'top-edge', ends: ['A', 'B'], middle: 'E', belly: 'above', hollow: 'below', across: 'D' }),
    ...bowedEdge({
      slot: 'right-edge',
      ends: ['B', 'C'],
      middle: 'F',
      belly: 'starboard',
      hollow: 'port',
      across: 'A',
    }),
    ...bowedEdge({ slot: 'bottom-edge', ends: ['D', 'C'], middle: 'G', belly: 'below', hollow: 'above', across: 'B' }),
    ...bowedEdge({ slot: 'left-edge', ends: ['A', 'D'], middle: 'H', belly: 'port', hollow: 'starboard', across: 'B' }),
    ask('level', ['boat-line', 'spirit-level', 'not-needed']),
    sizeOf('level-left', 'height', ['A'], LEVELLED),
    sizeOf('level-right', 'height', ['B'], LEVELLED),
    ask('split', ['one-piece', 'one', 'two']),
    ...split({ top: 'X1', bottom: 'X2', near: ['A', 'D'], far: ['B', 'C'], is: ['one', 'two'] }),
    ...split({ top: 'Y1', bottom: 'Y2', near: ['B', 'C'], far: ['A', 'D'], is: ['two'] }),
    ask('window', ['whole', 'framed', 'no-window'], { cautions: ['lights-and-view'] }),
    sizeOf('window-margin', 'clearance', [], whenIs('window', 'framed')),
    ask('overlap', ['over-neighbour', 'under-neighbour', 'none']),
    sizeOf('overlap-width', 'width', [], whenIs('overlap', 'over-neighbour', 'under-neighbour')),
    ...edgeSteps('top', ['A', 'E', 'B']),
    ...edgeSteps('round', ['A', 'H', 'D', 'G', 'C', 'F', 'B']),
    shot('photo-upper', ['A', 'B']),
    shot('photo-lower', ['C', 'D']),
    shot('photo-whole', []),
    ask('trim', ['cut-to-size', 'oversize', 'shop-decides']),
    ask('ventilation', ['opens', 'elsewhere', 'none']),
    inTheWayQuestion,
    speedQuestion,
    fitsQuestion,
    fitsFromQuestion,
    bagQuestion,
  ],
  boxes: [['A', 'B', 'C', 'D']],
  pairs: [],
};
