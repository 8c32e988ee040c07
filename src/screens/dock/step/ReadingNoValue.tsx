import type { SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { act } from '../../model/open-job.ts';
import { NoValueStep } from './NoValueStep.tsx';

/** A reading answered without a value, at its own step or in a cell of a table. */
export function ReadingNoValue(props: { reading: SheetReading; onCancel: () => void; onDone: () => void }) {
  const { reading, onCancel, onDone } = props;
  return (
    <NoValueStep
      words={say().dock.step}
      onCancel={onCancel}
      onAnswer={(answer, reason) => void act('reading.answer', { reading: reading.id, answer, reason }).then(onDone)}
    />
  );
}
