import type { SheetPiece } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { pointLabel } from '../../model/words.ts';
import { StateMark } from '../../parts/marks.tsx';
import { boundText, namesOf, withoutNames } from '../engine-words.ts';
import { labelsOf } from '../names.ts';
import { type EngineView, engineView, type Solution } from '../state/engine-view.ts';
import type { Lit } from '../state/lit.ts';
import { PieceNumbers } from './PieceNumbers.tsx';
import { PointsTable } from './PointsTable.tsx';
import { Section } from './Section.tsx';
import { TapesThatDecide } from './TapesThatDecide.tsx';

/** Whether the shape is fixed, whether everything fits, and how sure each point is. */
export function SureSection({ job, piece, lit }: { job: OpenJob; piece: SheetPiece; lit: Lit }) {
  const words = sayBench().engine.sure;
  const engine = engineView(job, piece.id);
  return (
    <Section at="sure">
      {!job.judged && (
        <p class="quiet" aria-live="polite">
          {words.again}
        </p>
      )}
      {engine === null ? (
        job.judged && <p class="quiet">{words.nothing}</p>
      ) : (
        <>
          <EndState job={job} piece={piece.id} engine={engine} />
          {engine.shown && <Verdict job={job} engine={engine} solution={engine.shown} />}
          {engine.shown && <LeastSure job={job} engine={engine} solution={engine.shown} />}
          {engine.shown && <PointsTable job={job} piece={piece.id} engine={engine} solution={engine.shown} lit={lit} />}
          {engine.whole && <PieceNumbers solution={engine.whole} />}
        </>
      )}
    </Section>
  );
}

interface Props {
  job: OpenJob;
  engine: EngineView;
}

/** How the engine ended, in words. */
function EndState({ job, piece, engine }: Props & { piece: string }) {
  const words = sayBench().engine.sure;
  const { sheet } = job;
  const { adjustment, complete } = engine.judgement;
  if (adjustment.state === 'did-not-converge') return <StateMark mark="stop">{words.failed}</StateMark>;
  if (adjustment.state === 'two-shapes') {
    const moved = adjustment.shapes.at(-1)?.moved ?? [];
    const labels = sayBench().list(moved.map((id) => pointLabel(sheet, id)));
    const shapes = adjustment.shapes.map((_, i) => sayBench().engine.slips.shape(i + 1));
    return (
      <>
        <StateMark mark="stop">{words.shapes(labels)}</StateMark>
        <TapesThatDecide job={job} piece={piece} tapes={adjustment.tellsApart} explanations={shapes} />
      </>
    );
  }
  if (adjustment.state !== 'solved') {
    const { floating, state } = adjustment;
    const labels = sayBench().list(floating.map(({ point, ways }) => words.ways(pointLabel(sheet, point), ways)));
    return (
      <StateMark mark="stop">
        {state === 'singular' ? words.singular(labels) : words.floating(floating.length, labels)}
      </StateMark>
    );
  }
  const open = sheet.readings.filter((one) => one.piece === piece && one.needed && one.state === 'open');
  const missing = open.filter(({ kind }) => kind !== 'running').map(({ id }) => id);
  return (
    <>
      {complete || missing.length === 0 ? (
        <StateMark mark="good">{words.solved}</StateMark>
      ) : (
        <StateMark mark="open">{words.open(namesOf(missing, sheet))}</StateMark>
      )}
      {adjustment.solution.handedness === 'open' && <p class="small">{words.mirrored}</p>}
    </>
  );
}

/** Whether everything that was read fits together; cannot tell is neither yes nor no. */
function Verdict({ job, engine, solution }: Props & { solution: Solution }) {
  const words = sayBench().engine.sure;
  const spare = <span class="small quiet">({words.spare(solution.freedom)})</span>;
  if (engine.whole?.doubted)
    return (
      <>
        <StateMark mark="doubt">{words.doubted}</StateMark>
        <BentShape engine={engine} />
        {engine.without.length > 0 && (
          <p>
            {words.fitsWithout(withoutNames(engine, job.sheet))} {spare}
          </p>
        )}
      </>
    );
  if (engine.bent) return <BentShape engine={engine} />;
  if (solution.globalTest.verdict === 'cannot tell') return <StateMark mark="note">{words.cannotTell}</StateMark>;
  return (
    <StateMark mark="good">
      <span>
        {words.fits} {spare}
      </span>
    </StateMark>
  );
}

function BentShape({ engine: { bent } }: Pick<Props, 'engine'>) {
  const words = sayBench().engine.sure;
  if (!bent) return null;
  return <StateMark mark="stop">{words.bent}</StateMark>;
}

function LeastSure({ job, engine, solution }: Props & { solution: Solution }) {
  const needed = new Set(engine.judgement.network.points.filter((point) => point.needed).map(({ id }) => id));
  const ranked = solution.points
    .filter(({ id, relative95 }) => needed.has(id) && relative95 !== null)
    .sort((a, b) => (b.relative95 ?? 0) - (a.relative95 ?? 0));
  const [least] = ranked;
  if (!engine.solved || engine.bent || !least || least.relative95 === null) return null;
  return <p>{sayBench().engine.sure.least(labelsOf(job.sheet, [least.id]), boundText(least.relative95, job.sheet))}</p>;
}
