import { useEffect, useState } from 'preact/hooks';
import { linkAddress } from '../../../core/packet/link/index.ts';
import { canShareText, copyText, shareText } from '../../../device/share-text.ts';
import { sayBenchLinks } from '../../../text/bench-links.ts';
import { reachOf } from '../../model/reach.ts';
import { Banner, StateMark } from '../../parts/marks.tsx';
import { drawQr, MOST_PX } from './qr.ts';
import './link-out.css';

/** Longer than this, programs that carry messages are known to cut an address off. Common practice, no source; characters. */
const LONG = 2000;

interface Props {
  /** Null: too much for any link. */
  code: string | null;
  /** What is sent along with the link. */
  message: (address: string) => string;
}

/** A link to hand over: as a code to be read off this screen, and as a message that is ready to be sent. */
export function LinkOut({ code, message }: Props) {
  const words = sayBenchLinks();
  if (code === null) return <Banner tone="doubt">{words.tooMuch}</Banner>;
  const address = linkAddress(pageAddress(), code);
  const reach = reachOf(location.hostname);
  return (
    <div class="link-out">
      {reach !== 'anywhere' && <Banner tone="doubt">{words.reach[reach]}</Banner>}
      {address.length > LONG && <Banner tone="doubt">{words.long}</Banner>}
      <Code address={address} />
      <Message address={address} text={message(address)} />
    </div>
  );
}

const pageAddress = (): string => `${location.origin}${location.pathname}`;

function Code({ address }: { address: string }) {
  const words = sayBenchLinks();
  const code = drawQr(address);
  if (!code) return <p class="quiet">{words.noCode}</p>;
  return (
    <figure class="qr" style={{ maxInlineSize: `${MOST_PX}px` }}>
      <svg viewBox={`0 0 ${code.side} ${code.side}`} role="img" aria-label={words.code} shape-rendering="crispEdges">
        <rect width={code.side} height={code.side} fill="#ffffff" />
        <path d={code.path} fill="#000000" />
      </svg>
      <figcaption class="small quiet">{words.codeHow}</figcaption>
      {code.fine && (
        <p class="small" data-testid="fine-code">
          <StateMark mark="doubt">{words.fineCode}</StateMark>
        </p>
      )}
    </figure>
  );
}

type Outcome = 'copied' | 'link-copied' | 'shared' | 'cancelled' | 'failed' | 'not-copied';

function Message({ address, text }: { address: string; text: string }) {
  const words = sayBenchLinks();
  const [typed, setTyped] = useState(text);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  useEffect(() => setTyped(text), [text]);
  const copy = (what: string, done: Outcome) => () =>
    void copyText(what).then((copied) => setOutcome(copied ? done : 'not-copied'));
  const share = (): void =>
    void shareText(typed).then((shared) => setOutcome(shared === 'downloaded' ? 'shared' : shared));
  return (
    <div class="stack grow">
      <label class="field">
        <span>{words.message}</span>
        <textarea
          class="link-message"
          rows={9}
          value={typed}
          data-testid="link-message"
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
      {!typed.includes(address) && <Banner tone="doubt">{words.linkGone}</Banner>}
      <div class="row">
        {canShareText() && (
          <button type="button" class="button main" onClick={share}>
            {words.share}
          </button>
        )}
        <button
          type="button"
          class={`button ${canShareText() ? '' : 'main'}`}
          onClick={copy(typed, 'copied')}
          data-testid="copy-message"
        >
          {words.copy}
        </button>
        <button type="button" class="button" onClick={copy(address, 'link-copied')} data-testid="copy-link">
          {words.copyLink}
        </button>
      </div>
      <p aria-live="polite">{outcome && words.outcomes[outcome]}</p>
    </div>
  );
}
