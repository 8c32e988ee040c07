export {
  formatLength,
  type InchDenominator,
  type LengthStyle,
  nearestFraction,
  roundTo,
  type TapeFraction,
} from './format';
export { type LengthParts, type LengthRefusal, type ParsedLength, parseLength } from './parse';
export { type LengthUnit, type Mm, mm } from './units';
