import { at, ix } from '../array.ts';
import type { NetworkReading } from '../model.ts';
import { baselineOf, inSpace, type Kind, needs, type Prepared, put } from './kind.ts';
import { normal } from './plane.ts';

/**
 * Angle between the line from foot to tip and the datum plane's normal (three baseline points, or the frame's z). With
 * a declared way (forward, aft, port, starboard) a second row says it does not lean across that way.
 */
export const lean: Kind = {
  unusable: (reading, dimension) =>
    inSpace(reading, dimension) ??
    needs(reading, 2) ??
    baselineOf(reading, reading.direction === undefined ? [0, 3] : [0]),
  rows: (reading) => (wayOf(reading) === undefined ? 1 : 2),
  rowSigma: (reading, row) =>
    // How well a person judges the way a pole leans: about ten degrees of turn, so a sixth of the lean.
    row === 0 ? reading.sigma : Math.max(reading.sigma, Math.abs(reading.value) / 6),
  settle(prepared, x) {
    if (prepared.refs.length !== 5) return;
    const n = normal(x, ix(prepared.refs, 2), ix(prepared.refs, 3), ix(prepared.refs, 4));
    prepared.sign = n.z < 0 ? -1 : 1;
  },
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const way = wayOf(prepared.reading);
    if (way === undefined) anyWay(prepared, x, computed, row, jacobian, slot);
    else {
      tilt(prepared, x, way.axis, way.sign, computed, row, jacobian, slot);
      tilt(prepared, x, 1 - way.axis, 1, computed, row + 1, jacobian, slot + 6);
    }
  },
};

function wayOf(reading: NetworkReading): { axis: number; sign: number } | undefined {
  switch (reading.direction) {
    case 'forward':
      return { axis: 0, sign: 1 };
    case 'aft':
      return { axis: 0, sign: -1 };
    case 'port':
      return { axis: 1, sign: 1 };
    case 'starboard':
      return { axis: 1, sign: -1 };
    default:
      return undefined;
  }
}

/** Tilt in the plane of one horizontal axis and z: atan2(sign * d[axis], d[z]). */
function tilt(
  prepared: Prepared,
  x: Float64Array,
  axis: number,
  sign: number,
  computed: Float64Array,
  row: number,
  jacobian: Float64Array,
  slot: number,
): void {
  const foot = ix(prepared.refs, 0);
  const tip = ix(prepared.refs, 1);
  const across = sign * (at(x, tip + axis) - at(x, foot + axis));
  const up = at(x, tip + 2) - at(x, foot + 2);
  const square = across * across + up * up || 1e-9;
  computed[row] = Math.atan2(across, up);
  const da = (sign * up) / square;
  const du = -across / square;
  put(jacobian, slot, axis === 0 ? -da : 0, axis === 1 ? -da : 0, -du);
  put(jacobian, slot + 3, axis === 0 ? da : 0, axis === 1 ? da : 0, du);
}

/**
 * theta = atan2(|d - c n|, c), c = d.n. d theta / dd = (c e - s n) / |d|^2 and, through the plane's cross product N,
 * -(dN.e) / |N|, with e the unit vector of d across n.
 */
function anyWay(
  prepared: Prepared,
  x: Float64Array,
  computed: Float64Array,
  row: number,
  jacobian: Float64Array,
  slot: number,
): void {
  const { refs, sign } = prepared;
  const foot = ix(refs, 0);
  const tip = ix(refs, 1);
  const plane = refs.length === 5 ? normal(x, ix(refs, 2), ix(refs, 3), ix(refs, 4)) : undefined;
  const nx = plane === undefined ? 0 : sign * plane.x;
  const ny = plane === undefined ? 0 : sign * plane.y;
  const nz = plane === undefined ? 1 : sign * plane.z;
  const dx = at(x, tip) - at(x, foot);
  const dy = at(x, tip + 1) - at(x, foot + 1);
  const dz = at(x, tip + 2) - at(x, foot + 2);
  const square = dx * dx + dy * dy + dz * dz || 1e-9;
  const c = dx * nx + dy * ny + dz * nz;
  const s = Math.hypot(dx - c * nx, dy - c * ny, dz - c * nz);
  const scale = s > 1e-9 ? 1 / s : 0;
  const ex = (dx - c * nx) * scale;
  const ey = (dy - c * ny) * scale;
  const ez = (dz - c * nz) * scale;
  computed[row] = Math.atan2(s, c);
  const tx = (c * ex - s * nx) / square;
  const ty = (c * ey - s * ny) / square;
  const tz = (c * ez - s * nz) / square;
  put(jacobian, slot, -tx, -ty, -tz);
  put(jacobian, slot + 3, tx, ty, tz);
  if (plane === undefined) return;
  const k = -sign / plane.size;
  const { bx, by, bz, cx, cy, cz } = plane;
  const gb = [k * (cy * ez - cz * ey), k * (cz * ex - cx * ez), k * (cx * ey - cy * ex)] as const;
  const gc = [k * (ey * bz - ez * by), k * (ez * bx - ex * bz), k * (ex * by - ey * bx)] as const;
  put(jacobian, slot + 9, ...gb);
  put(jacobian, slot + 12, ...gc);
  put(jacobian, slot + 6, -gb[0] - gc[0], -gb[1] - gc[1], -gb[2] - gc[2]);
}
