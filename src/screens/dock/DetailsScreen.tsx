import { useState } from 'preact/hooks';
import { sayDetails } from '../../text/details.ts';
import { say } from '../../text/index.ts';
import { whoText } from '../model/job-words.ts';
import { actAll, deed, type OpenJob } from '../model/open-job.ts';
import { go } from '../model/route.ts';
import { TopBar } from '../parts/TopBar.tsx';
import { type DetailField, WithdrawDetails } from './WithdrawDetails.tsx';

const FIELDS = ['name', 'customer', 'contact', 'boat', 'place', 'note'] as const satisfies readonly DetailField[];

/** Whose boat it is, where it lies, how to reach them; and how a person's details go again. */
export function DetailsScreen({ job }: { job: OpenJob }) {
  const { details } = job.sheet;
  const [typed, setTyped] = useState<Partial<Record<DetailField, string>>>({});
  const [withdrawing, setWithdrawing] = useState(false);
  const words = sayDetails();
  const changed = FIELDS.flatMap((field) => {
    const value = typed[field]?.trim();
    return value === undefined || value === details[field] ? [] : [deed('job.detail', { field, value })];
  });
  const save = async (): Promise<void> => {
    if (changed.length > 0) await actAll(changed);
    go({ at: 'job', job: job.id });
  };
  return (
    <div class="page">
      <TopBar back={{ at: 'job', job: job.id }} title={words.heading} />
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        {FIELDS.map((field) => (
          <Field
            key={field}
            job={job}
            field={field}
            value={typed[field] ?? details[field]}
            onType={(value) => setTyped((now) => ({ ...now, [field]: value }))}
          />
        ))}
        <button type="submit" class="button main wide">
          {say().general.save}
        </button>
      </form>
      {withdrawing ? (
        <WithdrawDetails
          job={job}
          onClose={() => setWithdrawing(false)}
          onDone={() => {
            setWithdrawing(false);
            setTyped({});
          }}
        />
      ) : (
        <button type="button" class="button plain" onClick={() => setWithdrawing(true)}>
          {words.withdraw}
        </button>
      )}
    </div>
  );
}

interface FieldProps {
  job: OpenJob;
  field: DetailField;
  value: string;
  onType: (value: string) => void;
}

function Field({ job, field, value, onType }: FieldProps) {
  const words = sayDetails();
  const help = words.help[field];
  return (
    <div class="stack">
      <div class="field">
        <label for={`detail-${field}`}>{words.fields[field]}</label>
        {field === 'note' ? (
          <textarea
            id={`detail-${field}`}
            rows={4}
            value={value}
            maxLength={4000}
            onInput={(event) => onType(event.currentTarget.value)}
          />
        ) : (
          <input
            id={`detail-${field}`}
            value={value}
            maxLength={200}
            autocomplete="off"
            onInput={(event) => onType(event.currentTarget.value)}
          />
        )}
        {help && <span class="quiet small">{help}</span>}
      </div>
      <TwoAnswers job={job} field={field} />
    </div>
  );
}

/** Two people wrote different things without knowing of each other: one tap settles it. */
function TwoAnswers({ job, field }: { job: OpenJob; field: DetailField }) {
  const dispute = job.sheet.disputes.find(({ on }) => on === `detail.${field}`);
  if (!dispute) return null;
  const words = sayDetails();
  return (
    <div class="banner doubt stack">
      <p>{words.two}</p>
      <div class="row">
        {dispute.answers.map(({ entry, value, who }) => (
          <button
            key={entry}
            type="button"
            class="button"
            onClick={() => void actAll([deed('job.detail', { field, value })])}
          >
            {words.said(value, whoText(who))}
          </button>
        ))}
      </div>
    </div>
  );
}
