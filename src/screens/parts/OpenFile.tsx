import { useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import type { Route } from '../model/route.ts';
import type { TakenIn } from '../model/take-in.ts';
import { Later } from './Later.tsx';
import { Outcome } from './Outcome.tsx';

const loadPasteIn = () => import('./PasteIn.tsx').then((m) => m.PasteIn);

/** Opens packets and tables from a picker, or pasted as text; what came of each file is said below. */
export function OpenFile({ onTaken, open: routeOf }: { onTaken: () => void; open: (job: string) => Route }) {
  const [busy, setBusy] = useState(false);
  const [outcomes, setOutcomes] = useState<TakenIn[]>([]);
  const [pasting, setPasting] = useState(false);
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
      {pasting ? (
        <Later load={loadPasteIn} props={{ onTaken, open: routeOf }} />
      ) : (
        <button type="button" class="button plain" onClick={() => setPasting(true)} data-testid="paste">
          {say().dock.jobs.paste}
        </button>
      )}
      {outcomes.map((outcome, i) => (
        <Outcome key={`${i}:${outcome.lines.join()}`} outcome={outcome} open={routeOf} />
      ))}
    </div>
  );
}
