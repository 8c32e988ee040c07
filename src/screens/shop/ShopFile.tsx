import { useState } from 'preact/hooks';
import { ownFields } from '../../core/check/shop-fields.ts';
import { readShopFile, type ShopFileContent, writeShopFile } from '../../core/packet/index.ts';
import { now, uuid } from '../../device/clock.ts';
import { type ShareOutcome, shareFile } from '../../device/share.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { dateText } from '../model/job-words.ts';
import { chooseUnits, units } from '../model/services.ts';
import { changeTemplates, readShop, type Shop, saveRules } from '../model/shop.ts';
import { Banner } from '../parts/marks.tsx';

/** The settings as a file, and from one: for the shop's other devices. */
export function ShopFile({ shop }: { shop: Shop }) {
  const words = sayShop().file;
  const [outcome, setOutcome] = useState<ShareOutcome | null>(null);
  const save = async (): Promise<void> => {
    const at = now();
    const { rules, templates } = shop;
    const text = writeShopFile({ at, units: units.value, rules, templates: [...templates] });
    setOutcome(await shareFile(new Blob([text], { type: 'application/json' }), words.name(at.slice(0, 10))));
  };
  return (
    <section class="stack">
      <h2>{words.title}</h2>
      <p class="quiet small">{words.help}</p>
      <button type="button" class="button wide" onClick={() => void save()} data-testid="save-shop">
        {words.save}
      </button>
      {outcome === 'downloaded' && <p role="status">{words.saved}</p>}
      {outcome === 'shared' && <p role="status">{words.shared}</p>}
      {outcome === 'failed' && <p role="alert">{words.failed}</p>}
      <TakeOver />
    </section>
  );
}

type State =
  | { at: 'nothing' }
  | { at: 'found'; content: ShopFileContent }
  | { at: 'taken'; templates: number }
  | { at: 'refused'; why: string };

/** A file is read and said what is in it first; what is stored changes when that is taken. */
function TakeOver() {
  const words = sayShop().file;
  const [state, setState] = useState<State>({ at: 'nothing' });
  const open = async (file: File): Promise<void> => {
    const read = readShopFile(await file.text());
    setState(read.ok ? { at: 'found', content: read.content } : { at: 'refused', why: words.why[read.why] });
  };
  const take = (content: ShopFileContent): void => {
    void takeOver(content).then(
      (templates) => setState({ at: 'taken', templates }),
      () => setState({ at: 'refused', why: sayShop().notSaved }),
    );
  };
  return (
    <>
      <label class="button wide">
        {words.open}
        <input
          class="sr-only"
          type="file"
          accept=".json,.txt,application/json,text/plain"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            event.currentTarget.value = '';
            if (file) void open(file).catch(() => setState({ at: 'refused', why: words.why['not-json'] }));
          }}
        />
      </label>
      {state.at === 'refused' && (
        <Banner tone="stop">
          <p>{words.refused}</p>
          <p>{state.why}</p>
        </Banner>
      )}
      {state.at === 'taken' && <Banner tone="good">{words.taken(state.templates)}</Banner>}
      {state.at === 'found' && (
        <Banner tone="note">
          <p>
            {words.found(
              dateText(state.content.at),
              ownFields(state.content.rules).length,
              state.content.templates.length,
            )}
          </p>
          {state.content.rules.shop && <p>{words.foundFrom(state.content.rules.shop)}</p>}
          <p>{words.warning}</p>
          <div class="row">
            <button type="button" class="button main" onClick={() => take(state.content)}>
              {words.take}
            </button>
            <button type="button" class="button plain" onClick={() => setState({ at: 'nothing' })}>
              {say().general.cancel}
            </button>
          </div>
        </Banner>
      )}
    </>
  );
}

/** How many templates were new. One that is here under the same id with other content is kept beside, never replaced. */
async function takeOver({ rules, templates, units: chosen }: ShopFileContent): Promise<number> {
  const before = await readShop();
  const ids = new Set(before.templates.map(({ id }) => id));
  const known = new Set(before.templates.map(contentOf));
  const fresh = templates
    .filter((template) => !known.has(contentOf(template)))
    .map((template) => (ids.has(template.id) ? { ...template, id: uuid() } : template));
  if (fresh.length > 0) await changeTemplates((list) => [...list, ...fresh]);
  await saveRules(rules);
  await chooseUnits(chosen);
  return fresh.length;
}

const contentOf = ({ name, piece }: ShopFileContent['templates'][number]): string => JSON.stringify([name, piece]);
