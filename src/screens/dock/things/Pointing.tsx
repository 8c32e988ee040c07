import { useState } from 'preact/hooks';
import { drawnTowards, type Place, sketchPiece } from '../../../core/cloth/index.ts';
import { seenFrom } from '../../../core/geometry/index.ts';
import { sayThings } from '../../../text/things.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { adjustedPlaces } from '../../model/sureness.ts';
import { faceOfPiece } from '../../parts/drawing/face.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { fitDrawing } from '../../parts/drawing/project.ts';

const [WIDTH, HEIGHT] = [360, 260];
const STEP = 0.03;

interface Props {
  job: OpenJob;
  piece: string;
  onPoint: (near: Place) => void;
}

/** The drawing, to point at a place: tapped, or steered by the arrow keys and Enter. */
export function Pointing({ job, piece, onPoint }: Props) {
  const [cursor, setCursor] = useState<{ x: number; y: number } | null>(null);
  const point = (x: number, y: number): void => onPoint(placeAt(job, piece, x, y));
  const onKey = (event: KeyboardEvent): void => {
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    const from = cursor ?? { x: 0.5, y: 0.5 };
    if (step) setCursor({ x: clamp(from.x + (step[0] ?? 0) * STEP), y: clamp(from.y + (step[1] ?? 0) * STEP) });
    else if (event.key === 'Enter' && cursor) point(cursor.x, cursor.y);
    else return;
    event.preventDefault();
  };
  return (
    <div class="pointing">
      <PieceDrawing judgement={job.pieces.get(piece)} sheet={job.sheet} piece={piece} width={WIDTH} height={HEIGHT} />
      <button
        type="button"
        class="pointing-at"
        aria-label={sayThings().steer}
        data-testid="point"
        onKeyDown={onKey}
        onClick={(event) => {
          if (event.detail === 0) return;
          const box = event.currentTarget.getBoundingClientRect();
          point(clamp((event.clientX - box.left) / box.width), clamp((event.clientY - box.top) / box.height));
        }}
      >
        {cursor && <span class="pointing-cursor" style={{ left: `${cursor.x * 100}%`, top: `${cursor.y * 100}%` }} />}
      </button>
    </div>
  );
}

const clamp = (value: number): number => Math.min(1, Math.max(0, value));

/** The place in the boat at fractions of the drawing's width and height. */
function placeAt({ sheet, pieces }: OpenJob, piece: string, x: number, y: number): Place {
  const drawn = sketchPiece(sheet, piece, adjustedPlaces(pieces.get(piece)));
  const face = faceOfPiece(sheet, piece);
  const { to, scale } = fitDrawing(drawn, face, WIDTH, HEIGHT);
  const [zeroX, zeroY] = to([0, 0, 0]);
  const [forward, port, up] = seenFrom(face, [(x * WIDTH - zeroX) / scale, (zeroY - y * HEIGHT) / scale]);
  return [Math.round(forward) * drawnTowards(sheet, piece), Math.round(port), Math.round(up)];
}
