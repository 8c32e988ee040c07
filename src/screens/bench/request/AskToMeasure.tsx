import { useEffect, useState } from 'preact/hooks';
import type { Measurer } from '../../../core/job/index.ts';
import type { JobRequest } from '../../../core/packet/link/index.ts';
import { sayBenchLinks } from '../../../text/bench-links.ts';
import { say } from '../../../text/index.ts';
import { makeRequest, readLastRequest } from '../../model/make-request.ts';
import { go } from '../../model/route.ts';
import { person, units } from '../../model/services.ts';
import { readShop, shop } from '../../model/shop.ts';
import { Banner } from '../../parts/marks.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { UnitsField } from '../../parts/UnitsField.tsx';
import { WantedPieces } from './WantedPieces.tsx';
import { piecesOf, type Wanted } from './wanted.ts';
import '../link/link-out.css';

type Form = Pick<JobRequest, 'by' | 'customer' | 'boat' | 'shop' | 'contact' | 'note' | 'language' | 'measurer'>;

const EMPTY: Form = {
  by: '',
  customer: '',
  boat: '',
  shop: '',
  contact: '',
  note: '',
  language: 'en',
  measurer: 'owner',
};

/** What a shop fills in to have a boat measured by somebody else. */
export function AskToMeasure() {
  const words = sayBenchLinks();
  const [form, setForm] = useState<Form>({ ...EMPTY, by: person.value.name });
  const [wanted, setWanted] = useState<Wanted>(new Map());
  const [chosen, setChosen] = useState(units.value);
  const [fault, setFault] = useState<'no-piece' | 'not-saved' | null>(null);
  useEffect(() => void lastSaid().then((last) => setForm((typed) => ({ ...typed, ...last }))), []);
  const change = (more: Partial<Form>): void => setForm((typed) => ({ ...typed, ...more }));
  const choose = (pieces: Wanted): void => {
    setWanted(pieces);
    setFault(null);
  };
  const make = async (): Promise<void> => {
    const pieces = piecesOf(wanted, (kind) => say().general.pieceKinds[kind]);
    if (pieces.length === 0) return setFault('no-piece');
    try {
      go({ at: 'request', job: await makeRequest({ ...form, ...chosen, pieces }) }, 'replace');
    } catch {
      setFault('not-saved');
    }
  };
  return (
    <div class="page">
      <TopBar back={{ at: 'inbox' }} title={words.title} />
      <p class="quiet">{words.how}</p>
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <WantedPieces wanted={wanted} onChange={choose} missing={fault === 'no-piece'} />
        <WhoAndWhat form={form} change={change} />
        <UnitsField value={chosen} onChange={setChosen} />
        <FromTheShop form={form} change={change} />
        {Object.keys(shop.value?.rules ?? {}).length > 0 && <p class="small quiet">{words.limits}</p>}
        {fault === 'not-saved' && <Banner tone="stop">{words.notSaved}</Banner>}
        <button type="submit" class="button main wide" data-testid="make-link">
          {words.make}
        </button>
      </form>
    </div>
  );
}

/** What the shop wrote the last time; its name from the settings where it never has. */
async function lastSaid(): Promise<Partial<Form>> {
  const [last, settings] = await Promise.all([readLastRequest(), readShop().catch(() => null)]);
  return last ?? (settings?.rules.shop ? { shop: settings.rules.shop } : {});
}

interface PartProps {
  form: Form;
  change: (more: Partial<Form>) => void;
}

function WhoAndWhat({ form, change }: PartProps) {
  const words = sayBenchLinks();
  const { begin } = say().dock;
  return (
    <>
      <Text label={begin.customer} value={form.customer} onType={(customer) => change({ customer })} />
      <Text label={begin.boat} value={form.boat} onType={(boat) => change({ boat })} />
      <label class="field">
        <span>{words.measurer}</span>
        <select value={form.measurer} onChange={(event) => change({ measurer: event.currentTarget.value as Measurer })}>
          <option value="owner">{words.measurers.owner}</option>
          <option value="installer">{words.measurers.installer}</option>
        </select>
      </label>
      <label class="field">
        <span>{words.language}</span>
        <select value={form.language} onChange={(event) => change({ language: event.currentTarget.value })}>
          {Object.entries(words.languages).map(([tag, name]) => (
            <option key={tag} value={tag}>
              {name}
            </option>
          ))}
        </select>
      </label>
    </>
  );
}

function FromTheShop({ form, change }: PartProps) {
  const words = sayBenchLinks();
  return (
    <>
      <Text label={words.shop} value={form.shop} onType={(name) => change({ shop: name })} />
      <Text
        label={words.contact}
        help={words.contactHelp}
        value={form.contact}
        onType={(contact) => change({ contact })}
      />
      <Text label={words.by} value={form.by} onType={(by) => change({ by })} />
      <label class="field">
        <span>{words.note}</span>
        <textarea
          rows={3}
          value={form.note}
          maxLength={1000}
          onInput={(event) => change({ note: event.currentTarget.value })}
        />
      </label>
    </>
  );
}

interface TextProps {
  label: string;
  help?: string;
  value: string;
  onType: (text: string) => void;
}

function Text({ label, help, value, onType }: TextProps) {
  return (
    <label class="field">
      <span>{label}</span>
      <input value={value} maxLength={120} autocomplete="off" onInput={(event) => onType(event.currentTarget.value)} />
      {help && <span class="quiet small">{help}</span>}
    </label>
  );
}
