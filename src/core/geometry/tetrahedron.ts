import { triangleAltitude, triangleExcess } from './triangle.ts';

/** The six distances among four points A, B, C, D, all in one unit (mm). */
export interface SixLengths {
  readonly ab: number;
  readonly ac: number;
  readonly ad: number;
  readonly bc: number;
  readonly bd: number;
  readonly cd: number;
}

/** What doubles lose on the way; a flat box must not fail for it. */
const ROUNDING = 1e-12;

/**
 * The six different entries of twice the Gram matrix of the edges from A, mm². Its determinant is the Cayley-Menger
 * determinant, with far fewer products to cancel.
 */
function twiceGram({ ab, ac, ad, bc, bd, cd }: SixLengths) {
  const [b, c, d] = [ab * ab, ac * ac, ad * ad];
  return { bb: 2 * b, cc: 2 * c, dd: 2 * d, bc: b + c - bc * bc, bd: b + d - bd * bd, cd: c + d - cd * cd };
}

function cofactors(lengths: SixLengths) {
  const m = twiceGram(lengths);
  return {
    bb: m.cc * m.dd - m.cd * m.cd,
    cc: m.bb * m.dd - m.bd * m.bd,
    dd: m.bb * m.cc - m.bc * m.bc,
    bc: m.bd * m.cd - m.bc * m.dd,
    bd: m.bc * m.cd - m.bd * m.cc,
    cd: m.bc * m.bd - m.bb * m.cd,
  };
}

/**
 * Cayley-Menger determinant of four points, mm⁶: 288 times the volume squared. Zero when the points lie in a plane,
 * negative when no four points have these distances. Source: MathWorld, "Cayley-Menger Determinant".
 */
export function cayleyMenger(lengths: SixLengths): number {
  const m = twiceGram(lengths);
  const c = cofactors(lengths);
  return m.bb * c.bb + m.bc * c.bc + m.bd * c.bd;
}

/** How the Cayley-Menger determinant changes with each length, mm⁵. */
export function cayleyMengerGradient(lengths: SixLengths): SixLengths {
  const c = cofactors(lengths);
  return {
    ab: 4 * lengths.ab * (c.bb + c.bc + c.bd),
    ac: 4 * lengths.ac * (c.cc + c.bc + c.cd),
    ad: 4 * lengths.ad * (c.dd + c.bd + c.cd),
    bc: -4 * lengths.bc * c.bc,
    bd: -4 * lengths.bd * c.bd,
    cd: -4 * lengths.cd * c.cd,
  };
}

/** True when four points with these distances exist, flat ones included, within the rounding of doubles only. */
export function tetrahedronExists(lengths: SixLengths): boolean {
  const { ab, ac, ad, bc, bd, cd } = lengths;
  const longest = Math.max(ab, ac, ad, bc, bd, cd);
  const faces = [
    triangleExcess(ab, ac, bc),
    triangleExcess(ab, ad, bd),
    triangleExcess(ac, ad, cd),
    triangleExcess(bc, bd, cd),
  ];
  // The faces count too: impossible ones can turn the determinant positive again.
  return faces.every((excess) => excess <= ROUNDING * longest) && cayleyMenger(lengths) >= -ROUNDING * longest ** 6;
}

/** Volume from six lengths, mm³; null when no such four points exist. */
export function tetrahedronVolume(lengths: SixLengths): number | null {
  return tetrahedronExists(lengths) ? Math.sqrt(Math.max(cayleyMenger(lengths), 0) / 288) : null;
}

/**
 * What the second diagonal BD of a four-sided shape can be (mm) when its four sides and the diagonal AC are known: the
 * triangles ABC and ACD turn about AC like a hinge. `max` is the flat shape with B and D on either side of AC, `min`
 * the one folded shut. Null when one of the triangles does not close.
 */
export function quadDiagonalRange(
  ab: number,
  bc: number,
  cd: number,
  da: number,
  ac: number,
): { readonly min: number; readonly max: number } | null {
  const outB = triangleAltitude(ac, ab, bc);
  const outD = triangleAltitude(ac, cd, da);
  if (outB === null || outD === null) return null;
  // Where B and D stand beside AC, counted from A; the difference of squares in factors keeps its digits.
  const alongB = (ac + ((ab - bc) * (ab + bc)) / ac) / 2;
  const alongD = (ac + ((da - cd) * (da + cd)) / ac) / 2;
  return { min: Math.hypot(alongB - alongD, outB - outD), max: Math.hypot(alongB - alongD, outB + outD) };
}
