import { useLayoutEffect } from 'preact/hooks';
import type { System } from '../../../core/job/index.ts';
import { keyFromKeyboard, type PadKey } from './typing.ts';

interface Keyboard {
  system: System;
  onKey: (key: PadKey) => void;
  onEnter: () => void;
}

/** Keys of a keyboard, or of a meter that types, wherever they are not meant for something else on the screen. */
export function useKeyboard({ system, onKey, onEnter }: Keyboard): void {
  // With the screen and not a moment after it: between two steps no key of a burst may fall to the floor.
  useLayoutEffect(() => {
    const onDown = (event: KeyboardEvent): void => {
      const target = event.target;
      const elsewhere = target instanceof HTMLElement && target.closest('input, textarea, select, button, a, dialog');
      if (event.ctrlKey || event.metaKey || event.altKey || (elsewhere && event.key === 'Enter')) return;
      if (target instanceof HTMLElement && target.closest('input, textarea, select')) return;
      if (event.key === 'Enter') {
        event.preventDefault();
        onEnter();
        return;
      }
      const key = keyFromKeyboard(event.key, system);
      if (!key || (elsewhere && event.key === ' ')) return;
      event.preventDefault();
      onKey(key);
    };
    addEventListener('keydown', onDown);
    return () => removeEventListener('keydown', onDown);
  });
}
