import { type Gathered, loose, signed } from './gather.ts';
import type { Registers } from './registers.ts';
import type { SheetPhoto, SheetShot } from './sheet.ts';
import type { NoValue } from './words.ts';

/** Pictures with their marks, and the pictures that were asked for. */
export function foldPhotos(
  gathered: Gathered,
  registers: Registers,
  pieceIds: ReadonlySet<string>,
): { shots: SheetShot[]; photos: SheetPhoto[] } {
  const photos = new Map<string, SheetPhoto>();
  for (const { entry, payload } of gathered.of('photo.add')) {
    if (!pieceIds.has(payload.piece)) loose(gathered, entry);
    else if (!photos.has(payload.photo)) {
      const { photo, ...picture } = payload;
      photos.set(photo, { id: photo, entry: entry.id, ...picture, marks: [], ...signed(entry) });
    }
  }
  for (const { entry, payload } of gathered.of('photo.mark')) {
    const photo = photos.get(payload.photo);
    const { x, y, point, text } = payload;
    if (photo) photo.marks.push({ id: entry.id, x, y, point, text });
    else loose(gathered, entry);
  }
  const reasons = new Map<string, string>();
  for (const { entry, payload } of gathered.of('photo.answer')) {
    registers.set(`shot:${payload.piece}:${payload.slot}`, entry, payload.answer);
    reasons.set(entry.id, payload.reason);
  }
  const shots = gathered.of('piece.add').flatMap(({ payload }) =>
    payload.shots.map((shot): SheetShot => {
      const given = registers.get(`shot:${payload.id}:${shot.slot}`, {
        on: 'shot',
        piece: payload.id,
        subject: shot.slot,
      });
      const own = [...photos.values()].filter((photo) => photo.piece === payload.id && photo.slot === shot.slot);
      const answer = given
        ? { answer: given.value as NoValue, reason: reasons.get(given.entry.id) ?? '', ...signed(given.entry) }
        : null;
      return { ...shot, piece: payload.id, photos: own.map((photo) => photo.id), answer };
    }),
  );
  return { shots, photos: [...photos.values()] };
}
