import { useEffect, useState } from 'preact/hooks';
import { ownVoice, watchVoices } from '../../device/speech.ts';
import { canVibrate, pulse } from '../../device/vibrate.ts';
import { say } from '../../text/index.ts';
import { language } from '../../text/language.ts';
import { choosePad, padSettings } from '../model/pad-settings.ts';
import { readBack } from '../model/read-back.ts';

const HANDS = ['right', 'left'] as const;

/** A value worth hearing before one decides: it has a whole and a fraction. */
const SAMPLE = { unit: 'in', parts: { form: 'inches', inches: 47, numerator: 5, denominator: 8 } } as const;

/** Which hand holds the phone, and how a reading that was recorded is answered. */
export function PadSettings() {
  const words = say().dock.keep;
  const settings = padSettings.value;
  const voice = useOwnVoice();
  return (
    <section class="stack">
      <h2>{words.pad}</h2>
      <p class="quiet small">{words.hand}</p>
      <div class="row">
        {HANDS.map((hand) => (
          <button
            key={hand}
            type="button"
            class="button"
            aria-pressed={settings['pad.hand'] === hand}
            onClick={() => void choosePad('pad.hand', hand)}
          >
            {words.hands[hand]}
          </button>
        ))}
      </div>
      <Switch
        label={words.vibrate}
        help={canVibrate() ? words.vibrateHelp : words.noVibrate}
        on={settings.vibrate}
        possible={canVibrate()}
        choose={(on) => {
          if (on) pulse('once');
          void choosePad('vibrate', on);
        }}
      />
      <Switch
        label={words.readBack}
        help={voice ? words.readBackHelp : words.noVoice}
        on={settings['read-back']}
        possible={voice}
        choose={(on) => {
          // Heard at once; and on some phones a page may speak later only after it has spoken inside a tap.
          if (on) readBack(SAMPLE);
          void choosePad('read-back', on);
        }}
      />
    </section>
  );
}

/** Whether the phone has a voice of its own; several systems know only a moment after they are asked. */
function useOwnVoice(): boolean {
  const look = (): boolean => ownVoice(language.value) !== null;
  const [has, setHas] = useState(look);
  useEffect(() => watchVoices(() => setHas(look())), []);
  return has;
}

interface SwitchProps {
  label: string;
  help: string;
  on: boolean;
  possible: boolean;
  choose: (on: boolean) => void;
}

function Switch({ label, help, on, possible, choose }: SwitchProps) {
  const words = say().dock.keep;
  const shown = on && possible;
  return (
    <>
      <button
        type="button"
        role="switch"
        class="button switch"
        aria-checked={shown}
        disabled={!possible}
        onClick={() => choose(!on)}
      >
        <span>{label}</span>
        <span class="switch-state">{shown ? words.on : words.off}</span>
      </button>
      <p class="quiet small">{help}</p>
    </>
  );
}
