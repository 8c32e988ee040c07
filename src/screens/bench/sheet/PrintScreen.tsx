import { useMemo, useState } from 'preact/hooks';
import { type Drawing, type Paper, tilesFor } from '../../../core/packet/drawing/index.ts';
import { sayTiles } from '../../../text/drawing.ts';
import { saySheet } from '../../../text/sheet.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { TopBar } from '../../parts/TopBar.tsx';
import { planOf } from '../state/plan-of.ts';
import { usualPaper } from '../state/real-size.ts';
import { JobSheet } from './JobSheet.tsx';
import { PieceTiles } from './PieceTiles.tsx';
import '../../paper/paper.css';
import '../../parts/photo/photo.css';
import './sheet.css';

interface Props {
  job: OpenJob;
  piece: string;
  as: 'sheet' | 'tiles';
}

/** A piece of a job on paper: its job sheet, or itself in real size. */
export function PrintScreen({ job, piece, as }: Props) {
  const words = saySheet();
  const [paper, setPaper] = useState<Paper>(usualPaper(job));
  const drawing = useMemo(() => (job.judged ? planOf(job, piece) : null), [job, piece]);
  const back = { at: 'judge', job: job.id } as const;
  const found = job.sheet.pieces.find(({ id }) => id === piece);
  if (!found)
    return (
      <div class="page">
        <TopBar back={back} title={words.noPiece} />
      </div>
    );
  const controls = (
    <>
      <label class="field">
        <span>{words.paper}</span>
        <select
          value={paper}
          onChange={(e) => setPaper(e.currentTarget.value === 'a4' ? 'a4' : 'letter')}
          data-testid="paper"
        >
          <option value="letter">{words.papers.letter}</option>
          <option value="a4">{words.papers.a4}</option>
        </select>
      </label>
      {as === 'tiles' ? (
        <a class="button" href={routeHash({ at: 'print', job: job.id, piece, as: 'sheet' })}>
          {words.toSheet}
        </a>
      ) : (
        found.flat && drawing && <ToTiles drawing={drawing} paper={paper} job={job.id} piece={piece} />
      )}
    </>
  );
  return as === 'sheet' ? (
    <JobSheet job={job} piece={found} drawing={drawing} paper={paper} back={back} controls={controls} />
  ) : (
    <PieceTiles drawing={drawing} judged={job.judged} paper={paper} back={back} controls={controls} />
  );
}

/** The same piece in real size, with how many sheets that takes; where it is not printed so, why. */
function ToTiles({ drawing, paper, job, piece }: { drawing: Drawing; paper: Paper; job: string; piece: string }) {
  const offer = useMemo(() => tilesFor(drawing, paper), [drawing, paper]);
  if (!offer.ok) return <p class="quiet">{sayTiles().refused(offer)}</p>;
  return (
    <a class="button" href={routeHash({ at: 'print', job, piece, as: 'tiles' })}>
      {saySheet().toTiles(offer.tiling.tiles.length)}
    </a>
  );
}
