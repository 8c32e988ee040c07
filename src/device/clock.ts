import { v7 } from 'uuid';

/** A moment as ISO 8601 with the offset of the place, to the second: what a person there would have read. */
export function isoWithOffset(moment: Date, offsetMinutes = -moment.getTimezoneOffset()): string {
  const local = new Date(moment.getTime() + offsetMinutes * 60_000).toISOString().slice(0, 19);
  const two = (value: number): string => String(value).padStart(2, '0');
  const away = Math.abs(offsetMinutes);
  return `${local}${offsetMinutes < 0 ? '-' : '+'}${two(Math.floor(away / 60))}:${two(away % 60)}`;
}

/** Now, by this device's clock, which may be wrong: for people to read, never to order by. */
export const now = (): string => isoWithOffset(new Date());

/** A new id, version 7. Needs crypto.getRandomValues only, which is there without a secure context too. */
export const uuid = (): string => v7();
