export { lengthsMisfit } from './misfit';
export {
  boundingBox,
  distance,
  type Point,
  type Point2,
  type Point3,
  pointAlong,
  polygonArea,
  polygonPerimeter,
  polylineLength,
} from './points';
export { type SketchLink, type SketchOptions, sketch } from './sketch';
export {
  cayleyMenger,
  cayleyMengerGradient,
  quadDiagonalRange,
  type SixLengths,
  tetrahedronExists,
  tetrahedronVolume,
} from './tetrahedron';
export { triangleAltitude, triangleAngle, triangleArea, triangleExcess } from './triangle';
