import { declarationOf } from '../../job/again/index.ts';
import { type Entry, fold, type PieceDeclaration, type Sheet, type When } from '../../job/index.ts';
import { type Step, stepsOf } from '../steps.ts';

/**
 * A step as it stands on paper. number: its place in the walk as the job stands, or, for one that is asked under a condition
 * that does not hold (yet), the place before it with a letter. when: that condition.
 */
export interface PaperStep {
  readonly number: string;
  readonly step: Step;
  readonly when: When | null;
}

/** The whole walk of a piece in its order, with what may still come to be asked. */
export function paperSteps(entries: readonly Entry[], pieceId: string): PaperStep[] {
  const sheet = fold(entries);
  const asked = new Map(stepsOf(sheet, pieceId).map((step) => [step.key, step]));
  const declared = declarationOf(entries, pieceId);
  const dormant = new Map(declared ? dormantSteps(declared, sheet).map((one) => [one.step.key, one]) : []);
  const walk = sheet.pieces.find(({ id }) => id === pieceId)?.walk ?? [];
  let place = 0;
  let letters = 0;
  return [...new Set([...walk, ...asked.keys()])].flatMap((key): PaperStep[] => {
    const step = asked.get(key);
    if (step) {
      place += 1;
      letters = 0;
      return [{ number: String(place), step, when: null }];
    }
    const later = dormant.get(key);
    if (!later) return [];
    letters += 1;
    return [{ number: `${place}${LETTERS[letters - 1] ?? LETTERS.at(-1)}`, ...later }];
  });
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

/** Steps of the declaration that are not asked as the job stands, as they would be if their condition held. */
function dormantSteps(piece: PieceDeclaration, sheet: Sheet): { step: Step; when: When }[] {
  const held = { ...sheet, readings: [], runs: [], shots: [], questions: [] };
  const steps: { step: Step; when: When }[] = [];
  const add = (when: When | undefined, parts: Partial<Sheet>): void => {
    if (when) for (const step of stepsOf({ ...held, ...parts }, piece.id)) steps.push({ step, when });
  };
  for (const reading of piece.readings)
    add(reading.when, {
      readings: [
        {
          ...reading,
          piece: piece.id,
          takes: [],
          answer: null,
          value: null,
          state: 'open',
          expected: null,
          supposed: null,
        },
      ],
    });
  for (const shot of piece.shots) add(shot.when, { shots: [{ ...shot, piece: piece.id, photos: [], answer: null }] });
  for (const question of piece.questions)
    add(question.when, { questions: [{ ...question, piece: piece.id, choice: null, text: '' }] });
  for (const run of piece.runs)
    add(run.when, {
      runs: [
        {
          ...run,
          piece: piece.id,
          manner: 'cumulative',
          line: null,
          type: null,
          presence: null,
          plannedCount: null,
          stations: [],
          stretches: [],
          answer: null,
        },
      ],
    });
  return steps;
}
