import canonicalize from 'canonicalize';
import { v5 } from 'uuid';
import { shopFaults } from '../../check/shop-fields.ts';
import { declarePiece } from '../../guide/index.ts';
import { guideOf } from '../../guide/pieces/index.ts';
import { causalOrder, type Deed, deed, type Entry, fold, type Sheet } from '../../job/index.ts';
import type { LinkRefusal } from './read-link.ts';
import { JobRequest } from './request.ts';

/** Why a request that was read all the same begins no job: newer, a piece this version has no guide for; unreadable, limits no shop can mean. */
export function requestFault({ pieces, limits }: JobRequest): Extract<LinkRefusal, 'newer' | 'unreadable'> | null {
  if (pieces.some(({ kind }) => guideOf(kind) === undefined)) return 'newer';
  return limits && shopFaults(limits).length > 0 ? 'unreadable' : null;
}

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

function pieceDeeds({ kind, name, answers }: JobRequest['pieces'][number], idFor: (of: string) => string): Deed[] {
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
