import type { PieceDeclaration, PieceKind, PointRole, ReadingKind, Side } from '../job/index.ts';

/** Cautions shown at the step where they matter; their words live with the texts. */
export type Caution =
  | 'footing'
  | 'drilling'
  | 'carbon-monoxide'
  | 'recoil'
  | 'lights-and-view'
  | 'loads'
  | 'engine-off';

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
  baseline?: readonly string[];
  run?: string;
  needed: boolean;
}

/** One stop on the walk: exactly one thing to tape, to photograph, to answer or to count along an edge. */
export type GuideStep = { slot: string; cautions?: readonly Caution[] } & (
  | { on: 'reading'; reading: GuideReading }
  | { on: 'shot'; points: readonly string[]; needed: boolean }
  | { on: 'question'; choices: readonly string[]; needed: boolean }
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

/** The piece as it goes into the logbook: every point, reading, run, picture and question with an id of its own. */
export function declarePiece(guide: Guide, name: string, newId: () => string): PieceDeclaration {
  const pointIds = new Map(guide.points.map((point) => [point.slot, newId()]));
  const runIds = new Map(guide.walk.filter((step) => step.on === 'run').map((step) => [step.slot, newId()]));
  const readingIds = new Map(guide.walk.filter((step) => step.on === 'reading').map((step) => [step.slot, newId()]));
  const pick = (from: ReadonlyMap<string, string>, slot: string): string => {
    const id = from.get(slot);
    if (id === undefined) throw new Error(`guide ${guide.kind} names ${slot}, which it does not declare`);
    return id;
  };
  const pointId = (slot: string): string => pick(pointIds, slot);
  const piece: PieceDeclaration = {
    id: newId(),
    kind: guide.kind,
    name,
    flat: guide.flat,
    points: guide.points.map((point) => ({
      id: pointId(point.slot),
      label: point.label,
      slot: point.slot,
      role: point.role,
      sides: [...point.sides],
      nominal: [...point.nominal],
    })),
    readings: [],
    runs: [],
    shots: [],
    questions: [],
    boxes: guide.boxes.map(([a, b, c, d]) => [pointId(a), pointId(b), pointId(c), pointId(d)]),
    pairs: guide.pairs.map(([port, starboard]) => [pointId(port), pointId(starboard)]),
    walk: guide.walk.map((step) => step.slot),
  };
  for (const step of guide.walk) {
    const { slot } = step;
    if (step.on === 'reading') {
      const { kind, points, baseline, run, needed } = step.reading;
      piece.readings.push({
        id: pick(readingIds, slot),
        slot,
        kind,
        points: points.map(pointId),
        needed,
        ...(baseline ? { baseline: baseline.map(pointId) } : {}),
        ...(run ? { run: pick(runIds, run) } : {}),
      });
    } else if (step.on === 'run') {
      const whole = step.whole === null ? null : pick(readingIds, step.whole);
      piece.runs.push({ id: pick(runIds, slot), slot, points: step.points.map(pointId), whole, needed: step.needed });
    } else if (step.on === 'shot') piece.shots.push({ slot, points: step.points.map(pointId), needed: step.needed });
    else piece.questions.push({ slot, choices: [...step.choices], needed: step.needed });
  }
  return piece;
}
