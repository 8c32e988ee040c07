import { speak, wakeVoice } from '../../device/speech.ts';
import { language } from '../../text/language.ts';
import { type SpokenValue, valueSpoken } from '../../text/spoken.ts';

let awake = false;

/** Once, inside a tap. */
export function wake(): void {
  if (!awake) awake = wakeVoice(language.value);
}

/** Says a value as the trade says it, in the phone's own voice; silent where it has none. */
export const readBack = (value: SpokenValue): boolean => speak(valueSpoken(value), language.value);
