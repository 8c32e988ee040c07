import type { PieceKind } from '../../../src/core/job/index.ts';

/** How often the tape is read: by the walk, along edges, and again where nothing else would show a slip that matters. */
export interface Effort {
  /** What is answered where it is not the first choice. */
  readonly answers: Readonly<Record<string, string>>;
  readonly walk: number;
  readonly fasteners: number;
  readonly again: readonly string[];
  /** Points that have no place in the engine's shape, only a height over it. */
  readonly placeless: readonly string[];
  /** Whether the answers themselves are a doubt that the person takes on. */
  readonly takesOn: boolean;
}

/** A cord would want its way out recorded; that is another rule's test. */
const effort = (
  answers: Effort['answers'],
  walk: number,
  again: readonly string[] = [],
  more: Partial<Effort> = {},
): Effort => ({
  answers: { cord: 'no-cord', ...answers },
  walk,
  again,
  fasteners: 0,
  placeless: [],
  takesOn: false,
  ...more,
});

/** The edges of a panel, all bent one way. */
const bent = (edges: string, way: string): Effort['answers'] =>
  Object.fromEntries(edges.split(' ').map((edge) => [`${edge}-edge`, way]));
/** Tapes that run nearly level hardly feel a height. */
const HEIGHTS = ['h-P3', 'h-P2', 'h-P1', 'h-N', 'h-S1', 'h-S2', 'h-S3'];
const UNPROPPED = { 'aft-top': 'nothing', 'fore-top': 'nothing' };

/** Each guide as it opens, and with every answer that makes it ask for something else. */
export const EFFORTS: Partial<Record<PieceKind, readonly Effort[]>> = {
  'tension-shade': [
    effort({}, 10, ['h-A', 'h-B', 'h-C', 'h-D']),
    effort({ poles: 'not-yet' }, 12, ['h-A', 'h-B', 'h-C', 'h-D'], { takesOn: true }),
  ],
  'open-bow': [
    effort({ cleats: 'outside', cord: 'aft' }, 33, ['h-G'], { fasteners: 32, placeless: ['G'] }),
    effort({ cleats: 'outside', cord: 'aft', glass: 'at-foot', crown: 'crowned' }, 34, ['crown-2', 'crown-3'], {
      fasteners: 32,
      placeless: ['K2', 'K3'],
    }),
  ],
  'cockpit-cover': [
    effort({ cleats: 'outside' }, 17, ['h-X'], { fasteners: 57, placeless: ['X'] }),
    effort({ cleats: 'outside', 'aft-edge': 'belly', 'fore-edge': 'hollow', support: 'none' }, 24, [], {
      fasteners: 57,
    }),
    effort({ cleats: 'outside', 'aft-edge': 'hollow', 'fore-edge': 'belly', support: 'none' }, 24, [], {
      fasteners: 57,
    }),
    effort(
      { cleats: 'outside', 'aft-edge': 'down-transom', 'fore-edge': 'up-hardtop', support: 'none' },
      21,
      ['drop-aft-port', 'drop-aft-starboard', 'drop-fore-port', 'drop-fore-starboard', 'hardtop-width'],
      { fasteners: 57 },
    ),
  ],
  'drop-curtain': [
    effort({ lands: 'on-deck' }, 8, ['P1-P3', 'S1-S3'], { fasteners: 44 }),
    effort({ 'top-edge': 'belly', 'bottom-edge': 'belly' }, 17, ['P1-P3', 'S1-S3', 'below-edge'], { fasteners: 44 }),
    effort({ ...bent('top port bottom starboard', 'belly'), split: 'one' }, 32, ['below-edge'], { fasteners: 44 }),
    effort({ ...bent('top port bottom starboard', 'hollow'), split: 'two' }, 39, ['below-edge'], { fasteners: 44 }),
  ],
  'mooring-cover': [
    effort({}, 37, [...HEIGHTS, 'over-foredeck', 'skirt']),
    effort({ ...UNPROPPED, held: 'snaps' }, 29, [...HEIGHTS, 'over-foredeck', 'skirt'], { fasteners: 75 }),
    effort({ held: 'cord-and-straps' }, 38, [...HEIGHTS, 'over-foredeck', 'skirt'], { fasteners: 38 }),
  ],
  'enclosure-panel': [
    effort({ level: 'not-needed', overlap: 'none' }, 8, ['A-D', 'B-C'], { fasteners: 40 }),
    effort(
      { ...bent('top right bottom left', 'belly'), split: 'one', window: 'framed' },
      35,
      ['level-left', 'level-right', 'window-margin', 'overlap-width'],
      { fasteners: 41 },
    ),
    effort(
      { ...bent('top right bottom left', 'hollow'), split: 'two' },
      41,
      ['level-left', 'level-right', 'overlap-width'],
      { fasteners: 41 },
    ),
  ],
  'folding-top': [
    effort({}, 39),
    effort({ bows: 'two', straps: 'none', folds: 'stays-up' }, 20, ['h-P1', 'h-S1', 'h-P2', 'h-S2']),
    effort({ bows: 'four', straps: 'forward-pair' }, 53),
  ],
  'box-cover': [effort({}, 24), effort({ corners: 'rounded' }, 25, ['radius'])],
  cushion: [
    effort({}, 20, ['thickness']),
    effort({ outline: 'station-offset', what: 'carpet' }, 21),
    effort({ front: 'hollow', hinge: 'one', what: 'bolster' }, 29, ['thickness']),
    effort({ front: 'belly', hinge: 'one', outline: 'station-offset', what: 'carpet' }, 30),
    effort(
      { bevel: 'undercut', corners: 'rounded', fastening: 'snaps' },
      24,
      ['thickness', 'radius', 'bevel-left', 'bevel-right'],
      {
        fasteners: 10,
      },
    ),
  ],
};
