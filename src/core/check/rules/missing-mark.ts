import type { Rule } from '../rule.ts';

/**
 * A picture is there, but a point that should be marked in it is not, in any of the shot's pictures. Needed shot: doubt,
 * otherwise note. One finding a point, so that marking one leaves the others as they were.
 * numbers: photos (how many pictures were looked at).
 */
export const missingMark: Rule = {
  key: 'missing-mark',
  find(context) {
    const photos = new Map(context.sheet.photos.map((photo) => [photo.id, photo]));
    return context.sheet.shots
      .filter((shot) => shot.photos.length > 0 && shot.points.length > 0)
      .flatMap((shot) => {
        const marked = new Set(shot.photos.flatMap((id) => (photos.get(id)?.marks ?? []).map((mark) => mark.point)));
        return shot.points
          .filter((point) => !marked.has(point))
          .map((point) => ({
            severity: shot.needed ? ('doubt' as const) : ('note' as const),
            piece: shot.piece,
            slot: shot.slot,
            subjects: [
              { on: 'shot' as const, id: shot.slot },
              { on: 'point' as const, id: point },
              { on: 'piece' as const, id: shot.piece },
            ],
            numbers: { photos: shot.photos.length },
            basis: shot.photos,
          }));
      });
  },
};
