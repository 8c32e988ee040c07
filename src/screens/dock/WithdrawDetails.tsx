import { useState } from 'preact/hooks';
import { type Payload, withdrawDetails } from '../../core/job/index.ts';
import { sayDetails } from '../../text/details.ts';
import { say } from '../../text/index.ts';
import { sayWithdraw } from '../../text/withdraw.ts';
import { actAll, deed, type OpenJob } from '../model/open-job.ts';
import { Withdraw } from '../parts/Withdraw.tsx';

export type DetailField = Payload<'job.detail'>['field'];

/** What of a job can be about a person; who and how to reach them first. */
const OF_PERSON = ['customer', 'contact', 'place', 'note'] as const satisfies readonly DetailField[];

interface Props {
  job: OpenJob;
  onClose: () => void;
  onDone: () => void;
}

/** A person's details go for good, from the job's name too. */
export function WithdrawDetails({ job, onClose, onDone }: Props) {
  const [fields, setFields] = useState<ReadonlySet<DetailField>>(new Set(['customer', 'contact']));
  const words = sayWithdraw();
  const { boat } = job.sheet.details;
  const name = fields.has('boat') || boat === '' ? say().dock.jobs.unnamed : boat;
  const going = withdrawDetails(job.entries, fields, name);
  const withdraw = async (reason: string): Promise<void> => {
    await actAll([
      ...(going.reopen ? [deed('job.open', going.reopen)] : []),
      deed('erase', { entries: going.entries, reason }),
    ]);
    onDone();
  };
  const toggle = (field: DetailField): void => {
    const next = new Set(fields);
    if (!next.delete(field)) next.add(field);
    setFields(next);
  };
  const names = OF_PERSON.filter((field) => fields.has(field)).map((field) => sayDetails().fields[field]);
  return (
    <Withdraw
      reasons={words.reasonsOfPerson}
      disabled={going.entries.length === 0}
      onClose={onClose}
      onWithdraw={(reason) => void withdraw(reason)}
    >
      <ul class="stack">
        {OF_PERSON.map((field) => (
          <li key={field}>
            <label class="tick">
              <input type="checkbox" checked={fields.has(field)} onChange={() => toggle(field)} />
              <span>{sayDetails().fields[field]}</span>
            </label>
          </li>
        ))}
      </ul>
      <p>{names.length === 0 ? words.nothing : words.detailsLose(names)}</p>
      {going.reopen && <p>{words.nameGoes(name)}</p>}
      <p>{words.notes}</p>
    </Withdraw>
  );
}
