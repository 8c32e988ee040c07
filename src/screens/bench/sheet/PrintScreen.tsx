import { useMemo, useState } from 'preact/hooks';
import type { Paper } from '../../../core/packet/drawing/index.ts';
import { saySheet } from '../../../text/sheet.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { TopBar } from '../../parts/TopBar.tsx';
import { planOf } from '../state/plan-of.ts';
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
  const [paper, setPaper] = useState<Paper>(job.sheet.system === 'metric' ? 'a4' : 'letter');
  const drawing = useMemo(() => (job.judged ? planOf(job, piece) : null), [job, piece]);
  const back = { at: 'judge', job: job.id } as const;
  const found = job.sheet.pieces.find(({ id }) => id === piece);
  if (!found)
    return (
      <div class="page">
        <TopBar back={back} title={words.noPiece} />
      </div>
    );
  const other = as === 'sheet' ? 'tiles' : 'sheet';
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
      {(as === 'tiles' || found.flat) && (
        <a class="button" href={routeHash({ at: 'print', job: job.id, piece, as: other })}>
          {as === 'sheet' ? words.toTiles : words.toSheet}
        </a>
      )}
    </>
  );
  return as === 'sheet' ? (
    <JobSheet job={job} piece={found} drawing={drawing} paper={paper} back={back} controls={controls} />
  ) : (
    <PieceTiles drawing={drawing} judged={job.judged} paper={paper} back={back} controls={controls} />
  );
}
