import * as z from 'zod/mini';
import { Id, Language, Line, Measurer, PieceKind, ShopRules, Slot, System } from '../../job/index.ts';

/** A piece that is to be measured. answers: what the shop knows already, choices by the slots of the guide's questions. */
const WantedPiece = z.object({ kind: PieceKind, name: Line, answers: z.record(Slot, Slot) });

/**
 * What a shop wants measured. job: the id the job has on every device. device, at, by: who asked, where and when.
 * limits: the shop's own, where it has set any.
 */
export const JobRequest = z.object({
  job: Id,
  device: Id,
  at: z.iso.datetime({ offset: true }),
  by: Line,
  system: System,
  fraction: z.union([z.literal(8), z.literal(16), z.literal(32)]),
  customer: Line,
  boat: Line,
  pieces: z.array(WantedPiece).check(z.minLength(1), z.maxLength(12)),
  shop: Line,
  contact: Line,
  note: z.string().check(z.maxLength(1000)),
  language: Language,
  measurer: Measurer,
  limits: z.optional(ShopRules),
});
export type JobRequest = z.infer<typeof JobRequest>;

/** The fields by the letters they have in a link. Permanent. */
const LETTERS: Readonly<Record<keyof JobRequest, string>> = {
  job: 'j',
  device: 'd',
  at: 'a',
  by: 'y',
  system: 'u',
  fraction: 'f',
  customer: 'c',
  boat: 'b',
  pieces: 'p',
  shop: 's',
  contact: 'k',
  note: 'n',
  language: 'l',
  measurer: 'm',
  limits: 'x',
};

/** The request in few characters: what is empty is left out. */
export function shortRequest(request: JobRequest): Record<string, unknown> {
  const pieces = request.pieces.map(({ kind, name, answers }) =>
    Object.keys(answers).length > 0 ? [kind, name, answers] : [kind, name],
  );
  const fields = Object.entries({ ...request, pieces }).filter(([, value]) => value !== '' && value !== undefined);
  return Object.fromEntries(fields.map(([key, value]) => [LETTERS[key as keyof JobRequest], value]));
}

/** What stood behind the letters, for the schema to judge. */
export function longRequest(short: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const fields = Object.entries(LETTERS).map(([key, letter]) => [key, short[letter] ?? EMPTY[key]]);
  const long: Record<string, unknown> = Object.fromEntries(fields.filter(([, value]) => value !== undefined));
  const pieces: unknown[] = Array.isArray(long.pieces) ? long.pieces : [];
  return {
    ...long,
    pieces: pieces.map((piece) =>
      Array.isArray(piece) ? { kind: piece[0], name: piece[1], answers: piece[2] ?? {} } : piece,
    ),
  };
}

const EMPTY: Readonly<Record<string, unknown>> = { by: '', customer: '', boat: '', shop: '', contact: '', note: '' };
