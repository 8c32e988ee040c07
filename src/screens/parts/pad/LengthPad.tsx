import type { Signal } from '@preact/signals';
import type { Sheet } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { inTap } from '../../model/answer-back.ts';
import { choosePad, padSettings } from '../../model/pad-settings.ts';
import { BackKey, FractionKey, Key, NextKey } from './Key.tsx';
import { fractionKeys, isQuarter, type MetricUnit, type PadKey, typed, typedByKeyboard, withUnit } from './typing.ts';
import { useKeyboard } from './use-keyboard.ts';

interface Props {
  /** What is typed. A signal, since a meter that types sends its keys faster than the screen is drawn. */
  text: Signal<string>;
  onEdit?: () => void;
  onNext: () => void;
  nextLabel: string;
  nextDisabled?: boolean;
  /** Next is possible, but not what is hoped for. */
  quietNext?: boolean;
  /** What is measured may be below or behind: a key for the sign. */
  signed?: boolean;
  /** Degrees instead of a length. */
  angle?: boolean;
  sheet: Pick<Sheet, 'system' | 'fraction'>;
}

/** Longer than any length; what comes after is noise. */
const LONGEST = 40;
const UNITS: readonly MetricUnit[] = ['mm', 'cm', 'm'];

/**
 * The length pad: always in the same place, every key 60 px high, Next under the thumb. Digits and quarters on one side,
 * the finer fractions, or the units, and Next on the side of the hand that holds the phone.
 */
export function LengthPad(props: Props) {
  const { text, onEdit, nextDisabled, quietNext, sheet, angle } = props;
  const write = (to: string): void => {
    text.value = to.slice(0, LONGEST);
    onEdit?.();
  };
  const press = (key: PadKey) => () => write(typed(text.value, key));
  const next = (): void => {
    inTap();
    if (sheet.system === 'metric' && !angle) text.value = withUnit(text.value, padSettings.value['pad.unit']);
    props.onNext();
  };
  useKeyboard({
    system: sheet.system,
    onKey: (key) => write(typedByKeyboard(text.value, key)),
    onEnter: () => (!nextDisabled || text.value.trim() !== '') && next(),
  });
  const decimal = sheet.system === 'metric' || (angle ?? false);
  const left = padSettings.value['pad.hand'] === 'left';
  const sign = props.signed && <Key key="±" label="±" spoken={say().dock.pad.sign} press={press({ type: 'sign' })} />;
  const last = (
    <NextKey
      key="next"
      label={props.nextLabel}
      press={next}
      disabled={nextDisabled ?? false}
      quiet={quietNext ?? false}
    />
  );
  return (
    <div class={['pad', angle ? 'angle' : decimal && 'metric', left && 'left'].filter(Boolean).join(' ')}>
      <Digits press={press} decimal={decimal} sheet={sheet} />
      {!decimal && <Fractions press={press} sheet={sheet} />}
      {decimal && !angle && <Units press={press} />}
      <div class="pad-last">{left ? [last, sign] : [sign, last]}</div>
    </div>
  );
}

type Press = (key: PadKey) => () => void;

const DIGITS = [...'789456123'];

function Digits({ press, decimal, sheet }: { press: Press; decimal: boolean; sheet: Props['sheet'] }) {
  const words = say().dock.pad;
  return (
    <div class="pad-digits">
      {DIGITS.map((digit) => (
        <Key key={digit} label={digit} press={press({ type: 'text', text: digit })} />
      ))}
      {decimal ? (
        <Key label="." spoken={words.point} press={press({ type: 'text', text: '.' })} />
      ) : (
        <Key label={words.feet} spoken={words.feetSpoken} press={press({ type: 'feet' })} />
      )}
      <Key label="0" press={press({ type: 'text', text: '0' })} />
      <BackKey spoken={words.back} press={press({ type: 'back' })} />
      {!decimal &&
        fractionKeys(sheet.fraction)
          .filter(isQuarter)
          .map((text) => <FractionKey key={text} label={text} press={press({ type: 'fraction', text })} />)}
    </div>
  );
}

/** A row for each quarter of an inch, the eighth in its middle. */
function Fractions({ press, sheet }: { press: Press; sheet: Props['sheet'] }) {
  return (
    <div class={sheet.fraction === 8 ? 'pad-fractions wide' : 'pad-fractions'}>
      {fractionKeys(sheet.fraction)
        .filter((text) => !isQuarter(text))
        .map((text) => (
          <FractionKey key={text} label={text} press={press({ type: 'fraction', text })} />
        ))}
    </div>
  );
}

/** The unit last pressed stays for the next reading. */
function Units({ press }: { press: Press }) {
  const on = padSettings.value['pad.unit'];
  return (
    <div class="pad-units">
      {UNITS.map((unit) => (
        <Key
          key={unit}
          label={unit}
          down={unit === on}
          press={() => {
            void choosePad('pad.unit', unit);
            press({ type: 'unit', unit })();
          }}
        />
      ))}
    </div>
  );
}
