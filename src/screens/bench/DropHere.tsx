import { useEffect, useState } from 'preact/hooks';
import { sayBench } from '../../text/bench.ts';
import { say } from '../../text/index.ts';
import { readJobs } from '../model/jobs.ts';
import { takePasted } from '../model/paste-in.ts';
import { type TakenIn, takeIn } from '../model/take-in.ts';
import { Banner } from '../parts/marks.tsx';
import { Outcome } from '../parts/Outcome.tsx';

/** Takes in files that are dropped, and text that is pasted, anywhere on the page, and says what came of them. */
export function DropHere({ current }: { current: string | null }) {
  const [over, setOver] = useState(false);
  const [busy, setBusy] = useState(false);
  const [outcomes, setOutcomes] = useState<TakenIn[]>([]);
  useEffect(() => {
    const take = async (files: readonly File[]): Promise<void> => {
      setBusy(true);
      const results: TakenIn[] = [];
      for (const file of files) results.push(await takeIn(file, file.name));
      setBusy(false);
      setOutcomes(results);
      await readJobs().catch(() => undefined);
    };
    const paste = async (text: string): Promise<void> => {
      setBusy(true);
      const taken = await takePasted(text);
      setBusy(false);
      setOutcomes(taken ? [taken] : []);
      await readJobs().catch(() => undefined);
    };
    const stops = [listen(setOver, (files) => void take(files)), listenToPaste((text) => void paste(text))];
    return () => {
      for (const stop of stops) stop();
    };
  }, []);
  const words = sayBench().inbox;
  return (
    <div class="stack" aria-live="polite">
      {over && <Banner tone="note">{words.letGo}</Banner>}
      {busy && <p>{say().dock.takeIn.reading}</p>}
      {outcomes.map((outcome, index) => (
        <Outcome
          key={`${index}:${outcome.lines.join()}`}
          outcome={outcome}
          open={outcome.ok && outcome.job !== current ? (job) => ({ at: 'judge', job }) : null}
        />
      ))}
    </div>
  );
}

/** What is pasted into a field of its own stays there. */
function listenToPaste(take: (text: string) => void): () => void {
  const paste = (event: ClipboardEvent): void => {
    if (event.target instanceof Element && event.target.closest('input, textarea, select')) return;
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (text.trim() !== '') take(text);
  };
  addEventListener('paste', paste);
  return () => removeEventListener('paste', paste);
}

const holdsFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

function listen(setOver: (over: boolean) => void, take: (files: readonly File[]) => void): () => void {
  const over = (event: DragEvent): void => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    setOver(true);
  };
  const leave = (event: DragEvent): void => {
    if (event.relatedTarget === null) setOver(false);
  };
  const drop = (event: DragEvent): void => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    setOver(false);
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length > 0) take(files);
  };
  addEventListener('dragover', over);
  addEventListener('dragleave', leave);
  addEventListener('drop', drop);
  return () => {
    removeEventListener('dragover', over);
    removeEventListener('dragleave', leave);
    removeEventListener('drop', drop);
  };
}
