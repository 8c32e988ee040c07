import { useState } from 'preact/hooks';
import { sketchPiece } from '../../../core/cloth/index.ts';
import type { Obstruction } from '../../../core/job/index.ts';
import { sayThings } from '../../../text/things.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { adjustedPlaces } from '../../model/sureness.ts';
import { pointLabel } from '../../model/words.ts';
import { byPhoto, measureOff, tapeFrom } from './thing-acts.ts';
import { bestHooks, hooks, nearestEdges, nearOf } from './thing-view.ts';

/** How a thing's place is measured. The marks whose tapes cross best there are chosen already; a tap chooses others. */
export function PlaceAsk({ job, thing }: { job: OpenJob; thing: Obstruction }) {
  const { sheet } = job;
  const words = sayThings();
  const near = nearOf(sheet, thing) ?? [0, 0, 0];
  const { places } = sketchPiece(sheet, thing.piece, adjustedPlaces(job.pieces.get(thing.piece)));
  const candidates = hooks(sheet, thing.piece);
  const [edge] = nearestEdges(sheet, thing.piece, places, near);
  const [chosen, setChosen] = useState<readonly string[]>(() => bestHooks(candidates, places, near));
  const toggle = (id: string): void =>
    setChosen(chosen.includes(id) ? chosen.filter((other) => other !== id) : [...chosen, id]);
  return (
    <section class="stack">
      <h2>{words.place}</h2>
      <p class="quiet">{words.from}</p>
      <div class="row">
        {candidates.map(({ id, label }) => (
          <button key={id} type="button" class="button" aria-pressed={chosen.includes(id)} onClick={() => toggle(id)}>
            {label}
          </button>
        ))}
      </div>
      <div class="choices">
        <button
          type="button"
          class="button choice"
          disabled={chosen.length < 2}
          onClick={() => void tapeFrom(thing, chosen)}
        >
          {words.tapes}
        </button>
        {edge && (
          <button type="button" class="button choice" onClick={() => void measureOff(thing, edge)}>
            {words.offset}
            <span class="quiet small">{edge.map((id) => pointLabel(sheet, id)).join('–')}</span>
          </button>
        )}
        <button type="button" class="button choice" onClick={() => void byPhoto(thing)}>
          {words.photo}
        </button>
      </div>
    </section>
  );
}
