import { useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import { type TakenIn, takeIn } from '../model/take-in.ts';
import { Banner } from './marks.tsx';

/** Opens packets and tables from a picker; what came of each file is said below. */
export function OpenFile({ onTaken }: { onTaken: (job: string) => void }) {
  const [busy, setBusy] = useState(false);
  const [outcomes, setOutcomes] = useState<TakenIn[]>([]);
  const open = async (files: readonly File[]): Promise<void> => {
    setBusy(true);
    const results: TakenIn[] = [];
    for (const file of files) results.push(await takeIn(file, file.name));
    setBusy(false);
    setOutcomes(results);
    const last = results.findLast((result) => result.ok);
    if (last?.ok) onTaken(last.job);
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
        <Outcome key={`${i}:${outcome.lines.join()}`} outcome={outcome} />
      ))}
    </div>
  );
}

export function Outcome({ outcome }: { outcome: TakenIn }) {
  return (
    <Banner tone={outcome.ok ? 'good' : 'stop'}>
      {outcome.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </Banner>
  );
}
