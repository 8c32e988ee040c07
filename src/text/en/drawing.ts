import type { DrawingWords } from '../../core/packet/drawing/index.ts';

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
  measuredTo: (line) => `Measured to: ${line}`,
  lineUnknown: 'Nobody said which line was measured to.',
  lines: {
    'finished-edge': 'the finished edge of the cloth',
    'fastener-line': 'the line of the fasteners',
    'boat-edge': 'the edge of the boat',
  },
  allowance: (width) => `Dashed line: ${width} allowance all round, added to what was measured`,
  unit: (unit) => (unit === 'in' ? 'Unit of this drawing: inches' : 'Unit of this drawing: millimetres'),
  state: (entries, latest) =>
    `State: ${entries === 1 ? '1 entry' : `${entries} entries`}, the latest of ${latest.slice(0, 16).replace('T', ' ')}`,
  seal: (seal) => `Seal ${seal}`,
  cleared: (who, when) => `Clear to cut: ${who}, ${when}`,
  notCleared: 'NOT CLEARED TO CUT',
  demo: 'Demo: invented boat and people',
};
