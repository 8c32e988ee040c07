import type { Obstruction, Sheet } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { sayEdges } from '../../../text/edges.ts';
import { say } from '../../../text/index.ts';
import { isolated } from '../../../text/isolated.ts';
import { whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { sureText } from '../../model/sureness.ts';
import { readingTitle, readingValue } from '../names.ts';
import type { Lit } from '../state/lit.ts';
import { isSelected, toggle } from '../state/selection.ts';
import { Section } from './Section.tsx';

/** What is in the way of the cloth: where it lies, how large it is, what the cloth does about it. */
export function ThingsSection({ job, piece, lit }: { job: OpenJob; piece: string; lit: Lit }) {
  const things = job.sheet.obstructions.filter((thing) => thing.piece === piece);
  if (things.length === 0) return null;
  return (
    <Section at="things">
      {things.map((thing) => (
        <ThingShown key={thing.id} thing={thing} job={job} lit={lit.points.has(thing.point ?? '')} />
      ))}
    </Section>
  );
}

function ThingShown({ thing, job, lit }: { thing: Obstruction; job: OpenJob; lit: boolean }) {
  const { sheet } = job;
  const words = sayBench().things;
  const { names } = sayEdges();
  const { kind, label, treatment, needed, note, point } = thing;
  const told = [
    treatment ? names.treatments[treatment] : words.untreated,
    needed !== null && words.needed[needed],
    isolated(note),
    whoText(thing.who),
  ].filter((fact): fact is string => typeof fact === 'string' && fact !== '');
  return (
    <div class={`bench-row stack ${lit ? 'lit' : ''}`} data-row={`obstruction:${thing.id}`}>
      <h3>
        <button
          type="button"
          class="bench-name-button"
          disabled={point === null}
          aria-pressed={isSelected('point', point ?? '')}
          onClick={() => point !== null && toggle('point', point)}
        >
          {words.name(names.obstructions[kind], label)}
        </button>
      </h3>
      <p>{told.join(' · ')}</p>
      <p>
        {placeText(thing, job)}
        {sizesText(sheet, thing)}
      </p>
    </div>
  );
}

export function placeText({ piece, point }: Obstruction, { sheet, pieces }: OpenJob): string {
  const words = sayBench().things;
  const placed = pieces.get(piece)?.things.get(point ?? '');
  if (placed) return words.placed(sureText(placed.sure, sheet));
  const taped = sheet.readings.some(({ points, value }) => point !== null && points.includes(point) && value !== null);
  return taped ? words.notFixed : words.notTaped;
}

export function sizesText(sheet: Sheet, { id, label }: Obstruction): string {
  return sheet.readings
    .filter(({ kind, obstruction, value }) => kind === 'size' && obstruction === id && value !== null)
    .map((reading) => {
      const name = reading.of ? say().general.sizes[reading.of] : readingTitle(sheet, reading.id).replace(label, '');
      return ` ${sayBench().things.size(name, readingValue(reading, sheet))}`;
    })
    .join('');
}
