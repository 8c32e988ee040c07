import { entriesForDock, writeLink } from '../../../core/packet/link/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { sayBenchLinks } from '../../../text/bench-links.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { jobTitle } from '../../model/words.ts';
import { LinkOut } from '../link/LinkOut.tsx';
import { thingName } from '../names.ts';

/** What is asked again as a link and a code, where the packet need not go along. */
export function AskByLink({ job }: { job: OpenJob }) {
  const words = sayBenchLinks();
  const names = job.sheet.asks.flatMap(({ piece, items }) =>
    items.flatMap(({ open, on, id }) => (open ? [thingName(job.sheet, piece, on, id)] : [])),
  );
  const title = jobTitle(job.sheet.details);
  return (
    <div class="stack">
      <p class="small quiet">{words.again.how}</p>
      <LinkOut
        code={writeLink({ t: 'ask', ask: { job: job.id, entries: entriesForDock(job.entries) } })}
        message={(address) => words.toAskAgain({ job: title, names: sayBench().list([...new Set(names)]), address })}
      />
    </div>
  );
}
