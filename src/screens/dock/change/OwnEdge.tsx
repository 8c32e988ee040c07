import { useState } from 'preact/hooks';
import { ownEdge, ownPicture } from '../../../core/guide/amend/index.ts';
import { uuid } from '../../../device/clock.ts';
import { sayWalk } from '../../../text/walk.ts';
import { actAll } from '../../model/open-job.ts';
import { go } from '../../model/route.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { Chips } from './Chips.tsx';
import type { ChangeProps } from './change-props.ts';
import { choosable } from './choosable.ts';

/** An edge of a person's own: its points in order, and a name. */
export function OwnEdge({ job, piece }: ChangeProps) {
  const words = sayWalk().own;
  const add = async (points: readonly string[], note: string): Promise<void> => {
    await actAll(ownEdge(piece, { points, note }, uuid));
    go({ at: 'walk', job: job.id, piece });
  };
  const asked = { question: words.edgePoints, name: words.edgeName, least: 2, act: sayWalk().points.add };
  return <PointsAndName {...{ job, piece }} {...asked} onDone={(points, note) => void add(points, note)} />;
}

/** A picture of a person's own: what it shows, and the points to mark on it. */
export function OwnPicture({ job, piece }: ChangeProps) {
  const words = sayWalk().own;
  const add = async (points: readonly string[], note: string): Promise<void> => {
    const { deeds, slot } = ownPicture(piece, { points, note }, uuid);
    await actAll(deeds);
    go({ at: 'step', job: job.id, piece, step: slot });
  };
  const asked = { question: words.picturePoints, name: words.pictureName, least: 0, act: words.takePicture };
  return <PointsAndName {...{ job, piece }} {...asked} onDone={(points, note) => void add(points, note)} />;
}

interface Props extends ChangeProps {
  question: string;
  name: string;
  /** Fewer points than this will not do. */
  least: number;
  act: string;
  onDone: (points: readonly string[], note: string) => void;
}

function PointsAndName({ job, piece, question, name, least, act, onDone }: Props) {
  const [points, setPoints] = useState<readonly string[]>([]);
  const [note, setNote] = useState('');
  const { sheet } = job;
  const all = choosable(sheet, piece);
  if (all.length < least) return <p>{sayWalk().own.tooFew}</p>;
  return (
    <>
      <PieceDrawing
        judgement={job.pieces.get(piece)}
        sheet={sheet}
        piece={piece}
        width={360}
        height={220}
        askedPoints={points}
      />
      <Chips question={question} options={all} chosen={points} onChoose={setPoints} ordered={least > 0} />
      <label class="field">
        <span>{name}</span>
        <input
          value={note}
          maxLength={120}
          autocomplete="off"
          onInput={(event) => setNote(event.currentTarget.value)}
        />
      </label>
      <button
        type="button"
        class="button main wide"
        disabled={points.length < least}
        onClick={() => onDone(points, note)}
      >
        {act}
      </button>
    </>
  );
}
