import { useEffect, useRef, useState } from 'preact/hooks';
import type { Flat } from '../../parts/drawing/project.ts';
import { WIDE } from '../use-wide.ts';

/** How the drawing is looked at: enlarged about its middle, then moved by x and y, px. */
export interface Look {
  zoom: number;
  x: number;
  y: number;
}

const WHOLE: Look = { zoom: 1, x: 0, y: 0 };
const LARGEST = 12;
/** px; a finger that moved less has tapped. */
const TAP = 6;

export interface PanZoom {
  look: Look;
  enlarge: (factor: number) => void;
  move: (x: number, y: number) => void;
  whole: () => void;
  /** True right after a drag, so that its end is not taken for a tap. */
  dragged: () => boolean;
}

/** Enlarges a look, keeping the place `at` (from the middle) where it is. */
function enlarged(look: Look, factor: number, at: Flat): Look {
  const zoom = Math.min(LARGEST, Math.max(1, look.zoom * factor));
  if (zoom === 1) return WHOLE;
  const by = zoom / look.zoom;
  return { zoom, x: at[0] - (at[0] - look.x) * by, y: at[1] - (at[1] - look.y) * by };
}

/**
 * Moves and enlarges a drawing by mouse, wheel, finger, two fingers, or by buttons. onTurn: what one finger or the mouse does
 * instead of moving it, by so many px; two fingers, or the mouse with Shift, still move it.
 */
export function usePanZoom(box: { current: HTMLElement | null }, onTurn: Turning | null = null): PanZoom {
  const [look, setLook] = useState(WHOLE);
  const moved = useRef(false);
  const turning = useRef(onTurn);
  turning.current = onTurn;
  useEffect(() => {
    const element = box.current;
    return element ? listen(element, setLook, moved, turning) : undefined;
  }, [box]);
  return {
    look,
    enlarge: (factor) => setLook((now) => enlarged(now, factor, [0, 0])),
    move: (x, y) => setLook((now) => ({ ...now, x: now.x + x, y: now.y + y })),
    whole: () => setLook(WHOLE),
    dragged: () => moved.current,
  };
}

type SetLook = (change: (now: Look) => Look) => void;
type Turning = (x: number, y: number) => void;

function listen(
  element: HTMLElement,
  setLook: SetLook,
  moved: { current: boolean },
  turning: { current: Turning | null },
): () => void {
  const fingers = new Map<number, Flat>();
  const fromMiddle = (x: number, y: number): Flat => {
    const { left, top, width, height } = element.getBoundingClientRect();
    return [x - left - width / 2, y - top - height / 2];
  };
  let start: Flat = [0, 0];
  const down = (event: PointerEvent): void => {
    if (fingers.size === 0) {
      moved.current = false;
      start = [event.clientX, event.clientY];
    }
    fingers.set(event.pointerId, [event.clientX, event.clientY]);
  };
  const move = (event: PointerEvent): void => {
    const before = fingers.get(event.pointerId);
    if (!before) return;
    const now: Flat = [event.clientX, event.clientY];
    if (!moved.current && Math.hypot(now[0] - start[0], now[1] - start[1]) < TAP) return;
    if (!moved.current) element.setPointerCapture(event.pointerId);
    moved.current = true;
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    fingers.set(event.pointerId, now);
    if (!other && turning.current && !event.shiftKey) turning.current(now[0] - before[0], now[1] - before[1]);
    else if (!other) setLook((look) => ({ ...look, x: look.x + now[0] - before[0], y: look.y + now[1] - before[1] }));
    else {
      const factor = gap(now, other) / Math.max(1, gap(before, other));
      const middle = fromMiddle((now[0] + other[0]) / 2, (now[1] + other[1]) / 2);
      setLook((look) => enlarged(look, factor, middle));
    }
  };
  const up = (event: PointerEvent): void => void fingers.delete(event.pointerId);
  const wheel = (event: WheelEvent): void => {
    if (!event.ctrlKey && !matchMedia(WIDE).matches) return;
    event.preventDefault();
    const at = fromMiddle(event.clientX, event.clientY);
    setLook((look) => enlarged(look, Math.exp(-event.deltaY * 0.0015), at));
  };
  const all = { pointerdown: down, pointermove: move, pointerup: up, pointercancel: up };
  for (const [name, handle] of Object.entries(all)) element.addEventListener(name, handle as EventListener);
  element.addEventListener('wheel', wheel, { passive: false });
  return () => {
    for (const [name, handle] of Object.entries(all)) element.removeEventListener(name, handle as EventListener);
    element.removeEventListener('wheel', wheel);
  };
}

const gap = (a: Flat, b: Flat): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
