import { type Job, pieceId, pointId, uuid } from './build.ts';

/** Adds a picture of a shot and marks points in it; gives the picture's id. */
export function photographed(job: Job, slot: string, marks: readonly string[] = [], name = slot): string {
  const photo = uuid(`photo ${name}`);
  job.add('photo.add', {
    photo,
    sha256: 'a'.repeat(64),
    mime: 'image/jpeg',
    size: 1000,
    width: 400,
    height: 300,
    piece: pieceId(),
    slot,
    placeKept: false,
  });
  for (const mark of marks) job.add('photo.mark', { photo, x: 0.5, y: 0.5, point: pointId(mark), text: '' });
  return photo;
}
