import { useState } from 'preact/hooks';
import type { Finding } from '../../../core/check/index.ts';
import type { Sheet, SheetReading, Take } from '../../../core/job/index.ts';
import { saySlips } from '../../../text/findings.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import { act } from '../../model/open-job.ts';
import { valueText } from '../../model/words.ts';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';

interface Props {
  reading: SheetReading;
  sheet: Sheet;
  /** The finding that two looks differ, where there is one. */
  disagreement: Finding | undefined;
}

/** What was read so far, each as typed; one that was wrong is struck out with a reason and stays to be seen. */
export function Takes({ reading, sheet, disagreement }: Props) {
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
    <>
      <Settle reading={reading} finding={disagreement} />
      <ul class="takes" aria-label={words.takes}>
        {reading.takes.map((take) => (
          <li key={take.id} class="row spread">
            <span>
              {take.struck ? <s class="number">{take.text}</s> : <strong class="number">{take.text}</strong>}{' '}
              <span class="quiet small">
                {take.struck
                  ? words.struck(take.struck.reason)
                  : [readAs(take, reading, sheet), say().general.signedBy(whoText(take.who), dateText(take.at))]
                      .filter(Boolean)
                      .join(' · ')}
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
    </>
  );
}

/** What the text was taken to be, where that is not what it says anyway. */
function readAs(take: Take, reading: SheetReading, sheet: Sheet): string {
  const value = valueText(take.value, reading.kind, sheet);
  return value.startsWith(take.text) ? '' : value;
}

/** The second look fits everything else: the first is struck out in one tap, and only now its slip is named. */
function Settle({ reading, finding }: { reading: SheetReading; finding: Finding | undefined }) {
  const older = reading.takes.find((take) => take.id === finding?.numbers.strike);
  if (!older) return null;
  const slip = finding?.numbers.slip;
  const why = isSlip(slip) ? saySlips()[slip] : say().dock.step.misread;
  return (
    <button
      type="button"
      class="button main wide"
      onClick={() => void act('take.strike', { take: older.id, reason: why })}
      data-testid="settle"
    >
      {say().dock.step.settle(older.text, why)}
    </button>
  );
}

const isSlip = (value: unknown): value is keyof ReturnType<typeof saySlips> =>
  typeof value === 'string' && value in saySlips();
