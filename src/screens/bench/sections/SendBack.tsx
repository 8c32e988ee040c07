import { useEffect, useState } from 'preact/hooks';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { bytesText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { handOver, preparePacket, type ReadyPacket } from '../../model/send-out.ts';
import { Banner } from '../../parts/marks.tsx';

type Outcome = Awaited<ReturnType<typeof handOver>>;

/** The packet that goes back to the dock: prepared first, handed over by a tap of its own. */
export function SendBack({ job }: { job: OpenJob }) {
  const [wanted, setWanted] = useState(false);
  return wanted ? (
    <Prepared key={job.entries.length} job={job} />
  ) : (
    <button type="button" class="button" onClick={() => setWanted(true)} data-testid="send-back">
      {sayBench().send.begin}
    </button>
  );
}

function Prepared({ job }: { job: OpenJob }) {
  const [ready, setReady] = useState<ReadyPacket | 'failed' | null>(null);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  useEffect(() => {
    let gone = false;
    void preparePacket(job).then(
      (packet) => !gone && setReady(packet),
      () => !gone && setReady('failed'),
    );
    return () => {
      gone = true;
    };
  }, []);
  const words = say().dock.send;
  if (ready === null) return <p aria-live="polite">{sayBench().send.preparing}</p>;
  if (ready === 'failed') return <Banner tone="stop">{sayBench().send.failed}</Banner>;
  const hand = (how: 'share' | 'download') => () => void handOver(job.id, ready, how).then(setOutcome);
  return (
    <div class="stack">
      <p aria-live="polite">{words.ready(ready.name, bytesText(ready.blob.size))}</p>
      {ready.missingPhotos > 0 && <Banner tone="doubt">{words.missingPhotos(ready.missingPhotos)}</Banner>}
      <div class="row">
        <button type="button" class="button main" onClick={hand('share')} data-testid="share-back">
          {words.share}
        </button>
        <button type="button" class="button" onClick={hand('download')} data-testid="download-back">
          {words.download}
        </button>
      </div>
      {outcome && (
        <Banner tone={outcome === 'shared' || outcome === 'downloaded' ? 'good' : 'doubt'}>
          {outcome === 'shared' ? sayBench().send.shared : words[outcome]}
        </Banner>
      )}
    </div>
  );
}
