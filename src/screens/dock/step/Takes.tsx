import { useState } from 'preact/hooks';
import type { Sheet, SheetReading, Take } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { act } from '../../model/open-job.ts';
import { dateText, valueText, whoText } from '../../model/words.ts';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';

/** What was read so far, each as typed; one that was wrong is struck out with a reason and stays to be seen. */
export function Takes({ reading, sheet }: { reading: SheetReading; sheet: Sheet }) {
  const [striking, setStriking] = useState<Take | null>(null);
  const words = say().dock.step;
  if (reading.takes.length === 0) return null;
  if (striking)
    return (
      <ReasonPicker
        question={words.strikeWhy}
        reasons={words.strikeReasons}
        onCancel={() => setStriking(null)}
        onReason={(reason) => {
          setStriking(null);
          void act('take.strike', { take: striking.id, reason });
        }}
      />
    );
  return (
    <ul class="takes" aria-label={words.takes}>
      {reading.takes.map((take) => (
        <li key={take.id} class="row spread">
          <span>
            {take.struck ? <s class="number">{take.text}</s> : <strong class="number">{take.text}</strong>}{' '}
            <span class="quiet small">
              {take.struck
                ? words.struck(take.struck.reason)
                : `${valueText(take.value, reading.kind, sheet)} · ${say().general.signedBy(whoText(take.who), dateText(take.at))}`}
            </span>
          </span>
          {!take.struck && (
            <button type="button" class="button plain" onClick={() => setStriking(take)}>
              {words.strike}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
