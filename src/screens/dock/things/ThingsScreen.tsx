import { type Obstruction, ObstructionKind } from '../../../core/job/index.ts';
import { sayThings } from '../../../text/things.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { go, routeHash } from '../../model/route.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { StateMark } from '../../parts/marks.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { Choice } from '../step/edge/Choice.tsx';
import { ThingPage } from './ThingPage.tsx';
import { list } from './thing-acts.ts';
import { askedNext } from './thing-view.ts';
import '../step/edge/edge.css';
import './things.css';

interface Props {
  job: OpenJob;
  piece: string;
  thing: string | null;
}

/** What is in the way of the cloth: the list, or one thing of it. */
export function ThingsScreen({ job, piece, thing }: Props) {
  const own = job.sheet.obstructions.filter((one) => one.piece === piece);
  const one = own.find(({ id }) => id === thing);
  return one ? <ThingPage key={one.id} job={job} thing={one} /> : <ThingList job={job} piece={piece} own={own} />;
}

function ThingList({ job, piece, own }: { job: OpenJob; piece: string; own: readonly Obstruction[] }) {
  const words = sayThings();
  const add = async (kind: ObstructionKind): Promise<void> =>
    go({ at: 'things', job: job.id, piece, thing: await list(job.sheet, piece, kind) });
  return (
    <div class="page">
      <TopBar back={{ at: 'walk', job: job.id, piece }} title={words.heading} />
      {own.length === 0 && <p class="quiet">{words.none}</p>}
      {own.length > 0 && (
        <>
          <PieceDrawing judgement={job.pieces.get(piece)} sheet={job.sheet} piece={piece} width={360} height={200} />
          <ol class="list" aria-label={words.listed}>
            {own.map((thing) => (
              <li key={thing.id}>
                <a class="item" href={routeHash({ at: 'things', job: job.id, piece, thing: thing.id })}>
                  <ThingRow job={job} thing={thing} />
                </a>
              </li>
            ))}
          </ol>
        </>
      )}
      <Choice
        question={words.add}
        values={ObstructionKind.options}
        names={words.names.obstructions}
        value={null}
        choose={(kind) => void add(kind)}
      />
      {own.length > 0 && (
        <a class="button main wide" href={routeHash({ at: 'walk', job: job.id, piece })}>
          {words.done}
        </a>
      )}
    </div>
  );
}

function ThingRow({ job, thing }: { job: OpenJob; thing: Obstruction }) {
  const words = sayThings();
  const { kind, label, treatment } = thing;
  const grave = job.findings.find(
    ({ severity, accepted, subjects }) =>
      severity !== 'note' && accepted === null && subjects.some(({ id }) => id === thing.id),
  );
  return (
    <>
      <span class="grow">
        <strong>{words.named(words.names.obstructions[kind], label)}</strong>{' '}
        <span class="quiet">{treatment && words.names.treatments[treatment]}</span>
      </span>
      <StateMark mark={grave?.severity ?? (askedNext(job.sheet, thing) ? 'open' : 'good')} />
    </>
  );
}
