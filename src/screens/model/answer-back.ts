import { pulse } from '../../device/vibrate.ts';
import type { SpokenValue } from '../../text/spoken.ts';
import { padSettings } from './pad-settings.ts';

interface Voice {
  wake: () => void;
  readBack: (value: SpokenValue) => boolean;
}
let voice: Voice | null = null;

/** Brings what reads back, where it is wanted, before it is needed: by then it must be there within a tap. */
export function readyToAnswer(): void {
  if (padSettings.value['read-back'] && !voice)
    void import('./read-back.ts').then(
      ({ wake, readBack }) => {
        voice = { wake, readBack };
      },
      () => undefined,
    );
}

/** To be called within the tap that will be answered later. */
export function inTap(): void {
  if (padSettings.value['read-back']) voice?.wake();
}

/** A reading is on disk: felt, and heard where that is wanted; twice felt when the check speaks up. */
export function answerBack(accepted: SpokenValue | null, { look }: { look: boolean }): void {
  if (padSettings.value.vibrate) pulse(look ? 'twice' : 'once');
  if (accepted && padSettings.value['read-back']) voice?.readBack(accepted);
}
