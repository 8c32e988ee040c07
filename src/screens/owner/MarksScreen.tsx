import { useState } from 'preact/hooks';
import type { SheetPiece } from '../../core/job/index.ts';
import { sayOwner } from '../../text/owner.ts';
import { PhotoDesk } from '../dock/photo/PhotoDesk.tsx';
import { wordsOfPoint } from '../dock/step-words.ts';
import { pieceName } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';
import { PlainText } from '../parts/lesson/PlainWords.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { OnFromMarks } from './MarksOffer.tsx';

/** Which bit of tape goes where, and a photo of them with every number tapped. */
export function MarksScreen({ job }: { job: OpenJob }) {
  const words = sayOwner().marks;
  return (
    <div class="page">
      <TopBar back={{ at: 'job', job: job.id }} title={words.heading} />
      {job.sheet.pieces.length === 0 ? <p>{words.noPiece}</p> : <p>{words.how}</p>}
      {job.sheet.pieces.map((piece) => (
        <MarksOf key={piece.id} job={job} piece={piece} />
      ))}
      <OnFromMarks job={job} />
    </div>
  );
}

function MarksOf({ job, piece }: { job: OpenJob; piece: SheetPiece }) {
  const { sheet } = job;
  const points = sheet.points.filter(({ pieces, replacedBy }) => pieces.includes(piece.id) && replacedBy === null);
  const [shown, setShown] = useState(points[0]?.id ?? '');
  const [stuck, setStuck] = useState<readonly string[]>([]);
  const words = sayOwner().marks;
  const label = points.find(({ id }) => id === shown)?.label ?? '';
  const tick = (id: string): void =>
    setStuck(stuck.includes(id) ? stuck.filter((other) => other !== id) : [...stuck, id]);
  const photos = sheet.photos.filter((photo) => photo.piece === piece.id && isFree(photo));
  return (
    <section class="stack">
      <h2>{pieceName(piece)}</h2>
      <div class="marks-drawing">
        <p class="small">{words.where(label)}</p>
        <PieceDrawing
          judgement={job.pieces.get(piece.id)}
          sheet={sheet}
          piece={piece.id}
          width={360}
          height={200}
          askedPoints={[shown]}
          values="none"
        />
      </div>
      <p class="quiet small">{words.list}</p>
      <ul class="list">
        {points.map((point) => {
          const known = wordsOfPoint(sheet, point.id);
          return (
            <li key={point.id} class="mark-row">
              <input
                type="checkbox"
                aria-label={point.label}
                checked={stuck.includes(point.id)}
                onChange={() => tick(point.id)}
              />
              <button
                type="button"
                class="mark-name"
                aria-pressed={point.id === shown}
                aria-label={words.where(point.label)}
                onClick={() => setShown(point.id)}
              >
                {point.label}
              </button>
              <div class="grow">
                <PlainText text={[known?.name, known?.where].filter(Boolean).join(', ')} kind={piece.kind} />
              </div>
            </li>
          );
        })}
      </ul>
      <p class="quiet">{words.stuck(stuck.length, points.length)}</p>
      <p>{words.keep}</p>
      <h2>{words.photo}</h2>
      <p>{words.photoHow}</p>
      <PhotoDesk
        job={job}
        at={{ job: job.id, piece: piece.id, step: piece.walk[0] ?? 'marks', slot: null }}
        photos={photos}
        points={points.map(({ id }) => id)}
        title={words.heading}
      />
    </section>
  );
}

/** Taken for no step: a picture of the marks. */
const isFree = ({
  slot,
  reading,
  run,
}: {
  slot: string | null;
  reading?: string | undefined;
  run?: string | undefined;
}) => slot === null && reading === undefined && run === undefined;
