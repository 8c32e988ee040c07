import { useEffect, useState } from 'preact/hooks';
import type { Who } from '../../../core/job/index.ts';
import type { JobRequest } from '../../../core/packet/link/index.ts';
import { StoreFailure } from '../../../device/store/index.ts';
import { loadPieceWords, pieceWords } from '../../../text/guides.ts';
import { say } from '../../../text/index.ts';
import { type Language, language } from '../../../text/language.ts';
import { sayLinks } from '../../../text/links.ts';
import { pieceName } from '../../model/job-words.ts';
import { isHere, speakAsAsked } from '../../model/link-opened.ts';
import { go } from '../../model/route.ts';
import { chooseLanguage, choosePerson, store } from '../../model/services.ts';
import { ContactLine } from '../../parts/ContactLine.tsx';
import { OWN_NAMES } from '../../parts/LanguageField.tsx';
import { wanted } from '../../parts/Later.tsx';
import { Banner } from '../../parts/marks.tsx';
import { TopBar } from '../../parts/TopBar.tsx';

/** What this device knows before anything is begun. */
interface Known {
  here: boolean;
  /** Who holds it; null where nobody has said so yet. */
  person: Who | null;
  /** The language that was spoken before this link asked for another; null where it did not. */
  before: Language | null;
}

interface Props {
  request: JobRequest;
  /** It was read, and yet no job can begin with it. */
  onFault: (why: 'newer' | 'unreadable') => void;
}

const bringBeginning = () => import('../../model/open-link.ts');

/** A shop wants a boat measured: who asks, what they want, and one button to begin. */
export function Requested({ request, onFault }: Props) {
  const [known, setKnown] = useState<Known | null>(null);
  useEffect(() => {
    const spoken = speakAsAsked(request.language).catch(() => null);
    void wanted(Promise.all([isHere(request.job).catch(() => false), knownPerson(), spoken])).then(
      ([here, person, before]) => setKnown({ here, person, before }),
    );
  }, []);
  useEffect(() => {
    if (!known) return;
    // Who asks can be read while the rest comes: what the pieces are, and all that begins a job.
    void loadPieceWords(request.pieces.map(({ kind }) => kind));
    void bringBeginning()
      .then(({ requestFault }) => requestFault(request))
      .then((fault) => fault && onFault(fault))
      .catch(() => undefined);
  }, [known]);
  if (!known) return <p class="page quiet">{sayLinks().reading}</p>;
  return (
    <div class="page">
      <TopBar back={{ at: 'jobs' }} title={sayLinks().request.title(request.shop)} />
      {known.before && <AsAsked before={known.before} request={request} />}
      <WhoAsks request={request} />
      <WhatIsWanted request={request} />
      <Begin request={request} known={known} onFault={onFault} />
    </div>
  );
}

/** The app has begun to speak as the link asks: said, and taken back in one tap. */
function AsAsked({ before, request }: { before: Language; request: JobRequest }) {
  const [asked] = useState(language.value);
  if (language.value !== asked) return null;
  const back = async (): Promise<void> => {
    await loadPieceWords(
      request.pieces.map(({ kind }) => kind),
      before,
    );
    await chooseLanguage(before);
  };
  return (
    <Banner tone="note">
      <p>{sayLinks().request.language}</p>
      <button type="button" class="button" lang={before} onClick={() => void back().catch(() => undefined)}>
        {OWN_NAMES[before]}
      </button>
    </Banner>
  );
}

const knownPerson = (): Promise<Who | null> =>
  store()
    .settings.get('person')
    .catch(() => null);

function WhoAsks({ request: { by, contact, note } }: { request: JobRequest }) {
  const words = sayLinks().request;
  return (
    <section class="stack">
      {by !== '' && <p dir="auto">{words.from(by)}</p>}
      {contact !== '' && (
        <p>
          <span class="quiet">{words.reach}: </span>
          <ContactLine contact={contact} />
        </p>
      )}
      {note !== '' && (
        <div class="stack">
          <h2>{words.note}</h2>
          <blockquote class="said" dir="auto">
            {note}
          </blockquote>
        </div>
      )}
    </section>
  );
}

function WhatIsWanted({ request }: { request: JobRequest }) {
  const words = sayLinks().request;
  const { pieces, boat, customer, system } = request;
  const known = pieces.reduce((sum, { answers }) => sum + Object.keys(answers).length, 0);
  return (
    <section class="stack">
      <h2>{words.what}</h2>
      <ul class="list">
        {pieces.map(({ kind, name }, place) => (
          <li key={`${place} ${kind}`} class="wanted">
            <strong dir="auto">{pieceName({ kind, name })}</strong>
            <p class="small quiet">{pieceWords(kind)?.about}</p>
          </li>
        ))}
      </ul>
      {(boat !== '' || customer !== '') && (
        <p dir="auto">{[boat && words.boat(boat), customer && words.customer(customer)].filter(Boolean).join(' · ')}</p>
      )}
      <p class="quiet">
        {words.units[system]} {known > 0 && words.known(known)}
      </p>
    </section>
  );
}

function Begin({ request, known, onFault }: Props & { known: Known }) {
  const words = sayLinks().request;
  const { here, person } = known;
  const [name, setName] = useState(person?.name ?? '');
  const [failure, setFailure] = useState('');
  const role = person?.role ?? request.measurer;
  const nameless = (person?.name ?? '') === '';
  const begin = async (): Promise<void> => {
    setFailure('');
    const beginning = await bringBeginning().catch(() => null);
    if (!beginning) return setFailure(words.notCome);
    const fault = beginning.requestFault(request);
    if (fault) return onFault(fault);
    try {
      if (nameless) await choosePerson({ name: name.trim(), role });
      go(await beginning.takeRequest(request), 'replace');
    } catch (error) {
      setFailure(say().store.failures[error instanceof StoreFailure ? error.code : 'unknown']);
    }
  };
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void begin();
      }}
    >
      {here && <Banner tone="note">{words.here}</Banner>}
      {!here && nameless && (
        <label class="field">
          <span>{say().dock.begin.you}</span>
          <input value={name} maxLength={80} autocomplete="name" onInput={(e) => setName(e.currentTarget.value)} />
          <span class="quiet small">{say().dock.begin.youHelp}</span>
        </label>
      )}
      <p class="quiet">
        {person && role !== request.measurer ? words.keepsRole(words.keptRoles[role]) : words.roles[role]}
      </p>
      {failure !== '' && (
        <Banner tone="stop">
          <p>{failure}</p>
        </Banner>
      )}
      <button type="submit" class="button main wide" data-testid="begin-request">
        {here ? words.goOn : words.begin}
      </button>
      <p class="small quiet">{words.private}</p>
    </form>
  );
}
