import { useEffect, useId, useState } from 'preact/hooks';
import { ownFields, rangeOf, type ShopField, shopValue, withShopValue } from '../../core/check/shop-fields.ts';
import type { ShopRules } from '../../core/job/index.ts';
import { sayShop } from '../../text/shop.ts';
import { units } from '../model/services.ts';
import { fieldText, fieldWords, readField, shopWords } from '../model/shop-values.ts';

interface Props {
  field: ShopField;
  rules: ShopRules;
  onSave: (rules: ShopRules) => void;
}

/** One number of the shop: what it goes by, the default beside it, and the way back. */
export function ShopFieldRow({ field, rules, onSave }: Props) {
  const id = useId();
  const words = sayShop();
  const { name, help } = words.fields[field];
  const stands = fieldText(field, shopValue(rules, field), units.value);
  const [text, setText] = useState(stands);
  const [fault, setFault] = useState('');
  useEffect(() => setText(stands), [stands]);
  const own = ownFields(rules).includes(field);
  const put = (value: number | null): void => {
    const set = withShopValue(rules, field, value);
    setFault(set.ok ? '' : faultText(field, set.why));
    if (!set.ok) return;
    setText(fieldText(field, shopValue(set.shop, field), units.value));
    onSave(set.shop);
  };
  const commit = (): void => {
    if (text.trim() === stands) {
      setFault('');
      return;
    }
    const read = readField(field, text, units.value);
    if (read.ok) put(read.value);
    else setFault(read.why);
  };
  return (
    <div class="shop-field">
      <label for={id}>
        {name}
        {help && <span class="quiet small">{help}</span>}
      </label>
      <input
        id={id}
        class={own ? 'own' : ''}
        value={text}
        maxLength={40}
        autocomplete="off"
        inputMode={rangeOf(field).quantity === 'length' ? 'text' : 'decimal'}
        aria-invalid={fault !== ''}
        aria-describedby={`${id}-usual`}
        onInput={(event) => setText(event.currentTarget.value)}
        onChange={commit}
      />
      <span class="quiet small" id={`${id}-usual`}>
        {words.default(shopWords(null, field, units.value))}
      </span>
      {own && (
        <button type="button" class="button plain" aria-label={words.backTo(name)} onClick={() => put(null)}>
          {words.back}
        </button>
      )}
      {fault && (
        <p class="state stop" role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}

function faultText(field: ShopField, why: keyof ReturnType<typeof sayShop>['faults']): string {
  const { min, max } = rangeOf(field);
  return sayShop().faults[why](fieldWords(field, min, units.value), fieldWords(field, max, units.value));
}
