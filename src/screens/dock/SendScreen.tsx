import { useEffect, useState } from 'preact/hooks';
import type { ShareOutcome } from '../../device/share.ts';
import { say } from '../../text/index.ts';
import type { OpenJob } from '../model/open-job.ts';
import { handOver, preparePacket, type ReadyPacket } from '../model/send-out.ts';
import { bytesText } from '../model/words.ts';
import { Banner } from '../parts/marks.tsx';
import { TopBar } from '../parts/TopBar.tsx';

/** The packet is built first; handing it over needs a tap of its own, or the phone refuses to share. */
export function SendScreen({ job }: { job: OpenJob }) {
  const [ready, setReady] = useState<ReadyPacket | null>(null);
  const [outcome, setOutcome] = useState<ShareOutcome | null>(null);
  const words = say().dock.send;
  const state = job.entries.length;
  useEffect(() => {
    let gone = false;
    setReady(null);
    void preparePacket(job).then((packet) => {
      if (!gone) setReady(packet);
    });
    return () => {
      gone = true;
    };
  }, [job.id, state]);
  const hand = (how: 'share' | 'download') => () => {
    if (ready) void handOver(job.id, ready, how).then(setOutcome);
  };
  return (
    <div class="page">
      <TopBar back={{ at: 'job', job: job.id }} title={words.heading} />
      <p>{words.what(job.entries.length, job.sheet.photos.length)}</p>
      <p class="quiet small">{words.privacy}</p>
      {!job.gates.leave.clear && <Banner tone="doubt">{words.stands}</Banner>}
      <p aria-live="polite">{ready ? words.ready(ready.name, bytesText(ready.blob.size)) : words.preparing}</p>
      {ready && ready.missingPhotos > 0 && <Banner tone="doubt">{words.missingPhotos(ready.missingPhotos)}</Banner>}
      <button type="button" class="button main wide" disabled={!ready} onClick={hand('share')} data-testid="share">
        {words.share}
      </button>
      <button type="button" class="button wide" disabled={!ready} onClick={hand('download')} data-testid="download">
        {words.download}
      </button>
      {outcome && (
        <Banner tone={outcome === 'shared' || outcome === 'downloaded' ? 'good' : 'doubt'}>{words[outcome]}</Banner>
      )}
    </div>
  );
}
