export {
  formatLength,
  type InchDenominator,
  type LengthStyle,
  nearestFraction,
  roundTo,
  type TapeFraction,
} from './format.ts';
export { type LengthParts, type LengthRefusal, type ParsedLength, parseLength } from './parse.ts';
export { type LengthUnit, type Mm, mm } from './units.ts';
