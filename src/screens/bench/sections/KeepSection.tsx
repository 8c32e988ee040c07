import type { SheetPiece } from '../../../core/job/index.ts';
import { sayShop } from '../../../text/shop.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { KeepTemplate } from '../../shop/KeepTemplate.tsx';
import { Section } from './Section.tsx';

/** What can be kept of a piece, and its sheet on paper. */
export function KeepSection({ job, piece }: { job: OpenJob; piece: SheetPiece }) {
  return (
    <Section at="keep">
      <KeepTemplate job={job} piece={piece} />
      <a class="button plain" href={routeHash({ at: 'sheet', job: job.id, piece: piece.id })}>
        {sayShop().paper.sheet}
      </a>
    </Section>
  );
}
