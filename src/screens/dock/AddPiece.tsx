import { useEffect, useState } from 'preact/hooks';
import { declarePiece, type Guide } from '../../core/guide/index.ts';
import { guides } from '../../core/guide/pieces/index.ts';
import type { PieceDeclaration } from '../../core/job/index.ts';
import { uuid } from '../../device/clock.ts';
import { loadPieceWords, pieceWords } from '../../text/guides.ts';
import { say } from '../../text/index.ts';
import { sayWalk } from '../../text/walk.ts';
import { act, type OpenJob } from '../model/open-job.ts';
import { go } from '../model/route.ts';
import { OwnPieces } from '../shop/OwnPieces.tsx';
import { FreePiece } from './FreePiece.tsx';
import { ShareMarks, sharedWith } from './ShareMarks.tsx';

/** The pieces that can be made, each with a line that says how it is measured. */
export function AddPiece({ job }: { job: OpenJob }) {
  const [, shown] = useState(false);
  const [chosen, choose] = useState<Guide | 'free' | null>(null);
  useEffect(() => void loadPieceWords(guides.map(({ kind }) => kind)).then(() => shown(true)), []);
  const add = async (guide: Guide, slots: ReadonlyMap<string, string>): Promise<void> => {
    await begin(declarePiece(guide, say().general.pieceKinds[guide.kind], uuid, sharedOf(job, slots)));
  };
  const begin = async (piece: PieceDeclaration): Promise<void> => {
    await act('piece.add', piece);
    const [first] = piece.walk;
    if (first) go({ at: 'step', job: job.id, piece: piece.id, step: first });
  };
  if (chosen === 'free') return <FreePiece job={job} onCancel={() => choose(null)} />;
  if (chosen)
    return (
      <ShareMarks job={job} guide={chosen} onCancel={() => choose(null)} onDone={(slots) => void add(chosen, slots)} />
    );
  const pick = (guide: Guide): void => {
    if (sharedWith(job.sheet, guide)) choose(guide);
    else void add(guide, new Map());
  };
  const { pieceKinds } = say().general;
  return (
    <section class="stack">
      <h2>{say().dock.begin.piece}</h2>
      <div class="choices">
        {guides.map((guide) => (
          <PieceButton
            key={guide.kind}
            name={pieceKinds[guide.kind]}
            about={pieceWords(guide.kind)?.about ?? ''}
            onPick={() => pick(guide)}
          />
        ))}
        <PieceButton name={pieceKinds.free} about={sayWalk().free.about} onPick={() => choose('free')} />
      </div>
      <OwnPieces onChosen={begin} />
    </section>
  );
}

/** What the new piece takes over: points by the slots of its guide, and what is asked between them already. */
function sharedOf({ sheet }: OpenJob, slots: ReadonlyMap<string, string>) {
  const declared = sheet.points.map(({ pieces, replacedBy, ...point }) => [point.id, point] as const);
  const byId = new Map(declared);
  const points = new Map([...slots].flatMap(([slot, id]) => [[slot, byId.get(id)] as const]).filter(isThere));
  return { points, readings: sheet.readings };
}

const isThere = <P,>(pair: readonly [string, P | undefined]): pair is readonly [string, P] => pair[1] !== undefined;

function PieceButton({ name, about, onPick }: { name: string; about: string; onPick: () => void }) {
  return (
    <button type="button" class="button choice" onClick={onPick}>
      <span>
        {name}
        <br />
        <span class="small quiet">{about}</span>
      </span>
    </button>
  );
}
