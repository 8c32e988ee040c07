import { entriesForDock, writeLink } from '../../../core/packet/link/index.ts';
import { sayBenchLinks } from '../../../text/bench-links.ts';
import { say } from '../../../text/index.ts';
import { jobTitle } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { LinkOut } from '../link/LinkOut.tsx';
import { useWordsOf } from '../link/use-words-of.ts';
import { thingName } from '../names.ts';

/** What is asked again as a link and a code, where the packet need not go along. */
export function AskByLink({ job }: { job: OpenJob }) {
  const words = sayBenchLinks();
  const inTheirs = useWordsOf(
    job.sheet.request?.language,
    job.sheet.pieces.map(({ kind }) => kind),
  );
  const message = (address: string): string => {
    const names = job.sheet.asks.flatMap(({ piece, items }) =>
      items.flatMap(({ open, on, id }) => (open ? [thingName(job.sheet, piece, on, id)] : [])),
    );
    const asked = { job: jobTitle(job.sheet.details), names: say().dock.leave.and([...new Set(names)]), address };
    return sayBenchLinks().toAskAgain(asked);
  };
  return (
    <div class="stack">
      <p class="small quiet">{words.again.how}</p>
      {inTheirs && (
        <LinkOut
          code={writeLink({ t: 'ask', ask: { job: job.id, entries: entriesForDock(job.entries) } })}
          message={(address) => inTheirs(() => message(address))}
        />
      )}
    </div>
  );
}
