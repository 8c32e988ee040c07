import { judgesAlike, ownFields, SHOP_FIELDS } from '../../../core/check/shop-fields.ts';
import type { ShopRules } from '../../../core/job/index.ts';
import { sayShop } from '../../../text/shop.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { shop } from '../../model/shop.ts';
import { shopWords } from '../../model/shop-values.ts';
import { Banner } from '../../parts/marks.tsx';
import { jumpTo, Section } from './Section.tsx';

/** What the shop says now, where that is not what the job is judged by; null where it is, or nothing was read yet. */
function behindOf({ sheet }: OpenJob): ShopRules | null {
  const present = shop.value?.rules ?? null;
  return present === null || judgesAlike(sheet.shop, present) ? null : present;
}

/** One line at the top; the details are a tap away. */
export function LimitsNotice({ job }: { job: OpenJob }) {
  const words = sayShop().limits;
  const behind = behindOf(job) !== null;
  if (!behind && ownFields(job.sheet.shop).length === 0) return null;
  return (
    <button type="button" class="button plain" onClick={() => jumpTo('limits')}>
      {behind ? words.noticeBehind : words.notice}
    </button>
  );
}

/** Which limits the job is judged by, where they are not the defaults or not what the shop says now. */
export function LimitsSection({ job }: { job: OpenJob }) {
  const { sheet } = job;
  const words = sayShop();
  const own = ownFields(sheet.shop);
  const behind = behindOf(job);
  if (own.length === 0 && !behind) return null;
  const name = sheet.shop?.shop;
  return (
    <Section at="limits">
      <p>{own.length === 0 ? words.limits.usual : name ? words.limits.own(name) : words.limits.ownNameless}</p>
      {own.length > 0 && (
        <ul class="stack">
          {own.map((field) => (
            <li key={field}>
              {words.limits.line(
                words.fields[field].name,
                shopWords(sheet.shop, field, sheet),
                shopWords(null, field, sheet),
              )}
            </li>
          ))}
        </ul>
      )}
      {behind && <Behind job={job} rules={behind} />}
    </Section>
  );
}

/** What the settings say now, and one tap that takes them into the job: an entry like any other. */
function Behind({ job, rules }: { job: OpenJob; rules: ShopRules }) {
  const { sheet } = job;
  const words = sayShop();
  const differ = SHOP_FIELDS.filter((field) => shopWords(sheet.shop, field, sheet) !== shopWords(rules, field, sheet));
  return (
    <Banner tone="doubt">
      <p>{words.limits.differ}</p>
      <ul>
        {differ.map((field) => (
          <li key={field}>
            {words.limits.would(
              words.fields[field].name,
              shopWords(sheet.shop, field, sheet),
              shopWords(rules, field, sheet),
            )}
          </li>
        ))}
      </ul>
      <p class="small">{words.limits.updateHelp}</p>
      <div class="row">
        <button type="button" class="button" onClick={() => void act('job.shop', rules)} data-testid="update-limits">
          {words.limits.update}
        </button>
        <a class="button plain" href={routeHash({ at: 'shop' })}>
          {words.title}
        </a>
      </div>
    </Banner>
  );
}
