import type {
  PieceDeclaration,
  PieceKind,
  PointDeclaration,
  PointRole,
  ReadingDeclaration,
  ReadingKind,
  Side,
  SizeOf,
  When,
} from '../job/index.ts';
import type { Caution } from './cautions.ts';
import { nextInRow } from './rows.ts';

export interface GuidePoint {
  slot: string;
  label: string;
  role: PointRole;
  sides: Side[];
  /** mm, the boat's own frame; where such a point usually is: a start for drawing, never evidence. */
  nominal: readonly [number, number, number];
}

export interface GuideReading {
  kind: ReadingKind;
  /** Slots of the points: hook end first, reading end second. */
  points: readonly string[];
  /** Slots of the points a girth passes on its way, in order. */
  via?: readonly string[];
  baseline?: readonly string[];
  /** Which way an offset, a height or a lean counts. */
  toward?: Side;
  /** What a size is of. */
  of?: SizeOf;
  run?: string;
  needed: boolean;
}

/** One stop on the walk: exactly one thing to tape, to photograph, to answer or to count along an edge. */
export type GuideStep = { slot: string; cautions?: readonly Caution[]; when?: When } & (
  | { on: 'reading'; reading: GuideReading }
  | { on: 'shot'; points: readonly string[]; needed: boolean }
  | { on: 'question'; choices: readonly string[]; needed: boolean; words?: boolean }
  | { on: 'run'; points: readonly string[]; whole: string | null; needed: boolean }
);

/** How a piece is captured. Slots are permanent: they are stored in jobs and never reused; the order may change. */
export interface Guide {
  kind: PieceKind;
  flat: boolean;
  points: readonly GuidePoint[];
  /** In the order a person walks round the boat. */
  walk: readonly GuideStep[];
  /** Slots of four points in order round. */
  boxes: readonly (readonly [string, string, string, string])[];
  /** Port slot, starboard slot. */
  pairs: readonly (readonly [string, string])[];
}

/** What a piece takes over from others on the same boat: points by the guide's slots, and what is asked there already. */
export interface Shared {
  readonly points: ReadonlyMap<string, PointDeclaration>;
  readonly readings: readonly Pick<ReadingDeclaration, 'kind' | 'points'>[];
}
const ALONE: Shared = { points: new Map(), readings: [] };

/**
 * The piece as it goes into the logbook: every point, reading, run, picture and question with an id of its own.
 * newId is told what the id is for, so that whoever wants the same ids again can give them.
 */
export function declarePiece(
  guide: Guide,
  name: string,
  newId: (of: string) => string,
  shared: Shared = ALONE,
): PieceDeclaration {
  const pointIds = new Map(
    guide.points.map(({ slot }) => [slot, shared.points.get(slot)?.id ?? newId(`point ${slot}`)]),
  );
  const runIds = new Map(
    guide.walk.filter((step) => step.on === 'run').map((step) => [step.slot, newId(`run ${step.slot}`)]),
  );
  const readingIds = new Map(
    guide.walk.filter((step) => step.on === 'reading').map((step) => [step.slot, newId(`reading ${step.slot}`)]),
  );
  const pick = (from: ReadonlyMap<string, string>, slot: string): string => {
    const id = from.get(slot);
    if (id === undefined) throw new Error(`guide ${guide.kind} names ${slot}, which it does not declare`);
    return id;
  };
  const pointId = (slot: string): string => pick(pointIds, slot);
  const asked = readingsOf(guide, {
    pointId,
    readingId: (slot) => pick(readingIds, slot),
    runId: (slot) => pick(runIds, slot),
  });
  const there = new Set(shared.readings.filter(isPair).map(pairKey));
  const readings = asked.filter((reading) => !(isPair(reading) && there.has(pairKey(reading))));
  const left = new Set(asked.filter((reading) => !readings.includes(reading)).map(({ slot }) => slot));
  return {
    id: newId('piece'),
    kind: guide.kind,
    name,
    flat: guide.flat,
    points: pointsOf(guide, shared, pointId),
    readings,
    runs: guide.walk.flatMap((step) => {
      if (step.on !== 'run') return [];
      const whole = step.whole === null ? null : pick(readingIds, step.whole);
      const { slot, needed } = step;
      return [{ id: pick(runIds, slot), slot, points: step.points.map(pointId), whole, needed, ...whenOf(step) }];
    }),
    shots: guide.walk.flatMap((step) =>
      step.on === 'shot'
        ? [{ slot: step.slot, points: step.points.map(pointId), needed: step.needed, ...whenOf(step) }]
        : [],
    ),
    questions: guide.walk.flatMap((step) => {
      if (step.on !== 'question') return [];
      const { slot, choices, needed, words } = step;
      return [{ slot, choices: [...choices], needed, ...(words ? { words } : {}), ...whenOf(step) }];
    }),
    boxes: guide.boxes.map(([a, b, c, d]) => [pointId(a), pointId(b), pointId(c), pointId(d)]),
    pairs: guide.pairs.map(([port, starboard]) => [pointId(port), pointId(starboard)]),
    walk: guide.walk.map((step) => step.slot).filter((slot) => !left.has(slot)),
    cautions: guide.walk.flatMap(({ slot, cautions }) => (cautions ? [{ slot, keys: [...cautions] }] : [])),
  };
}

/** The guide's points; one that is on the boat already keeps its label, and the guide's own make way for it. */
function pointsOf(guide: Guide, shared: Shared, pointId: (slot: string) => string): PointDeclaration[] {
  const labels = [...shared.points.values()].map(({ label }) => label);
  const own = guide.points.filter(({ slot }) => !shared.points.has(slot)).map(({ label }) => label);
  return guide.points.map(({ slot, label, role, sides, nominal }) => {
    const there = shared.points.get(slot);
    if (there) return there;
    const free = labels.includes(label) ? nextInRow(label, [...labels, ...own]) : label;
    labels.push(free);
    return { id: pointId(slot), label: free, slot, role, sides: [...sides], nominal: [...nominal] };
  });
}

const isPair = ({ kind, points }: Pick<ReadingDeclaration, 'kind' | 'points'>): boolean =>
  kind === 'straight' && points.length === 2;
const pairKey = ({ points }: Pick<ReadingDeclaration, 'points'>): string => [...points].sort().join(' ');

const whenOf = ({ when }: { when?: When }): { when?: When } =>
  when ? { when: { question: when.question, is: [...when.is] } } : {};

type Ids = Record<'pointId' | 'readingId' | 'runId', (slot: string) => string>;

function readingsOf(guide: Guide, { pointId, readingId, runId }: Ids): ReadingDeclaration[] {
  return guide.walk.flatMap((step): ReadingDeclaration[] => {
    if (step.on !== 'reading') return [];
    const { kind, points, via, baseline, toward, of, run, needed } = step.reading;
    return [
      {
        id: readingId(step.slot),
        slot: step.slot,
        kind,
        points: points.map(pointId),
        needed,
        ...(via ? { via: via.map(pointId) } : {}),
        ...(baseline ? { baseline: baseline.map(pointId) } : {}),
        ...(toward ? { toward } : {}),
        ...(of ? { of } : {}),
        ...(run ? { run: runId(run) } : {}),
        ...whenOf(step),
      },
    ];
  });
}
