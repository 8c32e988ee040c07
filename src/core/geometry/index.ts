export { nominalPlaces, placeAlong, pointsAlong, stationsAlong } from './along-run.ts';
export { lengthsMisfit } from './misfit.ts';
export { outlineOf } from './outline.ts';
export {
  axesOf,
  depthOff,
  type Face,
  faceOf,
  offPlane,
  onPlane,
  type Plane,
  planeOf,
  seenAs,
  seenFrom,
} from './plane.ts';
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
} from './points.ts';
export { depthInside, distanceToChain, insidePolygon } from './polygon.ts';
export { fastenersByStretch, stretchLength } from './run-stretches.ts';
export { type SketchLink, type SketchOptions, sketch } from './sketch.ts';
export {
  cayleyMenger,
  cayleyMengerGradient,
  quadDiagonalRange,
  type SixLengths,
  tetrahedronExists,
  tetrahedronVolume,
} from './tetrahedron.ts';
export { extentOf } from './thing-extent.ts';
export { triangleAltitude, triangleAngle, triangleArea, triangleExcess } from './triangle.ts';
export { seenTurned, TURNS, type Turn, turnedBy } from './turned.ts';
