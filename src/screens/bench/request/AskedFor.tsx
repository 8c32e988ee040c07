import { requestOf, writeLink } from '../../../core/packet/link/index.ts';
import { sayBenchLinks } from '../../../text/bench-links.ts';
import { say } from '../../../text/index.ts';
import { jobTitle, pieceName } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { TopBar } from '../../parts/TopBar.tsx';
import { LinkOut } from '../link/LinkOut.tsx';
import { useWordsOf } from '../link/use-words-of.ts';

/** A job somebody was asked to measure: its link, made again from what the job began with. */
export function AskedFor({ job }: { job: OpenJob }) {
  const words = sayBenchLinks();
  const request = requestOf(job.entries);
  const inTheirs = useWordsOf(
    request?.language,
    job.sheet.pieces.map(({ kind }) => kind),
  );
  const waiting = job.entries.every(({ who }) => who.role === 'bench');
  return (
    <div class="page link-page">
      <TopBar back={{ at: 'inbox' }} title={words.asked.title} />
      <p>
        <strong dir="auto">{jobTitle(job.sheet.details)}</strong>
        <br />
        {request ? (waiting ? words.asked.waiting : words.asked.back) : words.asked.notByLink}
      </p>
      {request && inTheirs && (
        <LinkOut
          code={writeLink({ t: 'request', request })}
          message={(address) =>
            inTheirs(() =>
              sayBenchLinks().toMeasure({
                shop: request.shop,
                contact: request.contact,
                pieces: say().dock.leave.and(request.pieces.map(pieceName)),
                boat: request.boat,
                address,
              }),
            )
          }
        />
      )}
      <a class="button" href={routeHash({ at: 'judge', job: job.id })}>
        {words.asked.open}
      </a>
    </div>
  );
}
