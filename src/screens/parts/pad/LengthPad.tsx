import type { Signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Sheet } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { fractionKeys, keyFromKeyboard, type PadKey, typed, typedByKeyboard } from './typing.ts';

interface Props {
  /** What is typed. A signal, since a meter that types sends its keys faster than the screen is drawn. */
  text: Signal<string>;
  onEdit?: () => void;
  onNext: () => void;
  nextLabel: string;
  nextDisabled?: boolean;
  /** Next is possible, but not what is hoped for. */
  quietNext?: boolean;
  sheet: Pick<Sheet, 'system' | 'fraction'>;
}

/** The length pad: always in the same place, every key 60 px high, Next under the thumb. */
export function LengthPad(props: Props) {
  useKeyboard(props);
  return props.sheet.system === 'metric' ? <MetricPad {...props} /> : <InchPad {...props} />;
}

/** Longer than any length; what comes after is noise. */
const LONGEST = 40;

function edit({ text, onEdit }: Pick<Props, 'text' | 'onEdit'>, to: string): void {
  text.value = to.slice(0, LONGEST);
  onEdit?.();
}

function useKeyboard(props: Props): void {
  const { text, onNext, sheet, nextDisabled } = props;
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const target = event.target;
      const elsewhere = target instanceof HTMLElement && target.closest('input, textarea, select, button, a, dialog');
      if (event.ctrlKey || event.metaKey || event.altKey || (elsewhere && event.key === 'Enter')) return;
      if (target instanceof HTMLElement && target.closest('input, textarea, select')) return;
      if (event.key === 'Enter') {
        event.preventDefault();
        if (!nextDisabled || text.value.trim() !== '') onNext();
        return;
      }
      const key = keyFromKeyboard(event.key, sheet.system);
      if (!key || (elsewhere && event.key === ' ')) return;
      event.preventDefault();
      edit(props, typedByKeyboard(text.value, key));
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
}

const DIGIT_ROWS = ['789', '456', '123'];

function InchPad(props: Props) {
  const { text, onNext, nextLabel, nextDisabled, quietNext, sheet } = props;
  const press = (key: PadKey) => () => edit(props, typed(text.value, key));
  const fractions = fractionKeys(sheet.fraction);
  const words = say().dock.pad;
  return (
    <div class="pad">
      <div class="pad-digits">
        {DIGIT_ROWS.flatMap((row) => [...row]).map((digit) => (
          <Key key={digit} label={digit} press={press({ type: 'text', text: digit })} />
        ))}
        <Key label={words.feet} spoken={words.feetSpoken} press={press({ type: 'feet' })} />
        <Key label="0" press={press({ type: 'text', text: '0' })} />
        <Key label="⌫" spoken={words.back} press={press({ type: 'back' })} />
        <NextKey label={nextLabel} press={onNext} disabled={nextDisabled ?? false} quiet={quietNext ?? false} />
      </div>
      <div class="pad-fractions">
        {fractions.map((fraction) => (
          <Key key={fraction} label={fraction} fraction press={press({ type: 'fraction', text: fraction })} />
        ))}
      </div>
    </div>
  );
}

function MetricPad(props: Props) {
  const { text, onNext, nextLabel, nextDisabled, quietNext } = props;
  const press = (key: PadKey) => () => edit(props, typed(text.value, key));
  return (
    <div class="pad metric">
      <div class="pad-digits">
        {DIGIT_ROWS.flatMap((row) => [...row]).map((digit) => (
          <Key key={digit} label={digit} press={press({ type: 'text', text: digit })} />
        ))}
        <Key label="." spoken={say().dock.pad.point} press={press({ type: 'text', text: '.' })} />
        <Key label="0" press={press({ type: 'text', text: '0' })} />
        <Key label="⌫" spoken={say().dock.pad.back} press={press({ type: 'back' })} />
        <NextKey label={nextLabel} press={onNext} disabled={nextDisabled ?? false} quiet={quietNext ?? false} />
      </div>
      <div class="pad-fractions">
        {['mm', 'cm', 'm'].map((unit) => (
          <Key key={unit} label={unit} press={press({ type: 'unit', unit })} />
        ))}
      </div>
    </div>
  );
}

function Key(props: { label: string; spoken?: string; fraction?: boolean; press: () => void }) {
  const [top, bottom] = props.label.split('/');
  return (
    <button
      type="button"
      class="key"
      aria-label={props.spoken ? `${props.label} ${props.spoken}` : props.label}
      onClick={props.press}
    >
      {props.fraction ? (
        <span class={(bottom?.length ?? 0) + (top?.length ?? 0) > 3 ? 'fraction long' : 'fraction'}>
          <sup>{top}</sup>⁄<sub>{bottom}</sub>
        </span>
      ) : (
        props.label
      )}
    </button>
  );
}

function NextKey({
  label,
  press,
  disabled,
  quiet,
}: {
  label: string;
  press: () => void;
  disabled: boolean;
  quiet: boolean;
}) {
  return (
    <button
      type="button"
      class={quiet ? 'key next quiet-next' : 'key next'}
      onClick={press}
      aria-disabled={disabled}
      data-testid="next"
    >
      {label}
    </button>
  );
}
