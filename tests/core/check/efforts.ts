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

const effort = (
  answers: Effort['answers'],
  walk: number,
  again: readonly string[] = [],
  more: Partial<Effort> = {},
): Effort => ({ answers, walk, again, fasteners: 0, placeless: [], takesOn: false, ...more });

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
