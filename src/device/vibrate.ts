/** The part of the browser that shakes the phone; missing on iOS. */
export interface VibratePlatform {
  vibrate?: (pattern: number[]) => boolean;
}

const browserPlatform = (): VibratePlatform => ({
  ...('vibrate' in navigator && { vibrate: (pattern) => navigator.vibrate(pattern) }),
});

export const canVibrate = (platform = browserPlatform()): boolean => platform.vibrate !== undefined;

/** ms on, off, on. Once says recorded, twice says look. Short enough to come before the next tap. */
const PULSES = { once: [35], twice: [60, 90, 60] };

/** A pulse that the thumb feels where the eyes are on the tape. */
export function pulse(how: keyof typeof PULSES, platform = browserPlatform()): void {
  platform.vibrate?.(PULSES[how]);
}
