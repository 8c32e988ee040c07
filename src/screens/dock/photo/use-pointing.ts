import { useRef, useState } from 'preact/hooks';
import type { Place } from '../../parts/photo/Overlay.tsx';

/** Where the person points in the picture, and where the picture lies on the screen, CSS px. */
interface Pointed {
  place: Place;
  picture: DOMRect;
}

/** ms and CSS px within which a second tap was the other half of a double tap. */
const SECOND_TAP = 500;
const SAME_SPOT = 24;
/** Shares of the picture an arrow key moves the cross. */
const STEP = 0.004;
const LEAP = 0.04;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const clamp = (value: number): number => Math.min(1, Math.max(0, value));

/**
 * Points at places of a picture: press, drag, lift; or arrow keys and Enter. What is lifted off the picture, or interrupted by the
 * system or a second finger, places nothing. start: where the cross of the keys begins.
 */
export function usePointing(
  element: { current: HTMLElement | null },
  start: Place | null,
  onPlace: (at: Place) => void,
) {
  const [pressed, setPressed] = useState<Pointed | null>(null);
  const [cross, setCross] = useState<Place | null>(null);
  const pressing = useRef(false);
  const lifted = useRef({ when: Number.NEGATIVE_INFINITY, x: 0, y: 0 });

  const pointedBy = (event: PointerEvent): Pointed | null => {
    const picture = element.current?.getBoundingClientRect();
    if (!picture) return null;
    const [x, y] = [(event.clientX - picture.left) / picture.width, (event.clientY - picture.top) / picture.height];
    return x < 0 || x > 1 || y < 0 || y > 1 ? null : { place: { x, y }, picture };
  };
  const stop = (): void => {
    pressing.current = false;
    setPressed(null);
  };
  const down = (event: PointerEvent): void => {
    if (!event.isPrimary || event.button !== 0) {
      stop();
      return;
    }
    element.current?.setPointerCapture(event.pointerId);
    pressing.current = true;
    setCross(null);
    setPressed(pointedBy(event));
  };
  const move = (event: PointerEvent): void => {
    if (event.isPrimary && pressing.current) setPressed(pointedBy(event));
  };
  const up = (event: PointerEvent): void => {
    const to = pressing.current && event.isPrimary ? pointedBy(event) : null;
    stop();
    if (!to) return;
    const { when, x, y } = lifted.current;
    const twice = performance.now() - when < SECOND_TAP && Math.hypot(event.clientX - x, event.clientY - y) < SAME_SPOT;
    lifted.current = { when: performance.now(), x: event.clientX, y: event.clientY };
    if (!twice) onPlace(to.place);
  };
  const nudge = (dx: number, dy: number, by = STEP): void =>
    setCross((now) => {
      const from = now ?? start ?? { x: 0.5, y: 0.5 };
      return { x: clamp(from.x + dx * by), y: clamp(from.y + dy * by) };
    });
  const put = (): void => {
    if (!cross) return;
    setCross(null);
    onPlace(cross);
  };
  const key = (event: KeyboardEvent): void => {
    const arrow = ARROWS[event.key];
    if (arrow) nudge(arrow[0], arrow[1], event.shiftKey ? LEAP : STEP);
    else if ((event.key === 'Enter' || event.key === ' ') && !event.repeat) put();
    else if (event.key === 'Escape') setCross(null);
    else return;
    event.preventDefault();
  };
  return { pressed, cross, nudge, put, on: { down, move, up, cancel: stop, key } };
}
