import { useRef, useState } from 'preact/hooks';
import type { PhotoMark, ReferenceKind, SheetPhoto } from '../../../core/job/index.ts';
import { act, actAll, deed } from '../../model/open-job.ts';
import type { Place } from '../../parts/photo/Overlay.tsx';

/** What the next place on the picture will be. moves: the mark that goes there. */
export type Hand =
  | { on: 'mark'; point: string | null; text: string; moves: PhotoMark | null }
  | { on: 'edge'; run: string; path: readonly Place[] }
  | { on: 'reference'; reference: ReferenceKind; length: number | null; text: string; path: readonly Place[] };

export interface HandTools {
  hand: Hand | null;
  /** It was taken up by the person, not asked for. */
  taken: boolean;
  take(hand: Hand): void;
  /** Lets go of what was taken up; what is asked for is in the hand again. */
  drop(): void;
  place(at: Place): void;
  lastBack(): void;
  finish(): void;
}

/** What a person has in hand over a picture: the point asked for, unless they took up something else. */
export function useHand(photo: SheetPhoto, asked: string | null): HandTools {
  const [taken, take] = useState<Hand | null>(null);
  // Two taps in quick succession must not both be the point that was asked for.
  const busy = useRef(false);
  const hand: Hand | null = taken ?? (asked === null ? null : { on: 'mark', point: asked, text: '', moves: null });
  const drop = (): void => take(null);
  const doing = async (work: Promise<unknown>): Promise<void> => {
    busy.current = true;
    drop();
    try {
      await work;
    } finally {
      busy.current = false;
    }
  };
  const place = (at: Place): void => {
    if (!hand || busy.current) return;
    if (hand.on === 'mark') void doing(putMark(photo, hand, at));
    else if (hand.on === 'edge') take({ ...hand, path: [...hand.path, at] });
    else if (hand.path.length === 0) take({ ...hand, path: [at] });
    else void doing(putLine(photo, { ...hand, path: [...hand.path, at] }));
  };
  return {
    hand,
    taken: taken !== null,
    take,
    drop,
    place,
    lastBack: () => {
      if (hand && hand.on !== 'mark') take({ ...hand, path: hand.path.slice(0, -1) });
    },
    finish: () => {
      if (hand?.on === 'edge' && hand.path.length > 1) void doing(putLine(photo, hand));
    },
  };
}

/** A mark that is moved, or made anew for the same point, goes from its old place. */
function putMark(photo: SheetPhoto, hand: Extract<Hand, { on: 'mark' }>, { x, y }: Place): Promise<unknown> {
  const { point, text, moves } = hand;
  const before = moves ?? (point === null ? undefined : photo.marks.find((mark) => mark.point === point));
  return actAll([
    ...(before ? [deed('undo', { entry: before.id })] : []),
    deed('photo.mark', { photo: photo.id, x, y, point, text }),
  ]);
}

function putLine(photo: SheetPhoto, hand: Exclude<Hand, { on: 'mark' }>): Promise<unknown> {
  const common = { photo: photo.id, path: hand.path.map(({ x, y }) => ({ x, y })) };
  return hand.on === 'edge'
    ? act('photo.line', { ...common, of: 'edge', run: hand.run, reference: null, length: null, text: '' })
    : act('photo.line', {
        ...common,
        of: 'reference',
        run: null,
        reference: hand.reference,
        length: hand.length,
        text: hand.text,
      });
}
