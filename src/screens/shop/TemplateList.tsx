import { useState } from 'preact/hooks';
import type { Template } from '../../core/guide/again/index.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { changeTemplates, type Shop } from '../model/shop.ts';

/** The pieces a shop keeps, each to be removed by two taps. */
export function TemplateList({ shop }: { shop: Shop }) {
  const words = sayShop().templates;
  return (
    <section class="stack">
      <h2>{words.title}</h2>
      {shop.templates.length === 0 ? (
        <p class="quiet">{words.none}</p>
      ) : (
        <ul class="list">
          {shop.templates.map((template) => (
            <TemplateRow key={template.id} template={template} />
          ))}
        </ul>
      )}
      {shop.unread.length > 0 && <p class="quiet small">{words.unread(shop.unread.length)}</p>}
    </section>
  );
}

function TemplateRow({ template }: { template: Template }) {
  const [asking, setAsking] = useState(false);
  const words = sayShop().templates;
  const { id, name, piece } = template;
  const remove = (): void => void changeTemplates((list) => list.filter((one) => one.id !== id));
  return (
    <li class="shop-row">
      <span class="grow">
        <strong>{name}</strong>
        <span class="shop-what quiet small">{words.what(say().general.pieceKinds[piece.kind], piece.walk.length)}</span>
      </span>
      {asking ? (
        <div class="stack">
          <p role="alert">{words.removeAsk(name)}</p>
          <div class="row">
            <button type="button" class="button" onClick={remove}>
              {words.removeSure}
            </button>
            <button type="button" class="button plain" onClick={() => setAsking(false)}>
              {say().general.cancel}
            </button>
          </div>
        </div>
      ) : (
        <button type="button" class="button plain" aria-label={words.removeOf(name)} onClick={() => setAsking(true)}>
          {words.remove}
        </button>
      )}
    </li>
  );
}
