import { useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import { type Route, routeHash } from '../model/route.ts';
import type { TakenIn } from '../model/take-in.ts';
import { Banner } from './marks.tsx';

/** Opens packets and tables from a picker; what came of each file is said below. */
export function OpenFile({ onTaken, open: routeOf }: { onTaken: () => void; open: (job: string) => Route }) {
  const [busy, setBusy] = useState(false);
  const [outcomes, setOutcomes] = useState<TakenIn[]>([]);
  const open = async (files: readonly File[]): Promise<void> => {
    setBusy(true);
    // Packets are read by code that is not part of the first load.
    const { takeIn } = await import('../model/take-in.ts');
    const results: TakenIn[] = [];
    for (const file of files) results.push(await takeIn(file, file.name));
    setBusy(false);
    setOutcomes(results);
    if (results.some((result) => result.ok)) onTaken();
  };
  return (
    <div class="stack">
      <label class="button wide">
        {busy ? say().dock.takeIn.reading : say().dock.jobs.openPacket}
        <input
          class="sr-only"
          type="file"
          multiple
          accept=".json,.txt,.csv,application/json,text/plain,text/csv"
          onChange={(event) => {
            const files = [...(event.currentTarget.files ?? [])];
            event.currentTarget.value = '';
            if (files.length > 0) void open(files);
          }}
        />
      </label>
      {outcomes.map((outcome, i) => (
        <Outcome key={`${i}:${outcome.lines.join()}`} outcome={outcome} open={routeOf} />
      ))}
    </div>
  );
}

/** What came of a file, and the way to the job it belongs to. */
export function Outcome({ outcome, open }: { outcome: TakenIn; open: ((job: string) => Route) | null }) {
  return (
    <Banner tone={outcome.ok ? 'good' : 'stop'}>
      {outcome.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {outcome.ok && open && (
        <a class="button" href={routeHash(open(outcome.job))}>
          {say().dock.takeIn.openIt}
        </a>
      )}
    </Banner>
  );
}
