import { useState } from 'preact/hooks';
import type { Role } from '../../core/job/index.ts';
import { say } from '../../text/index.ts';
import { beginJob, deed } from '../model/open-job.ts';
import { go } from '../model/route.ts';
import { choosePerson, chooseUnits, person, units } from '../model/services.ts';
import { shopDeeds } from '../model/shop.ts';
import { TopBar } from '../parts/TopBar.tsx';
import { UnitsField } from '../parts/UnitsField.tsx';

/** Whose boat, who measures, what the tape reads: the least that a job needs before the first reading. */
export function NewJobScreen() {
  const [customer, setCustomer] = useState('');
  const [boat, setBoat] = useState('');
  const [name, setName] = useState(person.value.name);
  const [role, setRole] = useState<Role>(person.value.role === 'owner' ? 'owner' : 'installer');
  const [chosen, setChosen] = useState(units.value);
  const words = say().dock.begin;
  const start = async (): Promise<void> => {
    await choosePerson({ name: name.trim(), role }).catch(() => undefined);
    await chooseUnits(chosen).catch(() => undefined);
    const title = [customer.trim(), boat.trim()].filter(Boolean).join(' – ');
    const details = [
      { field: 'customer', value: customer.trim() },
      { field: 'boat', value: boat.trim() },
    ] as const;
    const id = await beginJob([
      deed('job.open', { name: title, ...chosen }),
      ...(await shopDeeds()),
      ...details.filter((detail) => detail.value !== '').map((detail) => deed('job.detail', detail)),
    ]);
    go({ at: 'job', job: id }, 'replace');
  };
  return (
    <div class="page">
      <TopBar back={{ at: 'jobs' }} title={words.heading} />
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void start();
        }}
      >
        <label class="field">
          <span>{words.customer}</span>
          <input
            value={customer}
            maxLength={120}
            autocomplete="off"
            onInput={(e) => setCustomer(e.currentTarget.value)}
          />
        </label>
        <label class="field">
          <span>{words.boat}</span>
          <input value={boat} maxLength={120} autocomplete="off" onInput={(e) => setBoat(e.currentTarget.value)} />
        </label>
        <label class="field">
          <span>{words.you}</span>
          <input value={name} maxLength={80} autocomplete="name" onInput={(e) => setName(e.currentTarget.value)} />
          <span class="quiet small">{words.youHelp}</span>
        </label>
        <label class="field">
          <span>{words.role}</span>
          <select value={role} onChange={(e) => setRole(e.currentTarget.value === 'owner' ? 'owner' : 'installer')}>
            <option value="installer">{words.roles.installer}</option>
            <option value="owner">{words.roles.owner}</option>
          </select>
        </label>
        <UnitsField value={chosen} onChange={setChosen} />
        <button type="submit" class="button main wide">
          {words.start}
        </button>
      </form>
    </div>
  );
}
