import type { Side } from '../../job/index.ts';
import type { GuidePoint, GuideStep } from '../guide.ts';
import { ask, offsetOf, tape, whenIs } from './asking.ts';

type Reading = Extract<GuideStep, { on: 'reading' }>;
type More = Pick<GuideStep, 'when'>;

/** The tape laid along an edge, through the points it passes: what the fasteners on it must add up to. */
const wholeEdge = (run: string, points: readonly string[], more: More): Reading => ({
  slot: `${run}-whole`,
  on: 'reading',
  reading: {
    kind: 'girth',
    points: [points[0] ?? '', points.at(-1) ?? ''],
    via: points.slice(1, -1),
    run,
    needed: true,
  },
  ...more,
});

/** An edge from point to point: its whole length along the edge, then what is fastened on it. */
export const edgeSteps = (run: string, points: readonly string[], more: More = {}): GuideStep[] => [
  wholeEdge(run, points, more),
  { slot: run, on: 'run', points, whole: `${run}-whole`, needed: true, ...more, cautions: ['drilling'] },
];

/** An edge that may be straight, or stand out from a string between its ends, or fall in. */
interface BowedEdge {
  /** Slot of the question. */
  readonly slot: string;
  /** Choices besides: an edge that ends nowhere here, say. */
  readonly others?: readonly string[];
  readonly ends: readonly [string, string];
  readonly middle: string;
  readonly belly: Side;
  readonly hollow: Side;
  /** A point across the piece, from which one more tape checks the other two. */
  readonly across: string;
}

/**
 * Asked first, since an offset has a side and a tape has no sign: a straight edge needs nothing more. Otherwise its middle is
 * fixed by its place between the ends and the offset from the string, and checked by a tape from across the piece.
 */
export function bowedEdge({ slot, others = [], ends, middle, belly, hollow, across }: BowedEdge): GuideStep[] {
  const bent = whenIs(slot, 'belly', 'hollow');
  return [
    ask(slot, ['straight', 'belly', 'hollow', ...others]),
    ...ends.map((end) => tape(end, middle, bent)),
    offsetOf(`out-${middle}-belly`, middle, ends, belly, whenIs(slot, 'belly')),
    offsetOf(`out-${middle}-hollow`, middle, ends, hollow, whenIs(slot, 'hollow')),
    tape(across, middle, bent),
  ];
}

/** Where a panel is divided from its top edge to its bottom edge. */
interface Split {
  readonly top: string;
  readonly bottom: string;
  /** The ends of the side edge it lies nearer to, top and bottom, and of the other. */
  readonly near: readonly [string, string];
  readonly far: readonly [string, string];
  /** Choices of `split` with which it is there. */
  readonly is: readonly string[];
}

/** Each end of the split by its place on its edge and from both corners of the edge across; its own length checks both. */
export function split({ top, bottom, near, far, is }: Split): GuideStep[] {
  const more = whenIs('split', ...is);
  return [
    tape(near[0], top, more),
    tape(near[1], top, more),
    tape(far[1], top, more),
    tape(top, bottom, more),
    tape(near[1], bottom, more),
    tape(near[0], bottom, more),
    tape(far[0], bottom, more),
  ];
}

export const point = (
  label: string,
  role: GuidePoint['role'],
  sides: readonly Side[],
  nominal: GuidePoint['nominal'],
): GuidePoint => ({ slot: label, label, role, sides: [...sides], nominal });
