import { useEffect, useState } from 'preact/hooks';
import type { ShopField } from '../../core/check/shop-fields.ts';
import { sayShop } from '../../text/shop.ts';
import { chooseUnits, units } from '../model/services.ts';
import { readShop, type Shop, saveRules, shop } from '../model/shop.ts';
import { Banner } from '../parts/marks.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { UnitsField } from '../parts/UnitsField.tsx';
import { BlankSheets } from './BlankSheets.tsx';
import { ShopFieldRow } from './ShopFieldRow.tsx';
import { ShopFile } from './ShopFile.tsx';
import { TemplateList } from './TemplateList.tsx';
import './shop.css';

const GROUPS: readonly (readonly [keyof ReturnType<typeof sayShop>['groups'], readonly ShopField[]])[] = [
  ['need', ['line', 'corner', 'owner', 'sides']],
  ['fasteners', ['gap-min', 'gap-max', 'end']],
  ['tapes', ['tape-short', 'tape-long', 'girth-short', 'girth-long', 'offset-short', 'offset-long']],
  ['cloth', ['hem', 'hollow', 'trim']],
];

/** What a shop calls usual: each number with its default beside it, and the pieces it keeps. */
export function ShopScreen() {
  const words = sayShop();
  const [failed, setFailed] = useState(false);
  useEffect(() => void readShop().catch(() => setFailed(true)), []);
  const now = shop.value;
  return (
    <div class="page">
      <TopBar back={{ at: 'keep' }} title={words.title} />
      {failed && <Banner tone="stop">{words.cannotRead}</Banner>}
      {now && !failed && <Settings shop={now} />}
    </div>
  );
}

function Settings({ shop: now }: { shop: Shop }) {
  const words = sayShop();
  const [unsaved, setUnsaved] = useState(false);
  const save = (rules: Shop['rules']): void => {
    void saveRules(rules).then(
      () => setUnsaved(false),
      () => setUnsaved(true),
    );
  };
  const rename = (name: string): void => {
    const { shop: _, ...rest } = now.rules;
    save(name === '' ? rest : { ...rest, shop: name });
  };
  return (
    <>
      <p class="quiet">{words.about}</p>
      {unsaved && <Banner tone="stop">{words.notSaved}</Banner>}
      <section class="stack">
        <label class="field">
          <span>{words.name}</span>
          <input
            value={now.rules.shop ?? ''}
            maxLength={120}
            autocomplete="organization"
            onChange={(event) => rename(event.currentTarget.value.trim())}
          />
          <span class="quiet small">{words.nameHelp}</span>
        </label>
      </section>
      <section class="stack">
        <h2>{words.units}</h2>
        <UnitsField value={units.value} onChange={(chosen) => void chooseUnits(chosen)} />
      </section>
      {GROUPS.map(([group, fields]) => (
        <section key={group} class="stack">
          <h2>{words.groups[group].title}</h2>
          <p class="quiet small">{words.groups[group].help}</p>
          {fields.map((field) => (
            <ShopFieldRow key={field} field={field} rules={now.rules} onSave={save} />
          ))}
        </section>
      ))}
      <TemplateList shop={now} />
      <BlankSheets />
      <ShopFile shop={now} />
    </>
  );
}
