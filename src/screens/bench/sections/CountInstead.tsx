import { useState } from 'preact/hooks';
import type { SupposedSlip } from '../../../core/adjust/index.ts';
import type { Sheet } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { actAll, deed } from '../../model/open-job.ts';
import { readingTitle } from '../names.ts';

/** Only a value that the text itself gives: what the network alone would want is no evidence of what was there. */
export const canBeCounted = ({ kind, valueSigma, belongsTo }: SupposedSlip): boolean =>
  kind !== 'unexplained' && valueSigma === 0 && belongsTo === undefined;

/** The shop may go by what a slip explains; the takes stay, and it stays marked until somebody measures again. */
export function CountInstead({ slips, sheet }: { slips: readonly SupposedSlip[]; sheet: Sheet }) {
  const [asking, setAsking] = useState(false);
  const words = sayBench().engine.slips;
  const values = sayBench().list(slips.map(({ wouldRead }) => wouldRead));
  const names = sayBench().list(slips.map(({ reading }) => readingTitle(sheet, reading)));
  const count = (): void => {
    void actAll(
      slips.map(({ reading, value, wouldRead, kind }) =>
        deed('reading.suppose', { reading, value, text: wouldRead, slip: kind, basis: basisOf(reading, sheet) }),
      ),
    );
  };
  if (!asking)
    return (
      <button type="button" class="button plain" onClick={() => setAsking(true)}>
        {words.use(values, names)}
      </button>
    );
  return (
    <div class="stack">
      <p>{words.useAsk(values, names)}</p>
      <div class="row">
        <button type="button" class="button" onClick={count} data-testid="count-instead">
          {words.useSure}
        </button>
        <button type="button" class="button plain" onClick={() => setAsking(false)}>
          {say().general.cancel}
        </button>
      </div>
    </div>
  );
}

const basisOf = (reading: string, sheet: Sheet): string =>
  (sheet.readings.find(({ id }) => id === reading)?.takes ?? [])
    .filter(({ struck }) => struck === null)
    .map(({ id }) => id)
    .sort()
    .join('+');
