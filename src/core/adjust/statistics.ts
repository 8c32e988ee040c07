/**
 * The few distributions the engine needs, by textbook series and continued fractions (M. Abramowitz, I. Stegun,
 * Handbook of Mathematical Functions, 1964, chapters 6 and 26; from memory). Relative error below 1e-10 where tested.
 */

const LANCZOS = [
  676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

function logGamma(z: number): number {
  const x = z - 1;
  let sum = 0.99999999999980993;
  LANCZOS.forEach((c, i) => {
    sum += c / (x + i + 1);
  });
  const t = x + LANCZOS.length - 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (x + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Regularised upper incomplete gamma Q(a, x). */
function upperGamma(a: number, x: number): number {
  if (x <= 0) return 1;
  const scale = Math.exp(-x + a * Math.log(x) - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < 1000 && Math.abs(term) > 1e-17 * Math.abs(sum); n++) {
      term *= x / (a + n);
      sum += term;
    }
    return 1 - sum * scale;
  }
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < 1000; i++) {
    const an = -i * (i - a);
    b += 2;
    d = 1 / (an * d + b);
    c = b + an / c;
    const delta = d * c;
    h *= delta;
    if (Math.abs(delta - 1) < 1e-16) break;
  }
  return scale * h;
}

/** P(X > x) for chi-square with `freedom` degrees of freedom. */
export const chiSquareTail = (x: number, freedom: number): number => upperGamma(freedom / 2, x / 2);

/** P(Z > z) for the standard normal. */
const normalTail = (z: number): number =>
  z >= 0 ? 0.5 * upperGamma(0.5, (z * z) / 2) : 1 - 0.5 * upperGamma(0.5, (z * z) / 2);

/** Finds x in [low, high] where the falling function `tail` equals `p`, by bisection to the last bit or so. */
function invertTail(tail: (x: number) => number, p: number, low: number, high: number): number {
  let a = low;
  let b = high;
  for (let i = 0; i < 200 && b - a > 1e-14 * Math.max(1, Math.abs(a)); i++) {
    const middle = 0.5 * (a + b);
    if (tail(middle) > p) a = middle;
    else b = middle;
  }
  return 0.5 * (a + b);
}

/** z with P(Z > z) = p. */
export const normalUpperQuantile = (p: number): number => invertTail(normalTail, p, -40, 40);

/** x with P(X > x) = p for chi-square. */
export const chiSquareUpperQuantile = (p: number, freedom: number): number =>
  invertTail((x) => chiSquareTail(x, freedom), p, 0, 100 + 40 * freedom);

/** Regularised incomplete beta I_x(a, b) by the continued fraction of Abramowitz and Stegun 26.5.8. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x)) / a;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m < 1000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    h *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return front * h;
}

/** P(T > t) for Student's t, t >= 0. */
const studentTail = (t: number, freedom: number): number =>
  0.5 * incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);

/**
 * Critical value of Pope's tau for a two-sided test at `alpha` (A. J. Pope, NOAA TR NOS 65 NGS 1, 1976; formula from
 * memory). With one degree of freedom every |tau| is 1, so nothing can be told: 1 is returned and never exceeded.
 */
export function tauCritical(alpha: number, freedom: number): number {
  if (freedom < 2) return 1;
  const t = invertTail((x) => studentTail(x, freedom - 1), alpha / 2, 0, 1e6);
  return (t * Math.sqrt(freedom)) / Math.sqrt(freedom - 1 + t * t);
}

/** Per-test false-alarm rate so that `tests` independent tests together have rate `alpha` (Šidák). */
export const sidak = (alpha: number, tests: number): number => -Math.expm1(Math.log1p(-alpha) / Math.max(1, tests));
