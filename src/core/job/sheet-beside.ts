/** What stands on the sheet beside the piece itself: who tried hand and tape before, and what was found when it was fitted. */
import * as z from 'zod/mini';
import { PracticeReading, Who } from './entries.ts';
import { Id, PracticePaper } from './words.ts';

const Signed = { at: z.string(), who: Who };

/** What somebody read off a sheet of paper before the boat. */
export const Practice = z.object({
  entry: Id,
  paper: PracticePaper,
  readings: z.array(PracticeReading),
  ...Signed,
});
export type Practice = z.infer<typeof Practice>;

/** What was found at the fitting. from: the sister boat it was learned on; null: this one. */
export const Fitting = z.object({
  id: Id,
  piece: Id,
  where: z.nullable(z.object({ on: z.enum(['point', 'run', 'reading']), id: Id })),
  change: z.nullable(z.number()),
  text: z.string(),
  why: z.string(),
  from: z.nullable(z.string()),
  ...Signed,
});
export type Fitting = z.infer<typeof Fitting>;
