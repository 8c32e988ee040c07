import { entriesOfPhoto } from '../../../core/job/index.ts';
import { sayWithdraw } from '../../../text/withdraw.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { store } from '../../model/services.ts';
import { Withdraw } from '../Withdraw.tsx';

interface Props {
  job: OpenJob;
  photo: string;
  sha256: string;
  onClose: () => void;
  /** With what there is to say afterwards; empty where it is gone whole. */
  onGone: (message: string) => void;
}

/** A picture goes for good, with everything that was put on it. */
export function WithdrawPhoto({ job, photo, sha256, onClose, onGone }: Props) {
  const words = sayWithdraw();
  const named = new Set(entriesOfPhoto(job.entries, photo));
  const count = (kind: string): number =>
    job.entries.filter((entry) => named.has(entry.id) && entry.kind === kind).length;
  const withdraw = async (reason: string): Promise<void> => {
    await act('erase', { entries: [...named], reason });
    const left = await store()
      .getPhoto(sha256)
      .catch(() => null);
    onGone(left ? words.stillHere : '');
  };
  return (
    <Withdraw reasons={words.reasons} onClose={onClose} onWithdraw={(reason) => void withdraw(reason)}>
      <p>{words.photoLoses(count('photo.mark'), count('photo.line'), count('note.add'))}</p>
    </Withdraw>
  );
}
