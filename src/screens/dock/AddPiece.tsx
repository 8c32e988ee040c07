import { useEffect, useState } from 'preact/hooks';
import { declarePiece, type Guide } from '../../core/guide/index.ts';
import { guides } from '../../core/guide/pieces/index.ts';

import { uuid } from '../../device/clock.ts';
import { loadPieceWords, pieceWords } from '../../text/guides.ts';
import { say } from '../../text/index.ts';
import { act, type OpenJob } from '../model/open-job.ts';
import { go } from '../model/route.ts';

/** The pieces that can be made, each with a line that says how it is measured. */
export function AddPiece({ job }: { job: OpenJob }) {
  const [, shown] = useState(false);
  useEffect(() => void loadPieceWords(guides.map(({ kind }) => kind)).then(() => shown(true)), []);
  const add = async (guide: Guide): Promise<void> => {
    const piece = declarePiece(guide, say().general.pieceKinds[guide.kind], uuid);
    await act('piece.add', piece);
    const [first] = piece.walk;
    if (first) go({ at: 'step', job: job.id, piece: piece.id, step: first });
  };
  return (
    <section class="stack">
      <h2>{say().dock.begin.piece}</h2>
      <div class="choices">
        {guides.map((guide) => (
          <button key={guide.kind} type="button" class="button choice" onClick={() => void add(guide)}>
            <span>
              {say().general.pieceKinds[guide.kind]}
              <br />
              <span class="small quiet">{pieceWords(guide.kind)?.about}</span>
            </span>
          </button>
        ))}
      </div>
    </section>
  );
}
