import type { DrawingWords, TileWords } from '../../core/packet/drawing/index.ts';
import { MOST_TILES } from '../../core/packet/drawing/tiles.ts';
import { inchesToTheFoot } from '../scale.ts';

/** What stands on a drawing that leaves the app. */
export const drawing: DrawingWords = {
  seen: {
    plan: 'Seen from above, the bow up',
    port: 'Seen from outboard, the bow to the left',
    starboard: 'Seen from outboard, the bow to the right',
    astern: 'Seen from astern, port to the left',
    ahead: 'Seen from ahead, port to the right',
  },
  notFlat: 'A PLAN, NOT A CUTTING PATTERN: this piece is not flat. Cut from the points in space.',
  sketched: 'Drawn from readings that do not fix the shape yet. Do not cut from it.',
  bent: 'NOT TO BE USED: readings contradict each other and bend this shape.',
  without: (names) => `Drawn without ${names}, which does not fit the others.`,
  measuredTo: (line) => `Measured to: ${line}`,
  lineUnknown: 'Nobody said which line was measured to.',
  lines: {
    'finished-edge': 'the finished edge of the cloth',
    'fastener-line': 'the line of the fasteners',
    'boat-edge': 'the edge of the boat',
  },
  allowance: (width) => `Dashed line: ${width} allowance all round, added to what was measured`,
  unit: (unit) => (unit === 'in' ? 'Unit of this drawing: inches' : 'Unit of this drawing: millimetres'),
  state: (id, entries, latest) =>
    `State ${id}: ${entries === 1 ? '1 entry' : `${entries} entries`}${latest === '' ? '' : `, the latest of ${latest}`}`,
  seal: (seal) => `Seal ${seal}`,
  cleared: (who, when, judged) => `CLEAR TO CUT, said ${who}, ${when}, of state ${judged}`,
  nameless: 'the shop',
  notCleared: 'NOT CLEARED TO CUT',
  demo: 'Demo: invented boat and people',
  scale: (ratio, system) =>
    ratio === 1
      ? 'Full size, 1:1'
      : `Scale ${system === 'imperial' ? `${inchesToTheFoot(ratio)} (1:${ratio})` : `1:${ratio}`}`,
};

const PAPERS = { a4: 'A4', letter: 'US Letter' } as const;

/** What stands on the sheets of a piece printed in real size. */
export const tiles: TileWords = {
  howTo: 'Real size',
  tile: (name) => `Sheet ${name}`,
  page: (page, of) => `Page ${page} of ${of}`,
  fullSize: 'Real size: print at 100 %, never fitted to the page',
  joins: (tile) => `${tile} joins here`,
  bar: (mm) => `${mm} mm on a true print`,
  square: { inner: 'inner square 100 mm', outer: 'outer square 4 in' },
  steps: (sheets) => [
    'Measure the square before you cut anything: the inner one is 100 mm wide and high, the outer one 4 in. If it is not, print again at 100 %, without fitting to the page.',
    `Lay ${sheets === 1 ? 'the sheet' : `the ${sheets} sheets`} out as below. Lay each over its neighbour until the crosses of the same number lie on one another, and tape it down. Where sheets are to butt, cut along the dotted lines.`,
    'Then measure one long reading across the whole and compare it with the job sheet.',
  ],
  refused: (refusal) => {
    switch (refusal.why) {
      case 'not-flat':
        return 'This piece is not flat: its plan is no cutting pattern, so it is not printed in real size. Cut from the points in space.';
      case 'no-shape':
        return 'The readings do not fix the shape yet, so it is not printed in real size.';
      case 'no-outline':
        return 'This piece has no closed outline to print.';
      case 'too-many':
        return `In real size it takes ${refusal.count} sheets of ${PAPERS[refusal.paper]}, and more than ${MOST_TILES} are not offered. Use the DXF with a plotter, or send it out.`;
    }
  },
};
