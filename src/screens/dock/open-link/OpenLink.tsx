import { useEffect, useState } from 'preact/hooks';
import { type LinkReading, type LinkRefusal, readLink } from '../../../core/packet/link/index.ts';
import { sayLinks } from '../../../text/links.ts';
import { routeHash } from '../../model/route.ts';
import { Later, wanted } from '../../parts/Later.tsx';
import { Banner } from '../../parts/marks.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { Requested } from './Requested.tsx';
import './open-link.css';

const loadAskedAgain = () => import('./AskedAgain.tsx').then((m) => m.AskedAgain);

type Refusal = LinkRefusal | 'not-come';

/** A link from a shop was opened: what it asks for, or why it cannot be opened. */
export function OpenLink({ code }: { code: string }) {
  const [read, setRead] = useState<LinkReading | null>(null);
  const [refused, refuse] = useState<Refusal | null>(null);
  useEffect(() => {
    void wanted(readLink(code)).then(
      (reading) => (reading.ok ? setRead(reading) : refuse(reading.why)),
      () => refuse('not-come'),
    );
  }, []);
  if (refused) return <Refused why={refused} />;
  if (!read?.ok) return <p class="page quiet">{sayLinks().reading}</p>;
  return read.link.t === 'request' ? (
    <Requested request={read.link.request} onFault={refuse} />
  ) : (
    <Later load={loadAskedAgain} props={{ ask: read.link.ask }} words="links" />
  );
}

function Refused({ why }: { why: Refusal }) {
  const words = sayLinks().refused;
  return (
    <div class="page">
      <TopBar back={{ at: 'jobs' }} title={words.title} />
      <Banner tone="stop">
        <p>{words.why[why]}</p>
        <p>{words.untouched}</p>
      </Banner>
      <a class="button main wide" href={routeHash({ at: 'jobs' })}>
        {words.toJobs}
      </a>
    </div>
  );
}
