import type { ComponentChildren } from 'preact';

/** What is read above, scrolling where it must; what is pressed below, always in the same place. */
export function StepLayout({ children, foot }: { children: ComponentChildren; foot: ComponentChildren }) {
  return (
    <>
      <div class="step-read">{children}</div>
      <div class="step-foot">{foot}</div>
    </>
  );
}
