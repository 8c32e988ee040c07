import { sayShop } from '../../text/shop.ts';
import { pieceName } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { routeHash } from '../model/route.ts';
import { FittingSection } from '../parts/fitting/FittingSection.tsx';
import { KeepTemplate } from './KeepTemplate.tsx';
import { SisterForm } from './SisterForm.tsx';

/** What can be made of a job besides measuring it. */
export function JobMore({ job }: { job: OpenJob }) {
  return (
    <section class="stack">
      {job.sheet.pieces.map((piece) => (
        <div key={piece.id} class="stack">
          <h2>{pieceName(piece)}</h2>
          <a class="button" href={routeHash({ at: 'sheet', job: job.id, piece: piece.id })}>
            {sayShop().paper.sheet}
          </a>
          <KeepTemplate job={job} piece={piece} />
          <FittingSection job={job} piece={piece.id} />
        </div>
      ))}
      <SisterForm job={job} />
    </section>
  );
}
