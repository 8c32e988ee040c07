import { useEffect, useState } from 'preact/hooks';
import type { JobSummary } from '../../../device/store/index.ts';
import { say } from '../../../text/index.ts';
import { sayKeep } from '../../../text/keep.ts';
import { dateText, jobTitle } from '../../model/job-words.ts';
import { type Loss, lossOf } from '../../model/loss.ts';
import { deleteJob, loadJob } from '../../model/open-job.ts';
import { handOver, preparePacket } from '../../model/send-out.ts';

interface Props {
  job: JobSummary;
  onDeleted: () => void;
  onCancel: () => void;
}

type Outcome = 'saved' | 'not-saved' | 'failed' | null;

/** Deleting is the one thing that loses something: it says what, offers the copy first, and is asked for twice. */
export function DeleteJob({ job, onDeleted, onCancel }: Props) {
  const words = sayKeep().remove;
  const [loss, setLoss] = useState<Loss | null>(null);
  const [outcome, setOutcome] = useState<Outcome>(null);
  const look = (lastCopy = job.lastCopy): Promise<void> => lossOf(job.id, lastCopy).then(setLoss);
  useEffect(() => void look().catch(() => undefined), [job.id]);
  const saveFirst = async (): Promise<void> => {
    const open = await loadJob(job.id);
    if (!open) return setOutcome('not-saved');
    const packet = await preparePacket(open);
    const saved = (await handOver(job.id, packet, 'download')) === 'downloaded';
    setOutcome(saved ? 'saved' : 'not-saved');
    if (saved) await look({ heads: packet.heads, at: new Date().toISOString(), how: 'downloaded' });
  };
  return (
    <div class="stack" data-testid="delete-job">
      <p role="alert">
        <strong>{words.ask(jobTitle(job))}</strong> {loss ? <Losing loss={loss} /> : words.counting} {words.forGood}
      </p>
      {!job.archived && <p class="quiet small">{words.putAway}</p>}
      {outcome === 'saved' && <p role="status">{words.saved}</p>}
      {outcome === 'not-saved' && <p role="alert">{words.notSaved}</p>}
      {outcome === 'failed' && <p role="alert">{words.failed}</p>}
      <div class="row">
        <button type="button" class="button main" onClick={() => void saveFirst().catch(() => setOutcome('not-saved'))}>
          {words.saveFirst}
        </button>
        <button
          type="button"
          class="button"
          disabled={loss === null}
          onClick={() => void deleteJob(job.id).then(onDeleted, () => setOutcome('failed'))}
        >
          {words.now}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          {say().general.cancel}
        </button>
      </div>
    </div>
  );
}

function Losing({ loss: { readings, photos, more, lastCopy, since } }: { loss: Loss }) {
  const words = sayKeep().remove;
  const copy =
    lastCopy === null
      ? words.neverSent
      : since === 0
        ? words.sent(dateText(lastCopy.at))
        : words.since(dateText(lastCopy.at), since);
  return (
    <>
      {words.loses(readings, photos, more)} {copy}
    </>
  );
}
