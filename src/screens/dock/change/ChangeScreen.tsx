import type { ComponentType } from 'preact';
import { sayWalk } from '../../../text/walk.ts';
import type { Change } from '../../model/route.ts';
import { TopBar } from '../../parts/TopBar.tsx';
import type { ChangeProps } from './change-props.ts';
import { OwnEdge, OwnPicture } from './OwnEdge.tsx';
import { OwnReading } from './OwnReading.tsx';
import { Points } from './Points.tsx';
import './change.css';

const PARTS: Record<Change, ComponentType<ChangeProps>> = {
  points: Points,
  reading: OwnReading,
  edge: OwnEdge,
  picture: OwnPicture,
};

/** What of a piece is changed, or added to it, while it is measured. */
export function ChangeScreen({ job, piece, what }: ChangeProps & { what: Change }) {
  const Part = PARTS[what];
  return (
    <div class="page">
      <TopBar back={{ at: 'walk', job: job.id, piece }} title={sayWalk().change[what]} />
      <Part job={job} piece={piece} />
    </div>
  );
}
