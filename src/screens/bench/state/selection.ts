import { signal } from '@preact/signals';
import type { Subject } from '../../../core/check/index.ts';

/** What the person at the bench is looking at: everything that belongs to it lights up in every list and drawing. */
export interface Target {
  on: Subject['on'] | 'finding' | 'photo';
  id: string;
}

export const selected = signal<Target | null>(null);

/** What the pointer is over, for as long as it is there: lights up in the drawing and on pictures only. */
export const pointedAt = signal<Target | null>(null);

/** The picture that stands in the plan's place; null while the plan does. */
export const largePhoto = signal<string | null>(null);

export const isSelected = (on: Target['on'], id: string): boolean =>
  selected.value?.on === on && selected.value.id === id;

/** Selects a thing; once more lets go of it. */
export function toggle(on: Target['on'], id: string): void {
  selected.value = isSelected(on, id) ? null : { on, id };
}
