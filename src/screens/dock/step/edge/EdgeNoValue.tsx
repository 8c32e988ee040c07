import { useState } from 'preact/hooks';
import type { NoValue, SheetRun } from '../../../../core/job/index.ts';
import { sayEdges } from '../../../../text/edges.ts';
import { say } from '../../../../text/index.ts';
import { act } from '../../../model/open-job.ts';
import { ReasonPicker } from '../../../parts/ReasonPicker.tsx';

/** The whole edge answered at once: this boat has none, or it is there and could not be measured; each with why. */
export function EdgeNoValue({ run, onCancel, onDone }: { run: SheetRun; onCancel: () => void; onDone: () => void }) {
  const [answer, setAnswer] = useState<NoValue | null>(null);
  const words = sayEdges();
  if (answer)
    return (
      <ReasonPicker
        question={words.why}
        reasons={answer === 'none-here' ? words.reasons.noneHere : words.reasons.couldNot}
        onCancel={onCancel}
        onReason={(reason) => void act('run.answer', { run: run.id, answer, reason }).then(onDone)}
      />
    );
  return (
    <div class="choices">
      <button type="button" class="button choice" onClick={() => setAnswer('none-here')}>
        {words.noneHere}
      </button>
      <button type="button" class="button choice" onClick={() => setAnswer('could-not')}>
        {words.couldNot}
      </button>
      <button type="button" class="button plain" onClick={onCancel}>
        {say().general.cancel}
      </button>
    </div>
  );
}
