import type { Step } from '../../../core/guide/index.ts';
import { say } from '../../../text/index.ts';
import { Banner } from '../../parts/marks.tsx';
import { CautionNote } from './CautionNote.tsx';

/** What must be read before a step: why the shop asks again, and what is dangerous. */
export function StepHead({ step }: { step: Step }) {
  const words = say().dock.step;
  return (
    <>
      {step.askedNote !== null && (
        <Banner tone="doubt">
          <p>
            <strong>{wasThere(step) ? words.askedAgain : words.askedFirst}:</strong> {step.askedNote}
          </p>
        </Banner>
      )}
      <CautionNote key={`c${step.key}`} cautions={step.cautions} />
    </>
  );
}

/** Something was there already, or why it is not: only that can be asked for again. */
const wasThere = (step: Step): boolean =>
  step.on !== 'reading' || step.reading.takes.length > 0 || step.reading.answer !== null;
