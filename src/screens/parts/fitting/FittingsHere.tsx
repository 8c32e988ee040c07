import type { Step } from '../../../core/guide/index.ts';
import type { Fitting } from '../../../core/job/index.ts';
import { sayFitting } from '../../../text/fitting.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { Banner } from '../marks.tsx';
import { fittingWhat, fittingWhere } from './fitting-words.ts';

/** At a step: what was found there when a piece like this, or this one, was fitted. */
export function FittingsHere({ job, step }: { job: OpenJob; step: Step }) {
  const named = namedBy(step);
  const notes = job.sheet.fittings.filter((note) => isHere(note, named));
  if (notes.length === 0) return null;
  return (
    <Banner tone="note">
      {notes.map((note) => (
        <p key={note.id} class="said">
          <strong>{sayFitting().here(note.from)}</strong> ({fittingWhere(job.sheet, note)}): {fittingWhat(note)}
        </p>
      ))}
    </Banner>
  );
}

/** Ids of the reading or the edge of a step and of the points at it. */
function namedBy(step: Step): ReadonlySet<string> {
  if (step.on === 'reading') return new Set([step.reading.id, ...step.reading.points]);
  if (step.on === 'run') return new Set([step.run.id, ...step.run.points]);
  return new Set();
}

const isHere = ({ where }: Fitting, named: ReadonlySet<string>): boolean => where !== null && named.has(where.id);
