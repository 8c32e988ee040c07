import { useEffect } from 'preact/hooks';
import { sayBench } from '../../../text/bench.ts';

/** px of a drag that a key stands for. */
const STEP = 22;
const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-STEP, 0],
  ArrowRight: [STEP, 0],
  ArrowUp: [0, -STEP],
  ArrowDown: [0, STEP],
};

/** While a piece can be turned, its drawing takes the focus, and the arrow keys turn it as a drag does. */
export function useTurnKeys(
  box: { current: HTMLElement | null },
  onTurn: ((x: number, y: number) => void) | null,
): void {
  const turns = onTurn !== null;
  useEffect(() => {
    const element = box.current;
    if (!element || !onTurn) return;
    const press = (event: KeyboardEvent): void => {
      const by = KEYS[event.key];
      if (!by) return;
      event.preventDefault();
      onTurn(by[0], by[1]);
    };
    const named = { tabindex: '0', role: 'application', 'aria-label': sayBench().plan.turning };
    for (const [name, value] of Object.entries(named)) element.setAttribute(name, value);
    element.addEventListener('keydown', press);
    return () => {
      for (const name of Object.keys(named)) element.removeAttribute(name);
      element.removeEventListener('keydown', press);
    };
  }, [turns]);
}
