import { requestOf, writeLink } from '../../../core/packet/link/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { sayBenchLinks } from '../../../text/bench-links.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { jobTitle } from '../../model/words.ts';
import { TopBar } from '../../parts/TopBar.tsx';
import { LinkOut } from '../link/LinkOut.tsx';

/** A job somebody was asked to measure: its link, made again from what the job began with. */
export function AskedFor({ job }: { job: OpenJob }) {
  const words = sayBenchLinks();
  const request = requestOf(job.entries);
  const waiting = job.entries.every(({ who }) => who.role === 'bench');
  return (
    <div class="page link-page">
      <TopBar back={{ at: 'inbox' }} title={words.asked.title} />
      <p>
        <strong dir="auto">{jobTitle(job.sheet.details)}</strong>
        <br />
        {request ? (waiting ? words.asked.waiting : words.asked.back) : words.asked.notByLink}
      </p>
      {request && (
        <LinkOut
          code={writeLink({ t: 'request', request })}
          message={(address) =>
            words.toMeasure({
              shop: request.shop,
              contact: request.contact,
              pieces: sayBench().list(request.pieces.map(({ name }) => name)),
              boat: request.boat,
              address,
            })
          }
        />
      )}
      <a class="button" href={routeHash({ at: 'judge', job: job.id })}>
        {words.asked.open}
      </a>
    </div>
  );
}
