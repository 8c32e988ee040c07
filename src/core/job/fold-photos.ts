import { isErased, payloads } from './entries.ts';
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
  const photos = foldPictures(gathered, pieces);
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

function foldPictures(gathered: Gathered, pieces: Pieces): Map<string, SheetPhoto> {
  const photos = new Map<string, SheetPhoto>();
  for (const { entry, payload } of gathered.of('photo.add')) {
    if (!pieces.ids.has(payload.piece)) loose(gathered, entry);
    else if (!photos.has(payload.photo)) {
      const { photo, ...picture } = payload;
      photos.set(photo, { id: photo, entry: entry.id, ...picture, marks: [], lines: [], ...signed(entry) });
    }
  }
  const wentWith = wentWithPicture(gathered);
  for (const { entry, payload } of gathered.of('photo.mark')) {
    const photo = photos.get(payload.photo);
    const { x, y, point, text } = payload;
    if (photo) photo.marks.push({ id: entry.id, x, y, point, text });
    else if (!wentWith(entry.id, payload.photo)) loose(gathered, entry);
  }
  for (const { entry, payload } of gathered.of('photo.line')) {
    const { photo: id, ...line } = payload;
    const photo = photos.get(id);
    if (photo) photo.lines.push({ id: entry.id, ...line });
    else if (!wentWith(entry.id, id)) loose(gathered, entry);
  }
  return photos;
}

/**
 * Whether what was put on a picture went with it: the picture was taken back, or withdrawn. A withdrawn one has no id left; then
 * whoever made the mark had seen it.
 */
function wentWithPicture(gathered: Gathered): (entry: string, photo: string) => boolean {
  const takenBack = new Set<string>();
  const withdrawn: string[] = [];
  for (const entry of gathered.ordered) {
    if (entry.kind !== 'photo.add') continue;
    if (isErased(entry)) withdrawn.push(entry.id);
    else if (!gathered.isInForce(entry.id)) {
      const parsed = payloads['photo.add'].safeParse(entry.payload);
      if (parsed.success) takenBack.add(parsed.data.photo);
    }
  }
  return (entry, photo) => takenBack.has(photo) || withdrawn.some((id) => gathered.causality.saw(entry, id));
}
