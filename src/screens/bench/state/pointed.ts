import { useEffect } from 'preact/hooks';
import { pointedAt, type Target } from './selection.ts';

const ON: ReadonlySet<string> = new Set<Target['on']>([
  'reading',
  'point',
  'run',
  'shot',
  'question',
  'obstruction',
  'finding',
  'photo',
  'entry',
]);

const isOn = (on: string | undefined): on is Target['on'] => on !== undefined && ON.has(on);

/** What a part of a drawing or a row of a list is about, as it says of itself; null where nothing says. */
export function targetOf({ target }: Event): Target | null {
  const part = target instanceof Element ? target.closest<HTMLElement | SVGElement>('[data-on], [data-row]') : null;
  if (!part) return null;
  const { on, id, row = '' } = part.dataset;
  if (isOn(on) && id !== undefined) return { on, id };
  const colon = row.indexOf(':');
  const list = row.slice(0, colon);
  return colon > 0 && isOn(list) ? { on: list, id: row.slice(colon + 1) } : null;
}

/** What lies under the mouse lights up everywhere while it is there. A finger points at nothing before it taps. */
export function usePointed(box: { current: HTMLElement | null }): void {
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const point = (target: Target | null): void => {
      const before = pointedAt.value;
      if (before?.on !== target?.on || before?.id !== target?.id) pointedAt.value = target;
    };
    const over = (event: PointerEvent): void => {
      // Marks on a large picture say themselves whose they are; a drag is no pointing.
      const onPicture = event.target instanceof Element && event.target.closest('.bench-large') !== null;
      if (event.pointerType === 'mouse' && event.buttons === 0 && !onPicture) point(targetOf(event));
    };
    const leave = (): void => point(null);
    element.addEventListener('pointerover', over);
    element.addEventListener('pointerleave', leave);
    return () => {
      element.removeEventListener('pointerover', over);
      element.removeEventListener('pointerleave', leave);
    };
  }, []);
}
