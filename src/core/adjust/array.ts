/**
 * Typed-array reads for the hot loops. The index is the caller's promise: reading past the end gives NaN
 * arithmetic rather than a thrown error, so callers stay inside the lengths they allocated.
 * Two functions, not one, so that each stays monomorphic and is inlined.
 */
export const at = (a: Float64Array, i: number): number => a[i] as number;
export const ix = (a: Int32Array, i: number): number => a[i] as number;

/** `list[i]`, or throws: for the cold paths where an absent element is a defect of this engine. */
export function item<T>(list: readonly T[], i: number): T {
  const found = list[i];
  if (found === undefined) throw new RangeError(`no element ${i} in a list of ${list.length}`);
  return found;
}
