import { useState } from 'preact/hooks';
import { type LinkRefusal, readLink } from '../../../core/packet/link/index.ts';
import { sayLinks } from '../../../text/links.ts';
import { routeHash } from '../../model/route.ts';
import { Banner } from '../../parts/marks.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { AskedAgain } from './AskedAgain.tsx';
import { Requested } from './Requested.tsx';
import './open-link.css';

/** A link from a shop was opened: what it asks for, or why it cannot be opened. */
export function OpenLink({ code }: { code: string }) {
  const [read] = useState(() => readLink(code));
  if (!read.ok) return <Refused why={read.why} />;
  return read.link.t === 'request' ? <Requested request={read.link.request} /> : <AskedAgain ask={read.link.ask} />;
}

function Refused({ why }: { why: LinkRefusal }) {
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
