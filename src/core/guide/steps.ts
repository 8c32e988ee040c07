import { nominalPlaces } from '../geometry/along-run.ts';
import { fastenersByStretch } from '../geometry/run-stretches.ts';
import {
  lacksOfStretch,
  type Sheet,
  type SheetQuestion,
  type SheetReading,
  type SheetRun,
  type SheetShot,
  type StretchLack,
} from '../job/index.ts';
import { CAUTIONS, type Caution } from './cautions.ts';

/** Where a person stands with one step. */
export type StepState = 'open' | 'done' | 'answered-without-value' | 'asked-again';

/** A stop on the walk of a piece as the job stands; key is permanent within the job. */
export type Step = {
  key: string;
  state: StepState;
  cautions: readonly Caution[];
  /** The shop's words where it asked again; empty when it did not. */
  askedNote: string | null;
} & (
  | { on: 'reading'; reading: SheetReading }
  | { on: 'shot'; shot: SheetShot }
  | { on: 'question'; question: SheetQuestion }
  | { on: 'run'; run: SheetRun }
);

/** The walk of a piece: its declared slots in order, then readings that were added later. */
export function stepsOf(sheet: Sheet, pieceId: string): Step[] {
  const piece = sheet.pieces.find((candidate) => candidate.id === pieceId);
  if (!piece) return [];
  const steps = new Map<string, Step>();
  const cautions = new Map(piece.cautions.map(({ slot, keys }) => [slot, keys.filter(isCaution)]));
  const common = (key: string, on: string, id: string, state: StepState) => {
    const asked = openAsk(sheet, pieceId, on, id);
    return {
      key,
      cautions: cautions.get(key) ?? [],
      askedNote: asked,
      state: asked === null ? state : ('asked-again' as const),
    };
  };
  for (const reading of sheet.readings) {
    if (reading.piece !== pieceId || isStation(reading)) continue;
    const key = reading.slot ?? reading.id;
    steps.set(key, { ...common(key, 'reading', reading.id, readingState(reading)), on: 'reading', reading });
  }
  for (const run of sheet.runs) {
    if (run.piece !== pieceId) continue;
    const key = run.slot ?? run.id;
    steps.set(key, { ...common(key, 'run', run.id, runState(run, sheet)), on: 'run', run });
  }
  for (const shot of sheet.shots) {
    if (shot.piece !== pieceId) continue;
    const state = shot.photos.length > 0 ? 'done' : shot.answer ? 'answered-without-value' : 'open';
    steps.set(shot.slot, { ...common(shot.slot, 'shot', shot.slot, state), on: 'shot', shot });
  }
  for (const question of sheet.questions) {
    if (question.piece !== pieceId) continue;
    const state = question.choice === null ? 'open' : 'done';
    steps.set(question.slot, { ...common(question.slot, 'question', question.slot, state), on: 'question', question });
  }
  const walked = piece.walk.flatMap((slot) => steps.get(slot) ?? []);
  const placed = new Set(walked.map((step) => step.key));
  return [...walked, ...[...steps.values()].filter((step) => !placed.has(step.key))];
}

/** Stations along an edge are taken at the edge's own step; its whole length has one of its own. */
const isStation = ({ kind, run, slot }: SheetReading): boolean =>
  kind === 'running' && run !== undefined && slot === null;

const isCaution = (key: string): key is Caution => (CAUTIONS as readonly string[]).includes(key);

const readingState = (reading: SheetReading): StepState =>
  reading.state === 'open' ? 'open' : reading.state === 'measured' ? 'done' : 'answered-without-value';

/** Details of what is planned that hold nobody up; they are asked at the same step. */
const CAN_WAIT: ReadonlySet<StretchLack> = new Set(['into', 'setter']);

/** Done when every stretch is told and every row that is there has its places. */
function runState(run: SheetRun, sheet: Sheet): StepState {
  if (run.answer) return 'answered-without-value';
  const lists = fastenersByStretch(run, sheet, nominalPlaces(sheet));
  const bare = run.stations.length === 0;
  const lacks = run.stretches.flatMap((stretch, index) => lacksOfStretch(stretch, lists[index] ?? []));
  const open = lacks.filter((lack) => !CAN_WAIT.has(lack) && (lack !== 'stations' || bare || run.stretches.length > 1));
  return run.line !== null && open.length === 0 ? 'done' : 'open';
}

function openAsk(sheet: Sheet, piece: string, on: string, id: string): string | null {
  for (const ask of sheet.asks) {
    if (ask.piece !== piece) continue;
    const item = ask.items.find((candidate) => candidate.open && candidate.on === on && candidate.id === id);
    if (item) return item.note || ask.note;
  }
  return null;
}

/** The step to go to next: the first after `from` that still wants something, then from the start; null when none. */
export function nextOpen(steps: readonly Step[], from: number): Step | null {
  return nextThat(steps, from, ({ state }) => state === 'open' || state === 'asked-again');
}

/** The next step the shop asks again; null when none is left. */
export const nextAsked = (steps: readonly Step[], from: number): Step | null =>
  nextThat(steps, from, ({ state }) => state === 'asked-again');

/** Where to begin with what the shop asks again: the first such step of the first piece that has any. */
export function firstAsked(sheet: Sheet, except: string | null = null): { piece: string; step: Step } | null {
  for (const { id: piece } of sheet.pieces) {
    const step = piece === except ? null : nextAsked(stepsOf(sheet, piece), -1);
    if (step) return { piece, step };
  }
  return null;
}

function nextThat(steps: readonly Step[], from: number, wants: (step: Step) => boolean): Step | null {
  return steps.slice(from + 1).find(wants) ?? steps.slice(0, Math.max(0, from + 1)).find(wants) ?? null;
}
