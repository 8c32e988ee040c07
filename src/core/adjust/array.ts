/**
 * Typed-array reads for the hot loops. The index is the caller's promise: reading past the end gives NaN
 * arithmetic rather than a thrown error, so callers stay inside the lengths they allocated.
 * Two functions, not one, so that each stays monomorphic and is inlined.
 */
export const at = (a: Float64Array, i: number): number => a[i] as number;
export const ix = (a: Int32Array, i: number): number => a[i] as number;
