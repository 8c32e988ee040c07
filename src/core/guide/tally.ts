import type { Finding } from '../check/index.ts';
import type { Sheet } from '../job/index.ts';
import { type LooksAhead, looksAhead } from './looks-ahead.ts';
import { type Step, stepsOf } from './steps.ts';

/** Things of one kind that are asked for: those that are there, and those answered with why they are not. */
export interface Counted {
  done: number;
  leftOut: number;
  all: number;
}

/** How far a job or a piece of it is, by what a person can count; every number an owner is shown comes from here. */
export interface Tally {
  measurements: Counted;
  photos: Counted;
  answers: Counted;
  edges: Counted;
  /** Measurements once more, after the round. */
  again: LooksAhead;
  /** Of all these together, what is settled: for a bar without a number. */
  whole: { done: number; all: number };
}

type Standing = 'done' | 'left-out' | 'open';

/** What the shop asks again stays counted as what it was: the asking is said apart, and no number falls by it. */
export function tallyOf(sheet: Sheet, findings: readonly Finding[], only: string | null = null): Tally {
  const pieces = sheet.pieces.filter(({ id }) => only === null || id === only);
  const steps = pieces.flatMap(({ id }) => stepsOf(sheet, id));
  const counted = (on: Step['on']): Counted => {
    const standings = steps.filter((step) => step.on === on).map(standingOf);
    const those = (wanted: Standing): number => standings.filter((standing) => standing === wanted).length;
    return { done: those('done'), leftOut: those('left-out'), all: standings.length };
  };
  const again = looksAhead(sheet, findings, only);
  const kinds = {
    measurements: counted('reading'),
    photos: counted('shot'),
    answers: counted('question'),
    edges: counted('run'),
  };
  const sum = Object.values(kinds).reduce((before, { done, leftOut }) => before + done + leftOut, 0);
  return { ...kinds, again, whole: { done: sum + again.done, all: steps.length + again.all } };
}

function standingOf(step: Step): Standing {
  switch (step.on) {
    case 'reading':
      return step.reading.state === 'open' ? 'open' : step.reading.state === 'measured' ? 'done' : 'left-out';
    case 'shot':
      return step.shot.photos.length > 0 ? 'done' : step.shot.answer ? 'left-out' : 'open';
    case 'question':
      return step.question.choice === null ? 'open' : 'done';
    case 'run':
      if (step.run.answer) return 'left-out';
      return step.state === 'done' || (step.state === 'asked-again' && step.run.line !== null) ? 'done' : 'open';
  }
}
