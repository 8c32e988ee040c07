import { daysLeft, mayClearAfterAWeek } from '../../device/storage-state.ts';
import type { JobSummary } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';
import { copyState } from '../model/copy-state.ts';
import { install } from '../model/outside.ts';
import { Banner } from './marks.tsx';

/**
 * Says loudly when this device holds the only copy in a browser that may clear it; offers the home screen before a job
 * is begun, since an installed app starts with a storage of its own.
 */
export function StorageWarning({ jobs }: { jobs: readonly JobSummary[] }) {
  const own = jobs.filter((job) => !job.demo);
  const onlyCopies = own.filter((job) => copyState(job) !== 'same');
  const words = say().store;
  if (own.length === 0) return <InstallOffer />;
  const installed = install.value?.way.value === 'installed';
  if (onlyCopies.length === 0 || !mayClearAfterAWeek(navigator.userAgent, installed, navigator.maxTouchPoints))
    return null;
  return (
    <Banner tone="doubt">
      <p>
        <strong>{words.notOnlyCopy}</strong> {words.mayClear(daysLeft(new Date(), new Date()))}
      </p>
    </Banner>
  );
}

export function InstallOffer() {
  const words = say().store;
  const way = install.value?.way.value ?? 'none';
  if (way === 'none' || way === 'installed') return null;
  return (
    <Banner tone="note">
      <p>{words.installFirst}</p>
      {way === 'prompt' ? (
        <button type="button" class="button" onClick={() => void install.value?.ask()}>
          {words.install}
        </button>
      ) : (
        <p>{words.installByHand}</p>
      )}
    </Banner>
  );
}
