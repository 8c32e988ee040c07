import type { Subject } from '../../../core/check/index.ts';
import { type Entry, isErased, isKnownKind, payloads, type Sheet } from '../../../core/job/index.ts';

/** What an entry speaks of; empty where it cannot be told. */
export function entrySubjects(entry: Entry, sheet: Sheet): Subject[] {
  if (!isKnownKind(entry.kind) || isErased(entry)) return [];
  return aboutPeople(entry, sheet) ?? aboutTape(entry, sheet) ?? [];
}

function aboutTape({ kind, payload }: Entry, sheet: Sheet): Subject[] | null {
  switch (kind) {
    case 'take.add':
    case 'reading.drop':
    case 'reading.expect':
    case 'reading.suppose':
    case 'reading.answer':
      return subject('reading', payload.reading);
    case 'take.strike':
      return subject('reading', readingOfTake(sheet, String(payload.take))?.id);
    case 'reading.add': {
      const read = payloads['reading.add'].safeParse(payload);
      return read.success ? subject('reading', read.data.reading.id) : [];
    }
    case 'fastener.add':
      return [...subject('reading', payload.reading), ...subject('run', payload.run)];
    case 'run.detail':
    case 'run.answer':
    case 'run.points':
    case 'stretch.set':
      return subject('run', payload.run);
    case 'point.drop':
    case 'point.label':
      return subject('point', payload.point);
    case 'point.add': {
      const read = payloads['point.add'].safeParse(payload);
      return read.success ? subject('point', read.data.point.id) : [];
    }
    case 'piece.add':
      return subject('piece', payload.id);
    default:
      return null;
  }
}

function aboutPeople({ kind, payload }: Entry, sheet: Sheet): Subject[] | null {
  switch (kind) {
    case 'photo.add':
      return [...subject('shot', payload.slot), ...subject('reading', payload.reading), ...subject('run', payload.run)];
    case 'photo.answer':
      return subject('shot', payload.slot);
    case 'photo.line':
      return [...subject('run', payload.run), ...onPhoto(payload.photo, sheet)];
    case 'fitting.note': {
      const read = payloads['fitting.note'].safeParse(payload);
      return read.success && read.data.where ? subject(read.data.where.on, read.data.where.id) : [];
    }
    case 'note.add':
      return onPhoto(payload.on, sheet);
    case 'photo.mark':
      return [...subject('point', payload.point), ...onPhoto(payload.photo, sheet)];
    case 'question.answer':
      return subject('question', payload.slot);
    case 'ask.again': {
      const read = payloads['ask.again'].safeParse(payload);
      return read.success ? read.data.items.map(({ on, id }) => ({ on, id })) : [];
    }
    default:
      return null;
  }
}

/** What a picture was taken of. */
function onPhoto(id: unknown, sheet: Sheet): Subject[] {
  const photo = sheet.photos.find((candidate) => candidate.id === id);
  if (!photo) return [];
  return [...subject('shot', photo.slot), ...subject('reading', photo.reading), ...subject('run', photo.run)];
}

const subject = (on: Subject['on'], id: unknown): Subject[] => (typeof id === 'string' ? [{ on, id }] : []);

export const readingOfTake = (sheet: Sheet, take: string) =>
  sheet.readings.find((reading) => reading.takes.some((candidate) => candidate.id === take));
