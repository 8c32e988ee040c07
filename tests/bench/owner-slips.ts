/**
 * The slips an invented owner makes when a tape is read and typed: a list of its own, made without looking at what the engine
 * supposes, so that what is caught is not what was expected. Kinds are equally likely; how large they are is invented.
 */

/** What is there to be read wrongly. mm: what this attempt would have read. others: true lengths of other readings of its kind. */
export interface Scene {
  readonly mm: number;
  readonly metric: boolean;
  readonly others: readonly number[];
  /** The same reading on the other side of the boat; null where there is none. */
  readonly twin: number | null;
  /** The line above or below in the list. */
  readonly neighbour: number | null;
}

/** A number between 0 and 1, 1 left out. */
export type Draw = () => number;

const INCH = 25.4;
const pick = <T>(list: readonly T[], draw: Draw): T | undefined => list[Math.floor(draw() * list.length)];

/** Digits of the whole inches or millimetres changed; what is left of the mark stays. */
function withDigits({ mm, metric }: Scene, change: (digits: string) => string | undefined): number | undefined {
  const unit = metric ? 1 : INCH;
  const whole = Math.floor(Math.abs(mm) / unit);
  const changed = change(String(whole));
  return changed === undefined ? undefined : Math.sign(mm) * (Math.abs(mm) + (Number(changed) - whole) * unit);
}

const sixteenths = ({ mm }: Scene): number => Math.round(((mm / INCH) % 1) * 16) % 16;

const SLIPS: Readonly<Record<string, (scene: Scene, draw: Draw) => number | undefined>> = {
  /** One mark of the large numbers too far or too short. */
  'foot or 100 mm': ({ mm, metric }, draw) => mm + (metric ? 100 : 12 * INCH) * (draw() < 0.5 ? -1 : 1),
  'digits swapped': (scene, draw) =>
    withDigits(scene, (digits) => {
      const at = Math.floor(draw() * (digits.length - 1));
      return digits.length < 2
        ? undefined
        : digits.slice(0, at) + digits.charAt(at + 1) + digits.charAt(at) + digits.slice(at + 2);
    }),
  '6 for 9': (scene, draw) =>
    withDigits(scene, (digits) => {
      const at = pick(
        [...digits].flatMap((digit, i) => (digit === '6' || digit === '9' ? [i] : [])),
        draw,
      );
      if (at === undefined) return undefined;
      return digits.slice(0, at) + (digits.charAt(at) === '6' ? '9' : '6') + digits.slice(at + 1);
    }),
  /** Counted back from the next inch; on a metric tape, a centimetre too many or too few. */
  fraction: (scene, draw) => {
    const part = sixteenths(scene);
    if (scene.metric) return scene.mm + (draw() < 0.5 ? -10 : 10);
    return part === 0 ? undefined : scene.mm + ((16 - 2 * part) / 16) * INCH;
  },
  'eighths for sixteenths': (scene) => {
    const part = sixteenths(scene);
    return scene.metric || part === 0 || part > 7 ? undefined : scene.mm + (part / 16) * INCH;
  },
  /** Held at the first large mark for want of a good end, and not taken off; or the loose hook pushed in. */
  'hook end': ({ mm, metric }, draw) => mm + (draw() < 0.5 ? (metric ? 100 : INCH) : metric ? -20 : -0.75 * INCH),
  'other side of the tape': ({ mm, metric }) => (metric ? (mm / INCH) * 10 : (mm / 10) * INCH),
  'another pair of points': ({ others }, draw) => pick(others, draw),
  'port for starboard': ({ twin }) => twin ?? undefined,
  'line above or below': ({ neighbour }) => neighbour ?? undefined,
  /** 5 ft 8 typed as 5.8 ft; 1045 typed as 1450. */
  'decimal feet': (scene) => {
    if (scene.metric)
      return withDigits(scene, (digits) => (digits.includes('0') ? `${digits.replace('0', '')}0` : undefined));
    const inches = Math.abs(scene.mm) / INCH;
    const [feet, rest] = [Math.floor(inches / 12), inches % 12];
    return feet === 0 ? undefined : Math.sign(scene.mm) * (feet + rest / (rest < 10 ? 10 : 100)) * 12 * INCH;
  },
};

/** What is too small to be called a slip, mm: a tape in an unsure hand does the same. */
const LEAST = 3;

/** What is read instead, mm; another kind where one cannot happen here. */
export function slipOf(scene: Scene, draw: Draw): { readonly kind: string; readonly mm: number } {
  const names = Object.keys(SLIPS);
  for (;;) {
    const kind = pick(names, draw) ?? '';
    const mm = SLIPS[kind]?.(scene, draw);
    if (mm !== undefined && Math.abs(mm - scene.mm) > LEAST && (mm > 0 || scene.mm <= 0)) return { kind, mm };
  }
}
