import { useEffect, useRef, useState } from 'preact/hooks';
import type { PhotoMark, Sheet, SheetPhoto } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { act } from '../../model/open-job.ts';
import { pointLabel } from '../../model/words.ts';
import { PhotoDoubt } from '../../parts/photo/PhotoDoubt.tsx';
import { edgeName, markText } from '../../parts/photo/photo-words.ts';
import { LinesOn, MarksOn, NotesOn } from './OnPhoto.tsx';
import { PhotoTools } from './PhotoTools.tsx';
import { PlaceOnPhoto } from './PlaceOnPhoto.tsx';
import { type Hand, type HandTools, useHand } from './use-hand.ts';

interface Props {
  job: OpenJob;
  photo: SheetPhoto;
  title: string;
  points: readonly string[];
  /** Those of them that are on none of the pictures taken here. */
  unmarked: readonly string[];
  /** The picture was withdrawn; with what there is to say of it. */
  onGone: (message: string) => void;
}

/** One picture to be marked: what is asked, the picture, what is on it, and what else can be put there. */
export function OpenPhoto({ job, photo, title, points, unmarked, onGone }: Props) {
  const { sheet } = job;
  const tools = useHand(photo, unmarked[0] ?? null);
  const { hand } = tools;
  const [picked, setPicked] = useState<string | null>(null);
  const top = useRef<HTMLParagraphElement>(null);
  // What was chosen below the picture is done on the picture.
  useEffect(() => {
    if (tools.taken) top.current?.scrollIntoView({ block: 'nearest' });
  }, [tools.taken]);
  const held = hand?.on === 'mark' ? (hand.moves ?? undefined) : undefined;
  const pick = (mark: PhotoMark): void => tools.take({ on: 'mark', point: mark.point, text: mark.text, moves: mark });
  return (
    <section class="stack" aria-label={title}>
      <PhotoDoubt sha256={photo.sha256} />
      <p ref={top} class={hand ? 'photo-ask mark-ask' : 'photo-ask quiet'} aria-live="polite">
        {prompt(hand, sheet, points.length > 0)}
      </p>
      <PlaceOnPhoto
        photo={photo}
        sheet={sheet}
        title={title}
        path={hand && hand.on !== 'mark' ? hand.path : undefined}
        held={held}
        onPlace={hand ? tools.place : null}
      />
      <InHand tools={tools} />
      <MarksOn photo={photo} sheet={sheet} held={held} onPick={pick} />
      <LinesOn photo={photo} sheet={sheet} />
      <NotesOn photo={photo} sheet={sheet} />
      <PhotoTools
        {...{ job, photo, points, tools, onGone }}
        open={picked}
        onOpen={(which) => {
          tools.drop();
          setPicked(which);
        }}
      />
    </section>
  );
}

/** What the next tap on the picture will be. */
function prompt(hand: Hand | null, sheet: Sheet, asked: boolean): string {
  const words = sayPhotos();
  if (!hand) return asked ? words.allMarked : '';
  if (hand.on === 'mark') {
    if (hand.moves) return words.markMoved(markText(hand.moves, sheet));
    return hand.point === null ? words.markNoted(hand.text) : words.mark(pointLabel(sheet, hand.point));
  }
  if (hand.on === 'edge')
    return hand.path.length === 0 ? words.edgeFirst(edgeName(sheet, hand.run)) : words.edgeMore(hand.path.length);
  return hand.path.length === 0 ? words.referenceHow[hand.reference] : words.secondEnd;
}

/** What can be done with what is in hand, apart from placing it. */
function InHand({ tools }: { tools: HandTools }) {
  const { hand } = tools;
  const words = sayPhotos();
  if (!hand) return null;
  const { moves } = hand.on === 'mark' ? hand : { moves: null };
  const path = hand.on === 'mark' ? [] : hand.path;
  return (
    <>
      <p class="quiet small">{words.press}</p>
      {tools.taken && (
        <div class="row">
          {hand.on === 'edge' && (
            <button type="button" class="button main grow" disabled={path.length < 2} onClick={tools.finish}>
              {words.finish}
            </button>
          )}
          {path.length > 0 && (
            <button type="button" class="button" onClick={tools.lastBack}>
              {words.lastBack}
            </button>
          )}
          {moves && (
            <button
              type="button"
              class="button"
              onClick={() => {
                tools.drop();
                void act('undo', { entry: moves.id });
              }}
            >
              {words.removeMark}
            </button>
          )}
          <button type="button" class="button plain" onClick={tools.drop}>
            {moves ? words.leaveMark : say().general.cancel}
          </button>
        </div>
      )}
    </>
  );
}
