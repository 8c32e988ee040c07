import { useState } from 'preact/hooks';
import { now } from '../../../device/clock.ts';
import type { BackupFile } from '../../../device/packet-file/index.ts';
import { canShareFiles, type ShareOutcome, saveFile, shareFile } from '../../../device/share.ts';
import { sayKeep } from '../../../text/keep.ts';
import { backUp } from '../../model/backup.ts';
import { bytesText } from '../../model/job-words.ts';
import { RestoreFile } from './RestoreFile.tsx';

type State =
  | { at: 'nothing' }
  | { at: 'making'; percent: number }
  | { at: 'ready'; backup: BackupFile }
  | { at: 'failed' };

/** Everything on this device as one file, and back from one. */
export function BackupSection() {
  const words = sayKeep().backup;
  const [state, setState] = useState<State>({ at: 'nothing' });
  const make = (): void => {
    setState({ at: 'making', percent: 0 });
    void backUp((fraction) => setState({ at: 'making', percent: Math.round(fraction * 100) })).then(
      (backup) => setState({ at: 'ready', backup }),
      () => setState({ at: 'failed' }),
    );
  };
  return (
    <section class="stack">
      <h2>{words.heading}</h2>
      <p class="quiet small">{words.help}</p>
      {state.at === 'ready' ? (
        <Ready backup={state.backup} />
      ) : (
        <button type="button" class="button wide" disabled={state.at === 'making'} onClick={make}>
          {state.at === 'making' ? words.making(state.percent) : words.make}
        </button>
      )}
      {state.at === 'failed' && <p role="alert">{words.failed}</p>}
      <RestoreFile />
    </section>
  );
}

/** Built before it is handed over: sharing may not wait. */
function Ready({ backup }: { backup: BackupFile }) {
  const words = sayKeep().backup;
  const [outcome, setOutcome] = useState<ShareOutcome | null>(null);
  const name = words.name(now().slice(0, 10));
  return (
    <>
      <p role="status">{words.holds(backup.counts, bytesText(backup.file.size))}</p>
      {backup.lost > 0 && <p role="alert">{words.lost(backup.lost)}</p>}
      <div class="row">
        {canShareFiles(name) && (
          <button type="button" class="button main" onClick={() => void shareFile(backup.file, name).then(setOutcome)}>
            {words.share}
          </button>
        )}
        <button type="button" class="button" onClick={() => setOutcome(saveFile(backup.file, name))}>
          {words.download}
        </button>
      </div>
      {outcome === 'downloaded' && <p role="status">{words.saved}</p>}
      {outcome === 'shared' && <p role="status">{words.shared}</p>}
      {outcome === 'cancelled' && <p role="status">{words.cancelled}</p>}
      {outcome === 'failed' && <p role="alert">{words.refused}</p>}
    </>
  );
}
