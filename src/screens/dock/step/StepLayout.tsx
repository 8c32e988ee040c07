import type { ComponentChildren } from 'preact';
import { TakenBack } from './UndoButton.tsx';

/** Nothing pressed below keeps the focus: Enter and Space of a keyboard or a meter belong to the pad. */
function keepsNoFocus(element: HTMLElement | null): void {
  element?.addEventListener('mousedown', (event) => event.preventDefault());
}

interface Props {
  children: ComponentChildren;
  foot: ComponentChildren;
  /** Nothing above can be pressed: a keyboard must come there all the same, to scroll. */
  onlyRead?: boolean;
}

/** What is read above, scrolling where it must; what is pressed below, always in the same place. */
export function StepLayout({ children, foot, onlyRead = false }: Props) {
  return (
    <>
      <div class="step-read" {...(onlyRead ? { tabIndex: 0 } : {})}>
        {children}
      </div>
      <div class="step-foot" ref={keepsNoFocus}>
        <TakenBack />
        {foot}
      </div>
    </>
  );
}
