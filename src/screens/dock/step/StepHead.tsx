import type { Step } from '../../../core/guide/index.ts';
import { say } from '../../../text/index.ts';
import { Banner } from '../../parts/marks.tsx';
import { CautionNote } from './CautionNote.tsx';

/** What must be read before a step: why the shop asks again, and what is dangerous. */
export function StepHead({ step }: { step: Step }) {
  return (
    <>
      {step.askedNote !== null && (
        <Banner tone="doubt">
          <p>
            <strong>{say().dock.step.askedAgain}:</strong> {step.askedNote}
          </p>
        </Banner>
      )}
      <CautionNote key={`c${step.key}`} cautions={step.cautions} />
    </>
  );
}
