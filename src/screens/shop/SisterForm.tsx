import { useState } from 'preact/hooks';
import { inTheBoat } from '../../core/cloth/index.ts';
import { sisterOf } from '../../core/job/again/index.ts';
import { uuid } from '../../device/clock.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { beginJob, type Deed, deed, type OpenJob } from '../model/open-job.ts';
import { go } from '../model/route.ts';
import { shopDeeds } from '../model/shop.ts';
import { adjustedPlaces } from '../model/sureness.ts';

/** A job for a boat of the same kind, begun from one that was measured. */
export function SisterForm({ job }: { job: OpenJob }) {
  const [open, setOpen] = useState(false);
  const words = sayShop().sister;
  if (open) return <Form job={job} onCancel={() => setOpen(false)} />;
  return (
    <section class="stack">
      <h2>{words.heading}</h2>
      <p class="quiet small">{words.help}</p>
      <button type="button" class="button" onClick={() => setOpen(true)}>
        {words.begin}
      </button>
    </section>
  );
}

function Form({ job, onCancel }: { job: OpenJob; onCancel: () => void }) {
  const words = sayShop().sister;
  const begin = say().dock.begin;
  const [customer, setCustomer] = useState('');
  const [boat, setBoat] = useState('');
  const [from, setFrom] = useState(job.sheet.details.boat || words.unnamed);
  const doubted = doubtedReadings(job);
  const start = async (): Promise<void> => {
    const id = await beginJob([
      ...opening(job, customer.trim(), boat.trim()),
      ...(await shopDeeds()),
      ...startDeeds(job, from.trim() || words.unnamed, doubted),
    ]);
    go({ at: 'job', job: id });
  };
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void start();
      }}
    >
      <h2>{words.heading}</h2>
      <p class="quiet small">{words.help}</p>
      {doubted.size > 0 && <p class="state doubt">{words.leftOut(doubted.size)}</p>}
      <Line label={begin.customer} value={customer} onInput={setCustomer} />
      <Line label={begin.boat} value={boat} onInput={setBoat} />
      <Line label={words.from} help={words.fromHelp} value={from} onInput={setFrom} />
      <div class="row">
        <button type="submit" class="button main" disabled={!job.judged}>
          {words.start}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          {say().general.cancel}
        </button>
      </div>
    </form>
  );
}

function Line(props: { label: string; help?: string; value: string; onInput: (text: string) => void }) {
  return (
    <label class="field">
      <span>{props.label}</span>
      <input
        value={props.value}
        maxLength={120}
        autocomplete="off"
        onInput={(event) => props.onInput(event.currentTarget.value)}
      />
      {props.help && <span class="quiet small">{props.help}</span>}
    </label>
  );
}

function opening({ sheet }: OpenJob, customer: string, boat: string): Deed[] {
  const name = [customer, boat].filter(Boolean).join(' – ') || say().dock.jobs.unnamed;
  const { system, fraction, demo } = sheet;
  return [
    deed('job.open', { name, system, fraction, ...(demo ? { demo } : {}) }),
    ...(customer ? [deed('job.detail', { field: 'customer', value: customer })] : []),
    ...(boat ? [deed('job.detail', { field: 'boat', value: boat })] : []),
  ];
}

function startDeeds(job: OpenJob, from: string, doubted: ReadonlySet<string>): Deed[] {
  const places = new Map(
    job.sheet.pieces.flatMap(({ id }) => [...inTheBoat(job.sheet, id, adjustedPlaces(job.pieces.get(id)))]),
  );
  const { pieces, obstructions, expected, fittings } = sisterOf(job.entries, { newId: uuid, from, doubted, places });
  return [
    ...pieces.map((piece) => deed('piece.add', piece)),
    ...obstructions.map((thing) => deed('obstruction.add', thing)),
    ...expected.map((known) => deed('reading.expect', known)),
    ...fittings.map((note) => deed('fitting.note', note)),
  ];
}

/** Readings that something speaks against as the job stands. */
function doubtedReadings(job: OpenJob): ReadonlySet<string> {
  const measured = new Set(job.sheet.readings.filter(({ value }) => value !== null).map(({ id }) => id));
  return new Set(
    job.findings
      .filter(({ rule, accepted }) => accepted === null && AGAINST.has(rule))
      .flatMap(({ subjects }) => subjects.flatMap(({ on, id }) => (on === 'reading' && measured.has(id) ? [id] : []))),
  );
}

/** Findings that say of a reading that it may be wrong. */
const AGAINST: ReadonlySet<string> = new Set([
  'implausible-value',
  'takes-disagree',
  'impossible-triangle',
  'box-diagonals',
  'impossible-tetrahedron',
  'girth-short',
  'run-backwards',
  'run-sum',
  'reading-doubted',
]);
