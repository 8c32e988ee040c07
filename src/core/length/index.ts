export {
  formatLength,
  type InchDenominator,
  type LengthStyle,
  nearestFraction,
  roundTo,
  type TapeFraction,
} from './format.ts';
export { type LengthParts, type LengthRefusal, parseLength } from './parse.ts';
export { type LengthUnit, mm } from './units.ts';
