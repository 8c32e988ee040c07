import { useEffect, useState } from 'preact/hooks';
import { now } from '../../device/clock.ts';
import type { ShareOutcome } from '../../device/share.ts';
import { say } from '../../text/index.ts';
import { sayWalk } from '../../text/walk.ts';
import { bytesText } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { looksDue } from '../model/second-looks.ts';
import { handOver, preparePacket, type ReadyPacket } from '../model/send-out.ts';
import { Banner } from '../parts/marks.tsx';
import { Receipt } from '../parts/Receipt.tsx';
import { TopBar } from '../parts/TopBar.tsx';

/** The packet is built first; handing it over needs a tap of its own, or the phone refuses to share. */
export function SendScreen({ job }: { job: OpenJob }) {
  const [ready, setReady] = useState<ReadyPacket | null>(null);
  const [trouble, setTrouble] = useState(false);
  const [outcome, setOutcome] = useState<{ how: ShareOutcome; at: string } | null>(null);
  const words = say().dock.send;
  const state = job.entries.length;
  const once = looksDue.value.length;
  useEffect(() => {
    let gone = false;
    setReady(null);
    setTrouble(false);
    void preparePacket(job).then(
      (packet) => {
        if (!gone) setReady(packet);
      },
      () => setTrouble(true),
    );
    return () => {
      gone = true;
    };
  }, [job.id, state]);
  const hand = (how: 'share' | 'download') => () => {
    if (ready) void handOver(job.id, ready, how).then((came) => setOutcome({ how: came, at: now() }));
  };
  return (
    <div class="page">
      <TopBar back={{ at: 'job', job: job.id }} title={words.heading} />
      <p>{words.what(job.entries.length, job.sheet.photos.length)}</p>
      <p class="quiet small">{words.privacy}</p>
      {!job.gates.leave.clear && (
        <Banner tone="doubt">{once > 0 ? sayWalk().again.sendAll(once) : words.stands}</Banner>
      )}
      {trouble && <Banner tone="stop">{words.notBuilt}</Banner>}
      <p aria-live="polite">{ready ? words.ready(ready.name, bytesText(ready.blob.size)) : words.preparing}</p>
      {ready && ready.missingPhotos > 0 && <Banner tone="doubt">{words.missingPhotos(ready.missingPhotos)}</Banner>}
      <button type="button" class="button main wide" disabled={!ready} onClick={hand('share')} data-testid="share">
        {words.share}
      </button>
      <button type="button" class="button wide" disabled={!ready} onClick={hand('download')} data-testid="download">
        {words.download}
      </button>
      {outcome && outcome.how !== 'shared' && outcome.how !== 'downloaded' && (
        <Banner tone="doubt">{words[outcome.how]}</Banner>
      )}
      {ready && (outcome?.how === 'shared' || outcome?.how === 'downloaded') && (
        <Receipt
          sheet={job.sheet}
          how={outcome.how}
          looks={once}
          file={{ name: ready.name, size: ready.blob.size }}
          at={outcome.at}
        />
      )}
    </div>
  );
}
