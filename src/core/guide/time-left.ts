import type { Step } from './steps.ts';

/** Minutes a person takes who does it for the first time; common practice, no source. */
const MINUTES: Readonly<Record<Step['on'], number>> = { reading: 2, shot: 2, question: 0.5, run: 5 };
/** Sticking numbered marks on, before anything is taped. */
const MARKS = 10;
/** Nobody wants to hear 37 minutes: up to the next five. */
const ROUND = 5;
/** A look after the first: the marks are known, how it is held too. */
const LOOK = 1.5;

export interface TimeLeft {
  minutes: number;
  /** What is still open, by kind. */
  open: Readonly<Record<Step['on'], number>>;
  /** The marks are counted in. */
  marks: boolean;
  /** Looks after the first that are still to come. */
  looks: number;
}

/** About how long what is open takes, with the looks after it; nothing where nothing is. */
export function timeLeft(steps: readonly Pick<Step, 'on' | 'state'>[], looks = 0): TimeLeft {
  const open = { reading: 0, shot: 0, question: 0, run: 0 };
  for (const { on, state } of steps) if (state === 'open' || state === 'asked-again') open[on] += 1;
  const marks = !steps.some(({ on, state }) => on === 'reading' && state !== 'open') && open.reading > 0;
  const sum = Object.entries(open).reduce((all, [on, count]) => all + MINUTES[on as Step['on']] * count, LOOK * looks);
  return { minutes: Math.ceil((sum + (marks ? MARKS : 0)) / ROUND) * ROUND, open, marks, looks };
}
