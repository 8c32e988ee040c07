import canonicalize from 'canonicalize';
import { v5 } from 'uuid';
import * as z from 'zod/mini';
import { declarePiece } from '../../guide/index.ts';
import { guideOf } from '../../guide/pieces/index.ts';
import {
  causalOrder,
  type Deed,
  deed,
  type Entry,
  fold,
  Id,
  Language,
  Line,
  Measurer,
  PieceKind,
  type Sheet,
  ShopRules,
  Slot,
  System,
} from '../../job/index.ts';

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

/**
 * The first entries of the job, the same on every device that makes them from the same request: so the bench's copy
 * and the phone's merge as one, and a link that is opened twice begins one job. An entry's id rests on its content and on
 * the entries before it; where another version declares a piece otherwise, it is another entry for the same piece.
 */
export function requestEntries(request: JobRequest): Entry[] {
  const { job, device, at, by } = request;
  const entries: Entry[] = [];
  for (const { kind, payload } of requestDeeds(request)) {
    const seen = entries.slice(-1).map(({ id }) => id);
    const id = v5(canonicalize([seen, kind, payload]) ?? '', job);
    const batch = entries[0]?.id ?? id;
    entries.push({ id, job, at, who: { name: by, role: 'bench' }, device, seen, batch, kind, payload });
  }
  return entries;
}

/** The request a logbook began with, so that its link can be made again; null where it began otherwise. */
export function requestOf(entries: readonly Entry[]): JobRequest | null {
  const opened = entries.find(({ kind }) => kind === 'job.open');
  if (!opened) return null;
  const begun = causalOrder(entries.filter(({ batch }) => batch === opened.id));
  const sheet = fold(begun);
  const { request, system, fraction, details } = sheet;
  if (!request) return null;
  const asked: JobRequest = {
    job: opened.job,
    device: opened.device,
    at: opened.at,
    by: opened.who.name,
    system,
    fraction,
    customer: details.customer,
    boat: details.boat,
    pieces: sheet.pieces.map(({ id, kind, name }) => ({ kind, name, answers: answersOf(sheet, id) })),
    shop: request.shop,
    contact: request.contact,
    note: request.note,
    language: request.language,
    measurer: request.measurer,
    ...(sheet.shop ? { limits: sheet.shop } : {}),
  };
  const again = JobRequest.safeParse(asked).success ? requestEntries(asked) : [];
  const there = new Set(begun.map(({ id }) => id));
  return again.length > 0 && again.every(({ id }) => there.has(id)) ? asked : null;
}

const answersOf = ({ questions }: Sheet, piece: string): Record<string, string> =>
  Object.fromEntries(
    questions.flatMap((one) => (one.piece === piece && one.choice !== null ? [[one.slot, one.choice]] : [])),
  );

function requestDeeds(request: JobRequest): Deed[] {
  const { system, fraction, customer, boat, shop, contact, note, language, measurer, limits } = request;
  const details = [
    { field: 'customer', value: customer },
    { field: 'boat', value: boat },
  ] as const;
  return [
    deed('job.open', { name: [customer, boat].filter(Boolean).join(' – ').slice(0, 400), system, fraction }),
    ...(limits ? [deed('job.shop', limits)] : []),
    deed('job.request', { shop, contact, note, language, measurer }),
    ...details.filter(({ value }) => value !== '').map((detail) => deed('job.detail', detail)),
    ...request.pieces.flatMap((piece, place) =>
      pieceDeeds(piece, (of) => v5(`${place} ${piece.kind} ${of}`, request.job)),
    ),
  ];
}

function pieceDeeds({ kind, name, answers }: z.infer<typeof WantedPiece>, idFor: (of: string) => string): Deed[] {
  const guide = guideOf(kind);
  if (!guide) return [];
  const piece = declarePiece(guide, name, idFor);
  const known = piece.questions.flatMap(({ slot, choices }) => {
    const choice = answers[slot];
    return choice !== undefined && choices.includes(choice)
      ? [deed('question.answer', { piece: piece.id, slot, choice, text: '' })]
      : [];
  });
  return [deed('piece.add', piece), ...known];
}
