import { tallyOf } from '../../core/guide/tally.ts';
import type { Sheet } from '../../core/job/index.ts';
import { sayReceipt } from '../../text/receipt.ts';
import { bytesText, dateText } from '../model/job-words.ts';
import { measurementsText, some } from '../model/tally-words.ts';
import { Banner, StateMark } from './marks.tsx';
import { InstallOffer } from './StorageWarning.tsx';

interface Props {
  sheet: Sheet;
  how: 'shared' | 'downloaded';
  file: { name: string; size: number };
  /** Measurements that an owner was still to read again. */
  looks: number;
  /** When it was handed over. */
  at: string;
}

/** What went out, to whom, when, and what happens next. To whom a phone's share sheet gave it, no page is told. */
export function Receipt({ sheet, how, file, looks, at }: Props) {
  const words = sayReceipt();
  const { shop = '', contact = '' } = sheet.request ?? {};
  const tally = tallyOf(sheet, []);
  const what = [
    measurementsText(tally),
    words.photos(sheet.photos.length),
    ...some('answers', tally.answers),
    ...some('edges', tally.edges),
  ];
  const whom =
    how === 'shared'
      ? shop
        ? words.shop(shop, contact)
        : words.chosen
      : shop
        ? words.nobodyYetBut(words.shop(shop, contact))
        : words.nobodyYet;
  const rows = [
    [words.what, what.join(', ')],
    [words.file, words.named(file.name, bytesText(file.size))],
    [words.whom, whom],
    [words.when, dateText(at)],
  ] as const;
  return (
    <section class="stack receipt" data-testid="receipt">
      <Banner tone="good">
        <StateMark mark="good">{words[how]}</StateMark>
        <dl class="stack">
          {rows.map(([name, value]) => (
            <div key={name}>
              <dt class="quiet small">{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
        {looks > 0 && <p>{words.once(looks)}</p>}
      </Banner>
      <h2>{words.next}</h2>
      <ul class="stack">
        {Object.values(words.steps).map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ul>
      <InstallOffer />
    </section>
  );
}
