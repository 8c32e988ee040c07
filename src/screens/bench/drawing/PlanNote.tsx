import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { pointLabel } from '../../model/words.ts';
import { StateMark } from '../../parts/marks.tsx';
import { withoutNames } from '../engine-words.ts';
import type { EngineView } from '../state/engine-view.ts';
import type { Marked } from './marked.ts';
import type { Scene } from './scene.ts';

interface Props {
  job: OpenJob;
  scene: Scene;
  engine: EngineView | null;
  marked: Marked;
}

/** What the drawing is, and what its signs mean. */
export function PlanNote({ job, scene, engine, marked }: Props) {
  const words = sayBench().plan;
  const floating = scene.spots.filter(({ floats }) => floats).map(({ point }) => pointLabel(job.sheet, point.id));
  return (
    <>
      <p class="small">
        {engine?.bent ? (
          <StateMark mark="stop">{pictureText(engine, job)}</StateMark>
        ) : (
          <strong>{pictureText(engine, job)}</strong>
        )}{' '}
        {scene.ovals.length > 0 && <span class="quiet">{sayBench().engine.plan.ovals(scene.factor)} </span>}
        {floating.length > 0 && <span>{sayBench().engine.plan.floats(sayBench().list(floating))} </span>}
        {scene.spots.some(({ measured }) => !measured) && <span class="quiet">{words.nominal} </span>}
        {scene.hidden > 0 && <span class="quiet">{words.hidden(scene.hidden)}</span>}
      </p>
      {(marked.any.stop || marked.any.doubt) && (
        <p class="row bench-legend small">
          {words.dashed}
          {marked.any.stop && <StateMark mark="stop">{say().general.severities.stop}</StateMark>}
          {marked.any.doubt && <StateMark mark="doubt">{say().general.severities.doubt}</StateMark>}
        </p>
      )}
    </>
  );
}

function pictureText(engine: EngineView | null, { sheet }: OpenJob): string {
  const words = sayBench().engine.plan;
  if (engine?.bent) return words.bent;
  if (!engine?.solved) return sayBench().plan.picture;
  if (engine.without.length > 0) return words.without(withoutNames(engine, sheet));
  return words.adjusted;
}
