import { useMemo } from 'preact/hooks';
import { sayShop } from '../../text/shop.ts';
import type { OpenJob } from '../model/open-job.ts';
import { routeHash } from '../model/route.ts';
import { TopBar } from '../parts/TopBar.tsx';
import { Paper } from './Paper.tsx';

/** A piece of a job as a blank sheet: what it asks as it stands, and none of what was measured, which would lead a second look. */
export function PiecePaper({ job, piece }: { job: OpenJob; piece: string }) {
  const { entries } = job;
  const shown = useMemo(() => ({ entries, id: piece }), [entries, piece]);
  if (!job.sheet.pieces.some(({ id }) => id === piece))
    return (
      <div class="page">
        <TopBar back={{ at: 'job', job: job.id }} title={sayShop().paper.noPiece} />
      </div>
    );
  return (
    <Paper piece={shown} back={{ at: 'job', job: job.id }}>
      <a class="button wide" href={routeHash({ at: 'walk', job: job.id, piece })}>
        {sayShop().paper.typeIn}
      </a>
    </Paper>
  );
}
