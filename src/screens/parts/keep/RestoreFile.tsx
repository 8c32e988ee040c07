import { useState } from 'preact/hooks';
import { type BackupFound, type BackupRefusal, readBackup } from '../../../device/packet-file/index.ts';
import type { RestoreOutcome } from '../../../device/restore.ts';
import { say } from '../../../text/index.ts';
import { sayKeep } from '../../../text/keep.ts';
import { planOf, restore } from '../../model/backup.ts';
import { dateText } from '../../model/job-words.ts';
import { Banner } from '../marks.tsx';

type Plan = Awaited<ReturnType<typeof planOf>>;
type State =
  | { at: 'nothing' }
  | { at: 'reading' | 'working'; percent: number }
  | { at: 'found'; file: File; found: BackupFound; plan: Plan }
  | { at: 'refused'; why: BackupRefusal }
  | { at: 'done'; outcome: RestoreOutcome };

const percentOf = (fraction: number): number => Math.round(fraction * 100);

/** A backup is read to its end and said what is in it first; what is stored changes when that is wanted. */
export function RestoreFile() {
  const words = sayKeep().restore;
  const [state, setState] = useState<State>({ at: 'nothing' });
  const open = async (file: File): Promise<void> => {
    setState({ at: 'reading', percent: 0 });
    const reading = await readBackup(file, (fraction) => setState({ at: 'reading', percent: percentOf(fraction) }));
    if (!reading.ok) return setState({ at: 'refused', why: reading.why });
    const { found } = reading;
    setState({ at: 'found', file, found, plan: await planOf(found) });
  };
  const take = async (file: File, found: BackupFound, settings: 'missing' | 'all'): Promise<void> => {
    const onProgress = (fraction: number): void => setState({ at: 'working', percent: percentOf(fraction) });
    onProgress(0);
    setState({ at: 'done', outcome: await restore(file, found, { settings, onProgress }) });
  };
  const refuse = (): void => setState({ at: 'refused', why: 'unreadable' });
  return (
    <>
      <Picker onFile={(file) => void open(file).catch(refuse)} />
      {state.at === 'reading' && <p role="status">{words.reading(state.percent)}</p>}
      {state.at === 'working' && <p role="status">{words.working(state.percent)}</p>}
      {state.at === 'refused' && (
        <Banner tone="stop">
          <p>{words.refused}</p>
          <p>{words.why[state.why]}</p>
        </Banner>
      )}
      {state.at === 'found' && (
        <Found
          found={state.found}
          plan={state.plan}
          onTake={(settings) => void take(state.file, state.found, settings).catch(refuse)}
          onCancel={() => setState({ at: 'nothing' })}
        />
      )}
      {state.at === 'done' && <Outcome outcome={state.outcome} />}
    </>
  );
}

function Picker({ onFile }: { onFile: (file: File) => void }) {
  return (
    <label class="button wide">
      {sayKeep().restore.open}
      <input
        class="sr-only"
        type="file"
        accept=".json,.txt,application/json,text/plain"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (file) onFile(file);
        }}
      />
    </label>
  );
}

interface FoundProps {
  found: BackupFound;
  plan: Plan;
  onTake: (settings: 'missing' | 'all') => void;
  onCancel: () => void;
}

function Found({ found, plan, onTake, onCancel }: FoundProps) {
  const words = sayKeep().restore;
  const [all, setAll] = useState(false);
  const { made, counts } = found;
  return (
    <Banner tone="note">
      <p>{words.holds(dateText(made.at), made.by.name, counts)}</p>
      <p>{words.would(plan.fresh, plan.known)}</p>
      <p>{words.safe}</p>
      {counts.damaged > 0 && <p>{words.damaged(counts.damaged)}</p>}
      {counts.settings > 0 && (
        <>
          <label class="row">
            <input type="checkbox" checked={all} onChange={(event) => setAll(event.currentTarget.checked)} />
            <span>{words.allSettings(counts.settings)}</span>
          </label>
          <p class="quiet small">{words.settingsHelp}</p>
        </>
      )}
      <div class="row">
        <button type="button" class="button main" onClick={() => onTake(all ? 'all' : 'missing')}>
          {words.now}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          {say().general.cancel}
        </button>
      </div>
    </Banner>
  );
}

function Outcome({ outcome }: { outcome: RestoreOutcome }) {
  const words = sayKeep().restore;
  const { failure, settings, templates, setAside, refused } = outcome;
  return (
    <Banner tone={failure !== null || refused > 0 ? 'stop' : 'good'}>
      <p>{words.done(outcome)}</p>
      {settings + templates > 0 && <p>{words.also(settings, templates)}</p>}
      {setAside > 0 && <p>{words.setAside(setAside)}</p>}
      {refused > 0 && <p>{words.notPut(refused)}</p>}
      {failure !== null && <p>{failure === 'file' ? words.fileChanged : say().store.failures[failure]}</p>}
      {failure !== null && <p>{words.stopped}</p>}
    </Banner>
  );
}
