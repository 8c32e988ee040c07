import type { Signal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { padSettings } from '../../model/pad-settings.ts';
import { readLength } from '../../model/words.ts';
import { type Halves, offered } from './repeat.ts';
import { Tape } from './Tape.tsx';
import { type PadKey, typed, withUnit } from './typing.ts';

interface Props {
  text: Signal<string>;
  onEdit: () => void;
  sheet: Pick<Sheet, 'system' | 'fraction'>;
  kind: SheetReading['kind'];
  halves: Halves | null;
}

/** What is being typed, large; beside it what may be tapped again; the tape as it would look there. */
export function PadEntry(props: Props) {
  const { text, sheet, kind } = props;
  const shown = text.value;
  const angle = kind === 'lean';
  return (
    <div class={kind === 'running' ? 'entry running' : 'entry'}>
      <div class="entry-line">
        <output class="entry-text number" aria-label={say().dock.pad.entry}>
          {shown === '' ? <span class="quiet entry-hint">{say().dock.step.expected}</span> : shown}
          {shown !== '' && <span class="quiet entry-unit">{angle ? '°' : unitBehind(shown, sheet)}</span>}
        </output>
        {!angle && <Beside {...props} />}
      </div>
      {!angle && <Tape mm={lengthTyped(shown, sheet)} sheet={sheet} />}
    </div>
  );
}

/** The unit a text is taken to be in, where it does not say so itself. */
function unitBehind(text: string, { system }: Props['sheet']): string {
  if (/[a-z'"″]\s*$/.test(text)) return '';
  return system === 'metric' ? ` ${padSettings.value['pad.unit']}` : ' in';
}

/** Only what is being typed: an earlier value on the tape would lead whoever reads it again. */
function lengthTyped(text: string, sheet: Props['sheet']): number | null {
  if (text.trim() === '') return null;
  const parsed = readLength(sheet.system === 'metric' ? withUnit(text, padSettings.value['pad.unit']) : text, sheet);
  return parsed.ok ? parsed.mm : null;
}

/** Keys that come and go: one half of the reading before, and the mark between two sixteenths. */
function Beside({ text, onEdit, sheet, halves }: Props) {
  const usedWhole = useRef(false);
  if (text.value === '') usedWhole.current = false;
  const { whole, fraction } = halves ? offered(text.value, halves, usedWhole.current) : { whole: '', fraction: '' };
  const write = (to: string): void => {
    text.value = to;
    onEdit();
  };
  const press = (key: PadKey): void => write(typed(text.value, key));
  const words = say().dock.pad;
  return (
    <div class="entry-beside">
      {whole !== '' && (
        <Half
          label={words.again(whole.replace(/\.$/, ''))}
          press={() => {
            usedWhole.current = true;
            write(whole);
          }}
        />
      )}
      {fraction !== '' && (
        <Half
          label={words.again(fraction)}
          press={() =>
            sheet.system === 'metric' ? write(text.value + fraction) : press({ type: 'fraction', text: fraction })
          }
        />
      )}
      {text.value !== '' && sheet.system === 'imperial' && sheet.fraction === 32 && (
        <Half label={words.finer} press={() => press({ type: 'finer' })} />
      )}
    </div>
  );
}

const Half = ({ label, press }: { label: string; press: () => void }) => (
  <button type="button" class="key half" onClick={press}>
    {label}
  </button>
);
