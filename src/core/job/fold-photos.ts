import type { Pieces } from './fold-pieces.ts';
import { type Gathered, loose, signed } from './gather.ts';
import type { Registers } from './registers.ts';
import type { SheetPhoto, SheetShot } from './sheet.ts';
import type { NoValue } from './words.ts';

/** Pictures with their marks, and the pictures that were asked for. */
export function foldPhotos(
  gathered: Gathered,
  registers: Registers,
  pieces: Pieces,
): { shots: SheetShot[]; photos: SheetPhoto[] } {
  const photos = new Map<string, SheetPhoto>();
  for (const { entry, payload } of gathered.of('photo.add')) {
    if (!pieces.ids.has(payload.piece)) loose(gathered, entry);
    else if (!photos.has(payload.photo)) {
      const { photo, ...picture } = payload;
      photos.set(photo, { id: photo, entry: entry.id, ...picture, marks: [], lines: [], ...signed(entry) });
    }
  }
  for (const { entry, payload } of gathered.of('photo.mark')) {
    const photo = photos.get(payload.photo);
    const { x, y, point, text } = payload;
    if (photo) photo.marks.push({ id: entry.id, x, y, point, text });
    else loose(gathered, entry);
  }
  for (const { entry, payload } of gathered.of('photo.line')) {
    const { photo: id, ...line } = payload;
    const photo = photos.get(id);
    if (photo) photo.lines.push({ id: entry.id, ...line });
    else loose(gathered, entry);
  }
  const reasons = new Map<string, string>();
  for (const { entry, payload } of gathered.of('photo.answer')) {
    registers.set(`shot:${payload.piece}:${payload.slot}`, entry, payload.answer);
    reasons.set(entry.id, payload.reason);
  }
  const declared = [
    ...gathered.of('piece.add').flatMap(({ payload }) => payload.shots.map((shot) => ({ shot, piece: payload.id }))),
    ...gathered.of('shot.add').flatMap(({ entry, payload: { piece, shot } }) => {
      if (pieces.ids.has(piece)) return [{ shot, piece }];
      loose(gathered, entry);
      return [];
    }),
  ];
  const shots = declared.flatMap(({ shot, piece }): SheetShot[] => {
    const given = registers.get(`shot:${piece}:${shot.slot}`, { on: 'shot', piece, subject: shot.slot });
    const own = [...photos.values()].filter((photo) => photo.piece === piece && photo.slot === shot.slot);
    const answer = given
      ? { answer: given.value as NoValue, reason: reasons.get(given.entry.id) ?? '', ...signed(given.entry) }
      : null;
    const points = pieces.drops.kept(piece, shot.points);
    const asked = pieces.holds(shot.when, piece);
    if (!asked && own.length === 0) return [];
    return [{ ...shot, points, needed: shot.needed && asked, piece, photos: own.map((photo) => photo.id), answer }];
  });
  return { shots, photos: [...photos.values()] };
}
