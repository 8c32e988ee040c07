import { useState } from 'preact/hooks';
import type { SheetPoint } from '../../../core/job/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { runTitle } from '../../model/words.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { Banner } from '../../parts/marks.tsx';
import { TakenBack, UndoButton } from '../step/UndoButton.tsx';
import type { ChangeProps } from './change-props.ts';
import { OwnPoint } from './OwnPoint.tsx';
import { PointRow } from './PointRow.tsx';
import type { Said } from './point-deeds.ts';

/** The points of a piece: along each edge, the marks, the others; one of them open at a time. */
export function Points({ job, piece }: ChangeProps) {
  const [open, setOpen] = useState<string | null>(null);
  const [said, say] = useState<Said | null>(null);
  const { sheet } = job;
  const words = sayWalk().points;
  const own = sheet.points.filter(({ pieces }) => pieces.includes(piece));
  const runs = sheet.runs.filter((run) => run.piece === piece);
  const onEdges = new Set(runs.flatMap(({ points }) => points));
  const marks = own.filter(({ id, role }) => role === 'mark' && !onEdges.has(id));
  const others = own.filter(({ id, role }) => role !== 'mark' && !onEdges.has(id));
  const row = (point: SheetPoint, run: string | null) => (
    <PointRow
      key={point.id}
      {...{ job, piece, point, run }}
      open={open === `${run} ${point.id}`}
      onOpen={(wanted) => setOpen(wanted ? `${run} ${point.id}` : null)}
      onSaid={say}
    />
  );
  return (
    <>
      <PieceDrawing
        judgement={job.pieces.get(piece)}
        sheet={sheet}
        piece={piece}
        width={360}
        height={240}
        askedPoints={open ? [open.split(' ')[1] ?? ''] : []}
      />
      {said && <SaidLine said={said} />}
      {runs.map((run) => (
        <section key={run.id} class="stack">
          <h2>{runTitle(sheet, run)}</h2>
          <ol class="list">
            {run.points.flatMap((id) => own.find((point) => point.id === id) ?? []).map((point) => row(point, run.id))}
          </ol>
        </section>
      ))}
      <Group heading={words.marks} points={marks} row={(point) => row(point, null)} />
      <Group heading={words.others} points={others} row={(point) => row(point, null)} />
      <OwnPoint job={job} piece={piece} />
    </>
  );
}

function SaidLine({ said }: { said: Said }) {
  return (
    <Banner tone="good">
      <p>{said.text}</p>
      <div class="row">
        {said.to && (
          <a class="button" href={said.to}>
            {sayWalk().points.firstTape}
          </a>
        )}
        <UndoButton />
      </div>
      <TakenBack />
    </Banner>
  );
}

interface GroupProps {
  heading: string;
  points: readonly SheetPoint[];
  row: (point: SheetPoint) => preact.JSX.Element;
}

function Group({ heading, points, row }: GroupProps) {
  if (points.length === 0) return null;
  return (
    <section class="stack">
      <h2>{heading}</h2>
      <ul class="list">{points.map(row)}</ul>
    </section>
  );
}
